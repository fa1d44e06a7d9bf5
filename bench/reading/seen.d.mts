import type { SeenScreen } from './measure.ts'

export function seen(): Pick<SeenScreen, 'texts' | 'screens'> & { readonly along: string | null }

import type { Loaded } from '../load/load.ts'
import type { Report } from './report.ts'

export type CitedSource = Loaded['sources'][string] & { readonly id: string }

/** Every source behind the questions passed and the advice given, in the order met, each once. */
export function sourcesOf(report: Report, sources: Loaded['sources']): readonly CitedSource[] {
  const ids = new Set([
    ...(report.advice?.because ?? []),
    ...report.walk.trail.flatMap(({ because }) => because)
  ])
  return [...ids].flatMap(id => {
    const source = Object.hasOwn(sources, id) ? sources[id] : undefined
    return source ? [{ ...source, id }] : []
  })
}

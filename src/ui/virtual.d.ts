declare module 'virtual:jarside/catalogue' {
  import type { Catalogue, Openers } from './opening/bundle.ts'

  const catalogue: Catalogue
  export default catalogue
  export const openers: Openers
}

declare module 'virtual:jarside/workbench' {
  const words: Readonly<Record<string, import('./opening/bundle.ts').Texts>>
  export default words
}

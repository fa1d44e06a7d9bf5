declare module 'virtual:jarside/catalogue' {
  import type { Catalogue, Openers } from './bundle.ts'

  const catalogue: Catalogue
  export default catalogue
  export const openers: Openers
}

declare module 'virtual:jarside/front' {
  const front: import('./front.ts').FrontBundle
  export default front
}

declare module 'virtual:jarside/workbench' {
  const words: Readonly<Record<string, import('./bundle.ts').Texts>>
  export default words
}

declare module 'virtual:jarside/kiosk' {
  const words: Readonly<Record<string, import('./bundle.ts').Texts>>
  export default words
}

declare module 'virtual:jarside/contacts' {
  const words: Readonly<Record<string, import('./bundle.ts').Texts>>
  export default words
}

declare module 'virtual:jarside/practice' {
  export const callers: readonly import('../tree/practice-caller.ts').PracticeCaller[]
  export const verdicts: readonly import('../tree/tree.ts').Verdict[]
  export const drawings: Readonly<Record<string, string>>
  export const words: Readonly<Record<string, import('./bundle.ts').Texts>>
}

declare module 'virtual:jarside/know-how' {
  export const knowHow: import('./bundle.ts').KnowHowBundle
  export const words: Readonly<Record<string, import('./bundle.ts').Texts>>
}

declare module 'virtual:jarside/look-alikes' {
  export const pairs: readonly import('../tree/look-alikes.ts').LookAlike[]
  export const drawings: Readonly<Record<string, string>>
  export const words: Readonly<Record<string, import('./bundle.ts').Texts>>
}

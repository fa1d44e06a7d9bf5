declare module 'virtual:jarside/catalogue' {
  import type { Catalogue, Openers } from './page/bundle.ts'

  const catalogue: Catalogue
  export default catalogue
  export const openers: Openers
}

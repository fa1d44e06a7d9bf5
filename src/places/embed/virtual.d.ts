declare module 'virtual:jarside/embed' {
  import type { EmbedCatalogue } from './embed-files.ts'

  const catalogue: EmbedCatalogue
  export default catalogue
}

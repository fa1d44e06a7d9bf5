import type { CatalogueEntry } from '../parts/catalogue-entry.ts'
import type { Catalogue } from './bundle.ts'

/** The chosen tree's entry where the tree was withdrawn; else null. */
export const withdrawnIn = ({ trees }: Catalogue, tree: string | null): CatalogueEntry | null =>
  trees.find(({ id, withdrawn }) => id === tree && withdrawn !== null) ?? null

import type { Catalogue, CatalogueEntry } from './bundle.ts'

/** The chosen tree's entry where the tree was withdrawn; else null. */
export const withdrawnIn = ({ trees }: Catalogue, tree: string | null): CatalogueEntry | null =>
  trees.find(({ id, withdrawn }) => id === tree && withdrawn !== null) ?? null

/** Where the page stands: choosing, or walking a tree, perhaps with answers that a link brought. */
export interface Route {
  readonly tree: string | null
  readonly query: string | null
}

/** Reads the fragment of the address: `#/kombucha-jar?f=…`. */
export function readRoute(hash: string): Route {
  const [tree = '', query] = hash.replace(/^#\/?/, '').split('?')
  return { tree: tree === '' ? null : tree, query: query ?? null }
}

export const addressOf = (tree: string | null): string => (tree === null ? '#/' : `#/${tree}`)

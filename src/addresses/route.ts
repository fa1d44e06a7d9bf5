import { SOURCE_TAG } from '../words/words.ts'

/** Where a page stands: choosing, walking a tree, or showing an outcome by itself. */
export interface Route {
  /** Null where the address names no language: the reader's own is taken. */
  readonly language: string | null
  readonly tree: string | null
  /** The beginning of the fingerprint of the tree that the address was made with. */
  readonly fingerprint: string | null
  /** An outcome, as `outcome-address.ts` reads it; null where the questions are asked. */
  readonly outcome: string | null
  /** The answers that a link brought. */
  readonly query: string | null
}

/** A language tag stands before the tree: two or three letters, which no tree's id is. */
const LANGUAGE = /^[a-z]{2,3}(?:-[a-z0-9]+)*$/i

/** Reads the fragment of the address: `#/es/kombucha-jar?f=…`, `#/kombucha-jar/likely-mold`. */
export function readRoute(hash: string, languages: readonly string[]): Route {
  const [place = '', query] = hash.replace(/^#\/?/, '').split('?')
  const parts = place.split('/').filter(part => part !== '')
  const [first = ''] = parts
  const inLanguage = languages.includes(first) || (parts.length > 1 && LANGUAGE.test(first))
  if (inLanguage) parts.shift()
  const [named = '', ...outcome] = parts
  const [tree = '', fingerprint] = named.split('@')
  return {
    language: inLanguage && languages.includes(first) ? first : null,
    tree: tree === '' ? null : tree,
    fingerprint: fingerprint ?? null,
    outcome: outcome.length > 0 ? outcome.join('/') : null,
    query: query ?? null
  }
}

/** The fragment for a tree, or for the choice of one; English stands without its tag. */
export function addressOf(tree: string | null, language: string): string {
  const tag = language === SOURCE_TAG ? '' : `${language}/`
  return `#/${tag}${tree ?? ''}`
}

/** The fragment that reads as the route, in its language. */
export function writeRoute({ language, tree, fingerprint, outcome, query }: Route): string {
  const parts = [
    addressOf(tree, language ?? SOURCE_TAG),
    tree !== null && fingerprint !== null ? `@${fingerprint}` : '',
    outcome === null ? '' : `/${outcome}`,
    query === null ? '' : `?${query}`
  ]
  return parts.join('')
}

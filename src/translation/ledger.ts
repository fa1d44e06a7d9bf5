/** Who looked at a translation: a role, no name. Each looks for something else. */
export const REVIEWERS = ['native reader', 'food-safety educator', 'translator'] as const

/** One text as it was reviewed: it holds for these two sentences and no other. */
export interface ReviewEntry {
  /** `textHash` of the English it was held against. */
  readonly english: string
  /** `textHash` of the translation that was read. */
  readonly target: string
  readonly by: (typeof REVIEWERS)[number]
  /** The day, as `2026-11-29`. */
  readonly on: string
}

/** `draft`: nobody has signed it. `stale`: it was signed, and the English or the translation is another one now. */
export type ReviewState = 'draft' | 'reviewed' | 'stale'

/** SHA-256 of a text, its first 16 hexadecimal digits: enough that no edit keeps it by chance. */
export async function textHash(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text.normalize('NFC'))
  const digest = await globalThis.crypto.subtle.digest('SHA-256', bytes)
  return Array.from(new Uint8Array(digest, 0, 8), byte => byte.toString(16).padStart(2, '0')).join(
    ''
  )
}

/** Where a text stands, by what the ledger says of it: what a file of an exchange claims is never asked. */
export async function reviewState(
  entry: ReviewEntry | undefined,
  { english, target }: { readonly english: string; readonly target: string }
): Promise<ReviewState> {
  if (entry === undefined) return 'draft'
  const same =
    entry.english === (await textHash(english)) && entry.target === (await textHash(target))
  return same ? 'reviewed' : 'stale'
}

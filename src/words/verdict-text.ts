import type { Use } from '../tree/tree.ts'
import type { TextKey, Words } from './words.ts'

/** What is said of a verdict: its short name, its main message, its reason. */
export type VerdictPart = 'name' | 'message' | 'why'

/**
 * The text of a verdict in a tree: the tree's own where its authors wrote one, for this use
 * before any use, else the verdict's own.
 *
 * The authors' language chooses the key, so that every language says the same thing.
 */
export function verdictText(
  words: Words,
  tree: string,
  verdict: string,
  part: VerdictPart,
  use?: Use
): string {
  const own: TextKey = `${tree}:verdicts.${verdict}.${part}`
  const shared: TextKey = `verdicts:${verdict}.${part}`
  const candidates: TextKey[] = use
    ? [`${own}-${use}`, own, `${shared}-${use}`, shared]
    : [own, shared]
  return words.t(candidates.find(key => words.has(key)) ?? shared)
}

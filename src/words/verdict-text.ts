import type { Manner } from '../evaluate/advice.ts'
import type { Use } from '../tree/tree.ts'
import type { TextKey } from './text-key.ts'
import type { Words } from './words.ts'

/** What is said of a verdict: its short name, its main message, its reason. */
export type VerdictPart = 'name' | 'message' | 'why'

/** What the wording of a verdict turns on besides the verdict. */
export interface VerdictOccasion {
  readonly use?: Use
  readonly manner?: Manner
}

/**
 * The text of a verdict in a tree: the tree's own where its authors wrote one, for this occasion
 * before any, else the verdict's own.
 *
 * The authors' language chooses the key, so that every language says the same thing.
 */
export function verdictText(
  words: Words,
  tree: string,
  verdict: string,
  part: VerdictPart,
  { use, manner }: VerdictOccasion = {}
): string {
  const own: TextKey = `${tree}:verdicts.${verdict}.${part}`
  const shared: TextKey = `verdicts:${verdict}.${part}`
  const occasions = [manner === 'while-ill' ? '-while-ill' : null, use ? `-${use}` : null, '']
  const candidates = occasions
    .filter(occasion => occasion !== null)
    .flatMap((occasion): TextKey[] => [`${own}${occasion}`, `${shared}${occasion}`])
  return words.t(candidates.find(key => words.has(key)) ?? shared)
}

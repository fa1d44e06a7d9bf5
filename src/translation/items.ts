import type { LanguageFacts } from './language.ts'
import { aligned, sentencesIn, type TextFault, type TextPair } from './pair.ts'

/** From how many items on a list is counted. */
const LIST = 3
/** From how many signs on the length of a text is compared. */
const SOME_LENGTH = 30

const semicolons = (text: string) => text.split(/[;؛；]/).length - 1

/** A list has as many items, a text as many sentences, and about as many letters. */
export function itemFaults(
  pair: TextPair,
  source: LanguageFacts,
  language: LanguageFacts
): readonly TextFault[] {
  const faults: TextFault[] = []
  const { english, target } = pair
  const parts = [semicolons(english), semicolons(target)] as const
  if (parts[0] > parts[1] && parts[0] >= 2) faults.push(counted('items', ...parts))
  for (const sentence of aligned(pair)) {
    const ours = sentence.english.match(source.joins)?.length ?? 0
    const theirs = sentence.target.match(language.joins)?.length ?? 0
    if (ours >= LIST && theirs < ours) faults.push(counted('items', ours, theirs))
  }
  const ours = sentencesIn(english).length
  const theirs = sentencesIn(target).length
  if (ours > theirs) faults.push(counted('sentences', ours, theirs))
  const [least, most] = language.lengths
  const share = target.length / english.length
  if (english.length >= SOME_LENGTH && (share < least || share > most)) {
    faults.push({ rule: 'length', lacks: [], adds: [`${Math.round(share * 100)} %`] })
  }
  return faults
}

const counted = (rule: 'items' | 'sentences', ours: number, theirs: number): TextFault => ({
  rule,
  lacks: ours > theirs ? [`${ours - theirs} ${rule}`] : [],
  adds: theirs > ours ? [`${theirs - ours} ${rule}`] : []
})

import { amountFaults } from './amounts.ts'
import { fragmentFaults } from './fragments.ts'
import { gapFaults } from './gaps.ts'
import { type ReadyGlossary, registerFaults, termFaults } from './glossary.ts'
import { itemFaults } from './items.ts'
import { ENGLISH } from './languages/english.ts'
import { languageFacts } from './languages/known.ts'
import { markFaults, scriptFaults } from './marks.ts'
import { negationFaults } from './negation.ts'
import type { TextFault, TextPair } from './pair.ts'

/**
 * Everything by which a translation parts from its English.
 *
 * Gaps, digits, script and marks are held in every language; units, numbers in words, limits, negation and
 * lists where the facts of the language are known; words where a glossary of it stands.
 */
export function lintPair(
  pair: TextPair,
  tag: string,
  glossary: ReadyGlossary | null
): readonly TextFault[] {
  const language = languageFacts(tag)
  return [
    ...gapFaults(pair),
    ...amountFaults(pair, ENGLISH, language),
    ...(language
      ? [...negationFaults(pair, ENGLISH, language), ...itemFaults(pair, ENGLISH, language)]
      : []),
    ...(glossary
      ? [
          ...termFaults(pair, glossary),
          ...fragmentFaults(pair, ENGLISH, glossary),
          ...registerFaults(pair, glossary)
        ]
      : []),
    ...scriptFaults(pair, tag),
    ...markFaults(pair, tag)
  ]
}

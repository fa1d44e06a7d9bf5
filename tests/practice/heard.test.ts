import { describe, expect, test } from 'vitest'
import type { Fact } from '../../src/reader/fact.ts'
import { type Answers, isInterval } from '../../src/tree/answers.ts'
import { must } from '../../src/tree/must.ts'
import { usualExcept } from '../../src/tree/usual-answers.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { shippedReader, sureOf } from '../reader/shipped-reader.ts'

/** What is heard otherwise than it is, by caller and observation, and why that is no fault of the telling. */
const HEARD_OTHERWISE: Readonly<Record<string, string>> = {
  'white-fuzz jar-signs': 'a plan to scoop is heard as done: the more cautious',
  'scooped-last-week surface-texture':
    'what was seen last week is heard as there: the more cautious',
  'tofu-from-the-counter brine-kind': 'a red herring: another jar of the same caller',
  'corn-press-cake brine-kind': 'a red herring: what else the caller makes',
  'fur-on-the-berries bottle-growth': 'both are mold; the berry is told in another word',
  'water-kefir-went-off kefir-kind': 'a canning jar that is shut is a bottle; the word says jar',
  'kefir-in-the-clay-jug surface-growth': 'mold of last week is heard as there: the more cautious',
  'roasted-peppers-maybe-off outside-kind': 'oil alone is heard as warm oil: the more cautious'
}

const { trees, practice, words } = await loadShipped()

describe.each(trees.map(tree => [tree.id, tree] as const))(
  'what callers of %s tell',
  (id, tree) => {
    const { reader } = shippedReader(id)

    test.each(['en', 'es'])('contradicts nothing that they answer, in %s', tag => {
      const texts = must(words[tag]?.practice, tag) as Readonly<Record<string, string>>
      const against = practice
        .filter(caller => caller.tree === id)
        .flatMap(caller => {
          const answers = { ...caller.answers, ...usualExcept(tree, caller.answers) }
          return sentencesOf(must(texts[caller.id], caller.id)).flatMap(sentence =>
            sureOf(reader, sentence)
              .filter(fact => contradicts(answers, fact))
              .filter(({ observation }) => !HEARD_OTHERWISE[`${caller.id} ${observation}`])
              .map(fact => `${caller.id}: “${sentence}” is heard as ${JSON.stringify(fact)}`)
          )
        })
      expect(against).toEqual([])
    })
  }
)

test('what is heard otherwise is listed of callers that there are', () => {
  const ids = practice.map(({ id }) => id)
  const named = Object.keys(HEARD_OTHERWISE).map(key => key.split(' ')[0])
  expect(named.filter(name => !ids.includes(name ?? ''))).toEqual([])
})

const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.!?])\s+/)

/** Whether a fact is another one than what is answered; what is never asked contradicts nothing. */
function contradicts(answers: Answers, { observation, answer }: Fact): boolean {
  const listed = answers[observation]
  if (listed === undefined || answer === 'unsure') return false
  if (typeof answer === 'string') return answer !== listed
  if (isInterval(answer)) return !isInterval(listed) || listed.reading !== answer.reading
  const signs = typeof listed === 'object' && !isInterval(listed) ? listed : {}
  return Object.entries(answer).some(([sign, told]) => told !== 'unsure' && signs[sign] !== told)
}

import { isInterval } from '../tree/answers.ts'
import type { Tree } from '../tree/tree.ts'
import type { TextKey } from './text-key.ts'
import { answerLabel } from './tree-texts.ts'
import type { Words } from './words.ts'

/** One thing that sets of answers have in common: a coordinate and the values it takes. */
export interface Common {
  readonly observation: string
  readonly sign: string | null
  readonly values: readonly { readonly label: string; readonly answer: unknown }[]
}

/** What sets of answers have in common, a line for each observation, in the words of the screens. */
export function commonLines(words: Words, tree: Tree, when: readonly Common[]): readonly string[] {
  const observations = [...new Set(when.map(({ observation }) => observation))]
  return observations.map(observation => {
    const parts = when.filter(one => one.observation === observation)
    const short: TextKey = `ui:short.${observation}`
    const name = words.has(short) ? words.t(short) : observation
    const signs = parts.filter(({ sign }) => sign !== null)
    const others = parts.filter(({ sign }) => sign === null)
    const texts = [...others.map(part => valuesText(words, tree, part)), ...signTexts(words, signs)]
    return `${name}: ${texts.join('; ')}`
  })
}

/** Signs of a screen by what may be told of them: those that must not be there stand together. */
function signTexts(words: Words, signs: readonly Common[]): readonly string[] {
  const signsBy = new Map<string, string[]>()
  for (const { observation, sign, values } of signs) {
    const given = values.map(({ answer }) => String(answer)).join(' or ')
    const label = answerLabel(words, observation, sign ?? '')
    signsBy.set(given, [...(signsBy.get(given) ?? []), label])
  }
  return [...signsBy].map(([given, labels]) => `${given}: ${labels.map(quoted).join(', ')}`)
}

const quoted = (label: string): string => `“${label}”`

function valuesText(words: Words, tree: Tree, { observation, values }: Common): string {
  if (tree.observations[observation]?.kind === 'measure') {
    const named = values.map(({ label, answer }) => (isInterval(answer) ? label : 'unsure'))
    return [...new Set(named)].join(' / ')
  }
  return values.map(({ label }) => quoted(answerLabel(words, observation, label))).join(' or ')
}

import { describe, expect, test } from 'vitest'
import { observationsOf } from '../../src/load/texts-of-tree.ts'
import type { Observation } from '../../src/tree/observation.ts'
import { countWords, MOST_WORDS, mostWordsAt, type TightPlace } from '../../src/words/lengths.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, words } = await loadShipped()

/** Its line under the question says who is at higher risk: without that nobody knows. */
const OTHERWISE: ReadonlySet<string> = new Set(['drinkers'])
/** Labels that are long, each with the reason. */
const LONG_LABELS: Readonly<Record<string, string>> = {
  'outside-kind.oil-or-tofu': 'two foods in one answer: without its limit one of them goes astray',
  'outside-kind.oil-kept-cold': 'the limit that parts it from the answer above'
}

interface Choice {
  readonly label: string
  readonly hint?: string
}
interface Said {
  readonly ask: string
  readonly how: string
  readonly sweep?: string
  readonly answers?: Readonly<Record<string, Choice>>
  readonly signs?: Readonly<Record<string, Choice>>
}

interface Asked {
  readonly at: string
  readonly observation: Observation
  readonly said: Said
}

/** Every observation of every tree, as that tree says it. */
const askedIn = (tag: string): readonly Asked[] =>
  trees.flatMap(tree => {
    const texts = observationsOf(tree.id, words[tag] ?? {})
    return Object.values(tree.observations)
      .filter(({ id }) => !OTHERWISE.has(id))
      .map(observation => ({
        at: `${tree.id}: ${observation.id}`,
        observation,
        said: texts[observation.id] as unknown as Said
      }))
  })

const labelsOf = ({
  answers = {},
  signs = {}
}: Said): readonly (readonly [string, Choice, TightPlace])[] => [
  ...Object.entries(answers).map(([id, of]) => [id, of, 'answer'] as const),
  ...Object.entries(signs).map(([id, of]) => [id, of, 'sign'] as const)
]

describe.each(['en', 'es'])('what is read before an answer is short in %s', tag => {
  const asked = askedIn(tag)
  const longer = (part: TightPlace, text: string) => countWords(text) > mostWordsAt(part, tag)

  test('every tree is among them', () => {
    expect(new Set(asked.map(({ at }) => at.split(':')[0])).size).toBe(trees.length)
  })

  test.each(['ask', 'sweep', 'how'] as const)('%s', part => {
    const long = asked.flatMap(({ at, said }) => {
      const text = said[part]
      return text !== undefined && longer(part, text) ? [`${at}.${part}: ${text}`] : []
    })
    expect(long).toEqual([])
  })

  test('labels', () => {
    const long = asked.flatMap(({ at, observation, said }) =>
      labelsOf(said)
        .filter(([, { label }, part]) => longer(part, label))
        .filter(([id]) => !Object.hasOwn(LONG_LABELS, `${observation.id}.${id}`))
        .map(([id, { label }]) => `${at}.${id}: ${label}`)
    )
    expect(long).toEqual([])
  })

  test('beads', () => {
    const beads = Object.values((words[tag] as { ui: { short: Record<string, string> } }).ui.short)
    expect(beads.length).toBeGreaterThan(50)
    expect(beads.filter(bead => longer('short', bead))).toEqual([])
  })

  test('no two answers of a question have the same label', () => {
    const twice = asked.flatMap(({ at, said }) => {
      const labels = labelsOf(said).map(([, { label }]) => label)
      return labels
        .filter((label, index) => labels.indexOf(label) < index)
        .map(label => `${at}: ${label}`)
    })
    expect(twice).toEqual([])
  })
})

test('a long label that became short is no longer excused', () => {
  const long = askedIn('en').flatMap(({ observation, said }) =>
    labelsOf(said)
      .filter(([, { label }, part]) => countWords(label) > MOST_WORDS[part])
      .map(([id]) => `${observation.id}.${id}`)
  )
  expect(new Set(long)).toEqual(new Set(Object.keys(LONG_LABELS)))
})

/** By language, signs whose label shares no word with the line over the screen, and the words there that stand for them. */
const STAND_FOR: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  en: { 'tempeh-signs.a-bit-warm': '91 °f' },
  es: {
    'surroundings.moved-daily': 'manos todos los días',
    'jar-story.ph-rose': 'ph que subió',
    'tempeh-signs.too-warm': '91 °f',
    'tempeh-signs.a-bit-warm': '91 °f'
  }
}

/** Words that tell nothing of a sign. */
const SMALL = new Set(
  'the and for with that has was are not from into than this its out one any all more less over some also been mas por con para que las los del una uno como fue sin ser hay mas sus'.split(
    ' '
  )
)
/** The beginnings of the words that tell something. */
const stemsOf = (text: string): ReadonlySet<string> =>
  new Set(
    (
      text
        .toLowerCase()
        .normalize('NFD')
        .replace(/\p{M}/gu, '')
        .match(/\p{L}{3,}/gu) ?? []
    )
      .filter(word => !SMALL.has(word))
      .map(word => word.slice(0, 4))
  )

/** A "no" to the line answers every sign under it, so that each has to be in it. */
describe.each(['en', 'es'])('one line over a screen holds each of its signs in %s', tag => {
  const swept = askedIn(tag).flatMap(({ at, observation, said }) =>
    observation.kind === 'signs' && said.sweep !== undefined
      ? [{ at, observation, said, sweep: said.sweep }]
      : []
  )

  test('and each danger sign', () => {
    expect(swept.length).toBeGreaterThan(20)
    const missed = swept.flatMap(({ at, observation, said, sweep }) => {
      const named = stemsOf(sweep)
      return observation.signs
        .filter(({ volunteered }) => !volunteered)
        .filter(({ id }) => {
          const standIn = STAND_FOR[tag]?.[`${observation.id}.${id}`]
          if (standIn !== undefined) return !sweep.toLowerCase().includes(standIn)
          return ![...stemsOf(said.signs?.[id]?.label ?? '')].some(stem => named.has(stem))
        })
        .map(
          ({ id, danger }) =>
            `${danger ? 'danger: ' : ''}${at}.${id}: ${said.signs?.[id]?.label} / ${sweep}`
        )
    })
    expect(missed).toEqual([])
  })
})

import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { type SeenAnswer, seenAnswer } from '../../src/parts/seen-answer.ts'
import { reportOf, reportOn } from '../../src/report/report.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { NOTHING_YET, verdict, verdictsOf } from '../../src/tree/caution.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const { trees, pictures, lookAlikes } = await loadShipped()
const today = new Date('2027-01-10T12:00:00Z')
const drawnIn = (tree: Tree) => ({
  pictures,
  lookAlikes: lookAlikes.filter(pair => pair.trees.includes(tree.id))
})
const named = (id: string) => trees.find(tree => tree.id === id) as Tree
const jar = named('kombucha-jar')

/** What is shown beside the outcome of a jar that is ordinary but for what is told. */
function seenIn(tree: Tree, told: Answers): SeenAnswer | null {
  const report = reportOn(evaluate(tree, usualExcept(tree, told)), null, today)
  return seenAnswer(report, drawnIn(tree))
}

const generalOf = (tree: Tree, id: string) =>
  seenAnswer(
    reportOf(
      tree,
      { ...NOTHING_YET, [verdict(tree, id).track]: id, use: verdict(tree, id).ceiling },
      null,
      today
    ),
    drawnIn(tree)
  )

describe('beside an outcome stands', () => {
  test('the answer that brings its verdict, with what it is mixed up with', () => {
    const seen = seenIn(jar, { 'surface-texture': 'dry-fuzzy' })
    expect(seen).toMatchObject({
      verdict: 'likely-mold',
      observation: 'surface-texture',
      answer: 'dry-fuzzy',
      picture: 'dry-fuzzy',
      general: false
    })
    expect(seen?.compare).toMatchObject({
      pair: { id: 'wrinkled-film-and-mold' },
      seen: 'other',
      picture: 'flat-wrinkled-film'
    })
  })

  test('what the light from the side showed, where it decided, compared from the side', () => {
    const seen = seenIn(jar, { 'surface-texture': 'unsure', 'side-light': 'hairs-or-powder' })
    expect(seen).toMatchObject({
      verdict: 'likely-mold',
      observation: 'side-light',
      answer: 'hairs-or-powder'
    })
    expect(seen?.compare?.picture).toBe('side-film-yeast')
  })

  test('the answer that gives the reason, before another that brings the same verdict', () => {
    const pickles = named('brined-vegetables')
    const told: Answers = {
      'jar-story': { 'insects-inside': 'yes' },
      'brine-color': 'metallic-green',
      'salt-share': 'unsure'
    }
    expect(seenIn(pickles, told)).toMatchObject({ verdict: 'discard-and-sanitize' })
    expect(seenIn(pickles, { ...told, 'jar-story': {} })).toMatchObject({
      observation: 'brine-color',
      answer: 'metallic-green'
    })
  })

  test('a sign that raised the verdict of the bottle', () => {
    const bottle = named('kombucha-bottle')
    expect(seenIn(bottle, { 'bottle-signs': { bulging: 'yes' } })).toMatchObject({
      observation: 'bottle-signs',
      answer: 'bulging',
      picture: 'bottle-cap-bulging'
    })
  })

  test('the ordinary look of an ordinary jar', () => {
    expect(seenIn(jar, { 'surface-texture': 'wet-film' })).toMatchObject({
      verdict: 'normal-growth',
      answer: 'wet-film',
      compare: { pair: { id: 'new-film-and-early-mold' }, picture: 'early-mold' }
    })
  })
})

describe('nothing is shown', () => {
  test('of somebody who is ill beside a jar that looks well', () => {
    const ill = { 'people-signs': { 'illness-signs': 'yes' } } as const
    expect(seenIn(jar, { ...ill, 'surface-texture': 'wet-film' })).toBeNull()
  })

  test('in an emergency', () => {
    expect(seenIn(jar, { 'people-signs': { 'severe-symptoms': 'yes' } })).toBeNull()
  })

  test('of an ordinary look where the batch is thrown out for what has no drawing', () => {
    const told: Answers = {
      'surface-texture': 'wet-film',
      'jar-signs': { 'cleaner-got-in': 'yes' }
    }
    expect(seenIn(jar, told)).toBeNull()
  })

  test('where nobody knows what was seen', () => {
    expect(seenIn(jar, { 'surface-texture': 'unsure', 'side-light': 'unsure' })).toBeNull()
    const two = { observation: 'surface-texture', sign: null, answers: ['dry-fuzzy', 'wet-film'] }
    const told = usualExcept(jar, { 'surface-texture': 'dry-fuzzy' })
    const report = reportOn(evaluate(jar, told, [two]), null, today)
    expect(seenAnswer(report, drawnIn(jar))).toBeNull()
  })
})

test('no drawing is gentler than its verdict: what is usual stands beside nothing that is thrown out', () => {
  let shown = 0
  for (const tree of trees) {
    for (const observation of Object.values(tree.observations)) {
      if (observation.kind !== 'choice') continue
      for (const { id } of observation.answers) {
        const answers = usualExcept(tree, { [observation.id]: id })
        const { outcome } = evaluate(tree, answers).walk
        const seen = seenIn(tree, { [observation.id]: id })
        if (seen === null) continue
        shown++
        const of = tree.observations[seen.observation]
        const isUsual =
          of?.kind === 'choice' && of.answers.some(({ id, usual }) => usual && id === seen.answer)
        const at = `${tree.id} ${observation.id} ${id}`
        expect([at, seen.picture.startsWith('mark-')]).toEqual([at, false])
        expect([at, Object.values(outcome).includes(seen.verdict)]).toEqual([at, true])
        expect([at, verdict(tree, seen.verdict).track === 'person']).toEqual([at, false])
        if (isUsual && verdict(tree, seen.verdict).track === 'batch') {
          expect([at, seen.picture, verdict(tree, seen.verdict).ceiling]).not.toEqual([
            at,
            seen.picture,
            'never'
          ])
        }
      }
    }
  }
  expect(shown).toBeGreaterThan(100)
})

describe('a sheet about no jar shows', () => {
  test('mold where it says mold, the usual look where it withholds nothing, and says so', () => {
    expect(generalOf(jar, 'likely-mold')).toMatchObject({ answer: 'dry-fuzzy', general: true })
    expect(generalOf(jar, 'normal-growth')).toMatchObject({ answer: 'wet-film', general: true })
    expect(generalOf(jar, 'yeast-strands')).toMatchObject({ answer: 'strands-or-sediment' })
  })

  test('nothing for a verdict with many looks, nor for one about a person', () => {
    for (const id of ['discard-and-sanitize', 'wait-and-recheck', ...verdictsOf(jar, 'person')]) {
      expect([id, generalOf(jar, id)]).toEqual([id, null])
    }
  })
})

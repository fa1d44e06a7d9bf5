import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { possible } from '../../src/evaluate/possible.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { entropy, fewestScreens } from '../../src/figures/bound.ts'
import { type Figures, figuresAsAsked, figuresOf } from '../../src/figures/figures.ts'
import { type Shares, sharesOf } from '../../src/figures/shares.ts'
import { LIMITS } from '../../src/figures/take-walks.ts'
import type { Answer, Answers } from '../../src/tree/answers.ts'
import { effectiveChoice } from '../../src/tree/effective.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { spoken } from '../../src/tree/urgency.ts'
import { randomTree } from '../helpers/random-tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { sketch } from '../helpers/sketch.ts'

/** One walk, taken by `walk()` and judged by `possible()` alone. */
interface Taken {
  readonly share: number
  readonly screens: number
  readonly settled: number
  readonly said: string
  readonly waits: boolean
  readonly unsure: boolean
}

function everyWalk(tree: Tree, shares: Shares, first?: string): readonly Taken[] {
  const taken: Taken[] = []
  const go = (answers: Answers, share: number, screens: number, settledAt: number | null): void => {
    const walked = walk(tree, answers)
    const settled = settledAt ?? (possible(tree, answers).settled ? screens : null)
    const asks = screens === 0 && first !== undefined ? first : walked.asks?.observation
    if (asks === undefined) {
      taken.push({
        share,
        screens,
        settled: settled as number,
        said: spoken(tree, walked.outcome)[0] ?? 'nothing',
        waits: walked.outcome.batch === 'wait-and-recheck',
        unsure: Object.entries(answers).some(([id, answer]) =>
          staysUnsure(tree, answers, id, answer)
        )
      })
      return
    }
    for (const { answer, share: part } of shares[asks] ?? []) {
      go({ ...answers, [asks]: answer }, share * part, screens + 1, settled)
    }
  }
  go({}, 1, 0, null)
  return taken
}

function staysUnsure(tree: Tree, answers: Answers, id: string, answer: Answer): boolean {
  const observation = tree.observations[id]
  if (observation?.kind === 'choice') {
    if (observation.settles !== undefined) return false
    return effectiveChoice(tree, observation, answers)?.answer === 'unsure'
  }
  return answer === 'unsure' || Object.values(answer).includes('unsure')
}

const share = (all: readonly Taken[], of: (one: Taken) => boolean | number) =>
  all.reduce((sum, one) => sum + one.share * Number(of(one)), 0)

function expectAgreement(tree: Tree, figures: Figures, shares: Shares): void {
  const all = everyWalk(tree, shares)
  expect(figures.method.kind).toBe('exact')
  expect(figures.screens.mean).toBeCloseTo(
    share(all, one => one.screens),
    9
  )
  expect(figures.settled.mean).toBeCloseTo(
    share(all, one => one.settled),
    9
  )
  expect(figures.screens.longest).toBe(Math.max(...all.map(one => one.screens)))
  expect(figures.settled.longest).toBe(Math.max(...all.map(one => one.settled)))
  expect(figures.waits).toBeCloseTo(
    share(all, one => one.waits),
    9
  )
  expect(figures.unsure).toBeCloseTo(
    share(all, one => one.unsure),
    9
  )
  expect(figures.waitsOrUnsure).toBeCloseTo(
    share(all, one => one.waits || one.unsure),
    9
  )
  expect(figures.byVerdict.map(({ verdict }) => verdict).sort()).toEqual(
    [...new Set(all.map(one => one.said))].sort()
  )
  for (const { verdict, share: part, screens, settled } of figures.byVerdict) {
    const these = all.filter(one => one.said === verdict)
    expect(part).toBeCloseTo(
      share(these, () => 1),
      9
    )
    expect(screens.mean * part).toBeCloseTo(
      share(these, one => one.screens),
      9
    )
    expect(screens.longest).toBe(Math.max(...these.map(one => one.screens)))
    expect(settled.mean * part).toBeCloseTo(
      share(these, one => one.settled),
      9
    )
  }
  for (const { observation, screens, settled } of figures.askedFirst) {
    const these = everyWalk(tree, shares, observation)
    expect(screens.mean).toBeCloseTo(
      share(these, one => one.screens),
      9
    )
    expect(settled.mean).toBeCloseTo(
      share(these, one => one.settled),
      9
    )
  }
  expect(figures.bound.fewestScreens).toBeLessThanOrEqual(figures.settled.mean + 1e-9)
}

const walksOf = (shares: Shares) => Object.values(shares).reduce((n, all) => n * all.length, 1)

/** Texture is read twice, settled by light, and a told smell is heard at the end. */
const settling = sketch(
  {
    people: { '?!ill': '+doctor-today ~never', '?!severe': '+emergency ~never', else: '→ texture' },
    texture: {
      '!fuzzy': '+likely-mold → tail',
      film: '+wait-and-recheck → smell',
      wet: '→ smell',
      unsure: '+wait-and-recheck → light'
    },
    light: { unsure: '→ smell' },
    smell: {
      '?!putrid': '+discard-and-sanitize',
      '?soapy': '',
      'turn putrid': '→ tail',
      else: '→ again'
    },
    again: {
      asks: 'texture',
      fuzzy: '= likely-mold',
      film: '→ ph',
      wet: '= normal-growth',
      unsure: '→ ph'
    },
    ph: {
      '<= 4.2': '= normal-growth',
      '> 4.2': '= discard-and-sanitize',
      between: '= wait-and-recheck',
      unsure: '= wait-and-recheck'
    },
    tail: { asks: 'people', '?ill': '+poison-help', '?severe': '', else: '= discard-and-sanitize' }
  },
  {
    about: { people: 'person' },
    volunteered: ['soapy'],
    settles: { light: { of: 'texture', as: { hairs: 'fuzzy', flat: 'wet' } } }
  }
)

describe('figures of a tree are those of all its walks', () => {
  test('on random trees, under even answers', () => {
    let compared = 0
    fc.assert(
      fc.property(
        randomTree.filter(tree => walksOf(sharesOf(tree)) <= 3000),
        tree => {
          compared++
          const figures = figuresOf(tree)
          expectAgreement(tree, figures, sharesOf(tree))
          expect(figures).toMatchObject(figuresAsAsked(tree))
        }
      ),
      { numRuns: 120 }
    )
    expect(compared).toBe(120)
  })

  test('where an answer settles another, and one is heard untold', () => {
    expectAgreement(settling, figuresOf(settling), sharesOf(settling))
  })

  test('under counted answers, several signs at once among them', () => {
    const counted = {
      people: [
        { answer: { ill: 'no', severe: 'no' } as const, count: 90 },
        { answer: { ill: 'yes', severe: 'unsure' } as const, count: 10 }
      ],
      texture: [
        { answer: 'wet', count: 3 },
        { answer: 'unsure', count: 1 },
        { answer: 'fuzzy', count: 0 }
      ],
      smell: [
        { answer: { putrid: 'no', soapy: 'yes' } as const, count: 1 },
        { answer: { putrid: 'no' } as const, count: 4 }
      ]
    }
    const shares = sharesOf(settling, counted)
    const figures = figuresOf(settling, counted)
    expect(shares.texture).toHaveLength(2)
    expectAgreement(settling, figures, shares)
    expect(figures.counted).toEqual(['people', 'texture', 'smell'])
    // Nobody is in an emergency: what only such a call comes to is not there.
    expect(figures.byVerdict.map(({ verdict }) => verdict)).not.toContain('emergency')
  })
})

describe('what nobody is asked is named', () => {
  test('a question past an answer that nobody gives', () => {
    const counted = { texture: [{ answer: 'wet', count: 5 }] }
    const figures = figuresOf(settling, counted)
    expect(figures.neverAsked).toEqual(['light', 'ph'])
    expect(figures.neverMet).toEqual(['light', 'ph'])
  })
})

const SAMPLED = ['kombucha-jar', 'sourdough-starter']

describe('a sample stands in where every walk is too many', () => {
  test('its means lie within five standard errors of the exact ones', async () => {
    // Two trees, since every walk is taken 20,000 times: one of each size.
    for (const tree of (await shippedTrees()).filter(({ id }) => SAMPLED.includes(id))) {
      const exact = figuresAsAsked(tree)
      const sampled = figuresAsAsked(tree, { ...LIMITS, halts: 0 })
      expect(exact.method.kind).toBe('exact')
      expect(sampled.method).toMatchObject({ kind: 'sampled', walks: 20_000 })
      for (const side of ['screens', 'settled'] as const) {
        const { mean, standardError } = sampled[side]
        expect(standardError).toBeGreaterThan(0)
        expect(Math.abs(mean - exact[side].mean)).toBeLessThan(5 * standardError)
      }
      const error = Math.sqrt(0.25 / 20_000)
      expect(Math.abs(sampled.waits - exact.waits)).toBeLessThan(5 * error)
      expect(Math.abs(sampled.waitsOrUnsure - exact.waitsOrUnsure)).toBeLessThan(5 * error)
      expect(exact.screens.longest).toBeLessThanOrEqual(exact.mostPossible)
    }
  })
})

describe('the bound is an entropy, in bits', () => {
  test('eight even outcomes take three even screens of two answers', () => {
    const half = [
      { answer: 'a', share: 0.5 },
      { answer: 'b', share: 0.5 }
    ]
    expect(entropy(Array(8).fill(1 / 8))).toBeCloseTo(3, 12)
    expect(fewestScreens(3, { a: half, b: half, c: half, d: half })).toBeCloseTo(3, 12)
  })

  test('a screen of more answers is counted at what it tells', () => {
    const even = (n: number) =>
      Array.from({ length: n }, (_, i) => ({ answer: `${i}`, share: 1 / n }))
    // Two bits by the larger one, the third by two thirds of what is left to ask.
    expect(fewestScreens(3, { a: even(2), b: even(4) })).toBeCloseTo(2, 12)
    expect(fewestScreens(1, { a: even(2), b: even(4) })).toBeCloseTo(0.5, 12)
  })
})

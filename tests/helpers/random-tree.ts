import fc from 'fast-check'
import type { Answer, Answers } from '../../src/tree/answers.ts'
import type { Observation, Range } from '../../src/tree/observation.ts'
import type { Branch, Condition, Effect, Question, Rule, Tree } from '../../src/tree/tree.ts'
import { sketch } from './sketch.ts'
import { VERDICTS } from './verdicts.ts'

// Small trees of every kind of question: observations read twice, settled, borderline, volunteered.

const LIMITS = [2.5, 4.2, 4.6]
const RAISES = VERDICTS.filter(verdict => verdict.id !== 'emergency').map(verdict => verdict.id)
const BATCH = VERDICTS.filter(verdict => verdict.track === 'batch').map(verdict => verdict.id)

const effect: fc.Arbitrary<Effect> = fc.record({
  raise: fc.oneof(
    { weight: 3, arbitrary: fc.constant([]) },
    { weight: 1, arbitrary: fc.subarray(RAISES, { maxLength: 2 }) }
  ),
  use: fc.constantFrom('as-directed', 'as-directed', 'as-directed', 'not-yet', 'never'),
  notes: fc.subarray(['note-a', 'note-b'], { maxLength: 1 })
})

const OBSERVATIONS: Readonly<Record<string, Observation>> = {
  texture: choice('texture', ['fuzzy', 'wrinkled', 'wet']),
  light: {
    ...choice('light', ['hairs', 'flat']),
    settles: 'texture',
    answers: [
      { id: 'hairs', danger: false, usual: false, standsFor: 'fuzzy' },
      { id: 'flat', danger: false, usual: true, standsFor: 'wet' }
    ]
  },
  color: choice('color', ['pink', 'plain']),
  people: signs('people', ['ill', 'at-risk'], 'person'),
  insects: signs('insects', ['inside', 'eels', 'salty'], 'batch', ['salty']),
  ph: measure('ph', 'ph', [
    { id: 'meter', plusMinus: 0.05 },
    { id: 'strip', plusMinus: 0.5 }
  ]),
  day: measure('day', 'day', [])
}

/** A random tree: questions in a row, each answer leading to a later one or to an end. */
export const randomTree: fc.Arbitrary<Tree> = fc
  .array(fc.constantFrom('texture', 'color', 'people', 'insects', 'ph', 'day'), {
    minLength: 1,
    maxLength: 6
  })
  .chain(asks => {
    const names = asks.map((_, i) => `q${i}`)
    return fc.tuple(...asks.map((id, i) => questionArb(names, i, OBSERVATIONS[id] as Observation)))
  })
  .map(questions => treeOf(questions))

function questionArb(
  names: readonly string[],
  i: number,
  observation: Observation
): fc.Arbitrary<Question> {
  const later = names.slice(i + 1)
  const leads = fc.oneof(
    {
      weight: later.length === 0 ? 0 : 4,
      arbitrary: fc.constantFrom(...(later.length === 0 ? ['q0'] : later)).map(to => ({ to }))
    },
    { weight: 1, arbitrary: fc.constantFrom(...BATCH).map(end => ({ end })) }
  )
  const branch: fc.Arbitrary<Branch> = fc.tuple(effect, leads).map(([e, l]) => ({ ...e, leads: l }))
  const base = { id: names[i] as string, asks: observation.id, because: [] }
  switch (observation.kind) {
    case 'choice':
      return fc
        .tuple(
          ...[...observation.answers.map(a => a.id), 'unsure'].map(id =>
            fc.tuple(fc.constant(id), branch)
          )
        )
        .map(entries => ({
          ...base,
          kind: 'choice' as const,
          answers: Object.fromEntries(entries)
        }))
    case 'signs':
      return fc
        .record({
          volunteered: fc.boolean().map(b => b && i > 0),
          effects: fc.tuple(
            ...observation.signs.map(({ id }) =>
              fc.tuple(fc.constant(id), fc.record({ yes: effect, unsure: effect }))
            )
          ),
          turns: fc.array(
            fc
              .tuple(
                branch,
                fc.subarray(
                  observation.signs.map(s => s.id),
                  { minLength: 1 }
                ),
                fc.boolean()
              )
              .map(([b, signs, orUnsure]) => ({ ...b, signs, orUnsure })),
            { maxLength: 2 }
          ),
          otherwise: branch
        })
        .map(({ volunteered, effects, turns, otherwise }) => ({
          ...base,
          kind: 'signs' as const,
          volunteered,
          signs: Object.fromEntries(effects),
          turns,
          otherwise
        }))
    case 'measure':
      return fc
        .record({
          cuts: fc.subarray(observation.unit === 'ph' ? LIMITS : [1, 7, 30], { minLength: 1 }),
          branches: fc.array(branch, { minLength: 4, maxLength: 4 }),
          taste: fc.boolean(),
          tasteEffect: effect,
          borderline: branch,
          unsure: branch
        })
        .map(({ cuts, branches, taste, tasteEffect, borderline, unsure }) => ({
          ...base,
          kind: 'measure' as const,
          ranges: rangesOf(cuts).map((range, k) => ({ ...(branches[k] as Branch), range })),
          taste: taste ? [{ ...tasteEffect, range: { under: 2.5 } }] : [],
          borderline,
          unsure
        }))
  }
}

function rangesOf(cuts: readonly number[]): readonly Range[] {
  return [
    { atMost: cuts[0] as number },
    ...cuts.slice(1).map((cut, i) => ({ over: cuts[i] as number, atMost: cut })),
    { over: cuts.at(-1) as number }
  ]
}

/** The questions that the start leads to, as a tree; light is asked where a texture is read. */
function treeOf(questions: readonly Question[]): Tree {
  const byId = Object.fromEntries(questions.map(question => [question.id, question]))
  const asked = new Set(questions.map(question => question.asks))
  const observations = Object.values(OBSERVATIONS).filter(
    ({ id }) => asked.has(id) || (id === 'light' && asked.has('texture'))
  )
  return {
    ...sketch({}),
    observations: Object.fromEntries(observations.map(o => [o.id, o])),
    start: 'q0',
    questions: byId
  }
}

/** A value for each of the tree's observations, in full: nothing is left untold. */
export function completeAnswers(tree: Tree): fc.Arbitrary<Answers> {
  const each = Object.values(tree.observations).map(observation =>
    answerArb(observation).map(answer => [observation.id, answer] as const)
  )
  return fc.tuple(...each).map(entries => Object.fromEntries(entries))
}

/** Some of the observations told, and of a screen of signs perhaps only some. */
export function someAnswers(tree: Tree): fc.Arbitrary<Answers> {
  const ids = Object.keys(tree.observations)
  return fc
    .tuple(completeAnswers(tree), fc.subarray(ids), fc.boolean())
    .map(([all, kept, partial]) =>
      Object.fromEntries(
        kept.map(id => {
          const answer = all[id] as Answer
          const isSigns = tree.observations[id]?.kind === 'signs'
          return [
            id,
            isSigns && partial ? Object.fromEntries(Object.entries(answer).slice(0, 1)) : answer
          ]
        })
      )
    )
}

export function answerArb(observation: Observation): fc.Arbitrary<Answer> {
  switch (observation.kind) {
    case 'choice':
      return fc.constantFrom(...observation.answers.map(a => a.id), 'unsure')
    case 'signs':
      return fc
        .tuple(
          ...observation.signs.map(({ id }) =>
            fc.tuple(fc.constant(id), fc.constantFrom('no', 'no', 'no', 'yes', 'unsure'))
          )
        )
        .map(entries => Object.fromEntries(entries) as Answer)
    case 'measure': {
      const reading =
        observation.unit === 'day'
          ? fc.integer({ min: 0, max: 40 })
          : fc.integer({ min: 20, max: 50 }).map(n => n / 10)
      const width =
        observation.instruments.length === 0 ? fc.constant(0) : fc.constantFrom(0.05, 0.3, 0.5)
      return fc.oneof(
        { weight: 1, arbitrary: fc.constant('unsure') },
        {
          weight: 6,
          arbitrary: fc
            .tuple(reading, width)
            .map(([r, w]) => ({ low: r - w, reading: r, high: r + w }))
        }
      )
    }
  }
}

/** A random rule over a tree's own observations. */
export function randomRule(tree: Tree): fc.Arbitrary<Rule> {
  const condition = fc
    .constantFrom(
      ...Object.values(tree.observations).filter(
        o => o.kind !== 'choice' || o.settles === undefined
      )
    )
    .chain((observation): fc.Arbitrary<Condition> => {
      switch (observation.kind) {
        case 'choice':
          return fc
            .subarray([...observation.answers.map(a => a.id), 'unsure'], { minLength: 1 })
            .map(among => ({ kind: 'choice' as const, observation: observation.id, among }))
        case 'signs':
          return fc
            .tuple(
              fc.constantFrom(...observation.signs.map(s => s.id)),
              fc.subarray(['yes', 'no', 'unsure'] as const, { minLength: 1 })
            )
            .map(([sign, among]) => ({
              kind: 'sign' as const,
              observation: observation.id,
              sign,
              among
            }))
        case 'measure':
          return fc
            .constantFrom<{ readonly within: Range } | { readonly straddles: number } | 'unsure'>(
              { within: { atMost: 4.2 } },
              { within: { over: 4.2 } },
              { within: { atLeast: 7 } },
              { straddles: 4.2 },
              'unsure'
            )
            .map(is => ({ kind: 'measure' as const, observation: observation.id, is }))
      }
    })
  const claim = fc.oneof(
    fc
      .tuple(fc.constantFrom('at-least' as const, 'at-most' as const), fc.constantFrom(...RAISES))
      .map(([kind, verdict]) => ({ kind, verdict })),
    fc
      .tuple(
        fc.constantFrom('use-is' as const, 'use-at-most' as const, 'use-at-least' as const),
        fc.constantFrom('as-directed' as const, 'not-yet' as const, 'never' as const)
      )
      .map(([kind, use]) => ({ kind, use })),
    fc
      .constantFrom('person' as const, 'container' as const, 'batch' as const)
      .map(track => ({ kind: 'nothing-about' as const, track })),
    fc.constant({ kind: 'note' as const, note: 'note-a' })
  )
  return fc.record({
    id: fc.constant('random-rule'),
    when: fc.array(condition, { maxLength: 2 }),
    unless: fc.array(fc.array(condition, { minLength: 1, maxLength: 2 }), { maxLength: 1 }),
    restUsual: fc.boolean(),
    claim,
    basis: fc.constant('own-caution' as const),
    because: fc.constant([])
  })
}

function choice(id: string, answers: readonly string[]) {
  const last = answers.at(-1)
  return {
    kind: 'choice' as const,
    id,
    about: 'batch' as const,
    answers: answers.map((answer, i) => ({ id: answer, danger: i === 0, usual: answer === last }))
  }
}

function signs(
  id: string,
  all: readonly string[],
  about: 'batch' | 'person',
  volunteered: readonly string[] = []
) {
  return {
    kind: 'signs' as const,
    id,
    about,
    signs: all.map((sign, i) => ({
      id: sign,
      danger: i === 0,
      volunteered: volunteered.includes(sign)
    }))
  }
}

function measure(
  id: string,
  unit: 'ph' | 'day',
  instruments: readonly { id: string; plusMinus: number }[]
) {
  return {
    kind: 'measure' as const,
    id,
    about: 'batch' as const,
    unit,
    instruments,
    span: { from: 0, to: 100 },
    usual: unit === 'ph' ? { atMost: 4.2 } : { atLeast: 7 }
  }
}

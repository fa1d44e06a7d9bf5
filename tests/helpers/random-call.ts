import fc from 'fast-check'
import type { Fact } from '../../src/evaluate/facts.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { emergencySigns } from '../../src/tree/emergency.ts'
import type { Observation } from '../../src/tree/observation.ts'
import { measured } from '../../src/tree/reading.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { usualExcept } from './usual.ts'

/** A fact as somebody tells it: a raw reading with or without its instrument, one sign, one answer. */
export function rawFact(observation: Observation): fc.Arbitrary<Fact> {
  const told = (answer: Fact['answer']): Fact => ({ observation: observation.id, answer })
  switch (observation.kind) {
    case 'choice':
      return fc.constantFrom(...observation.answers.map(({ id }) => id), 'unsure').map(told)
    case 'signs':
      return fc
        .tuple(
          fc.constantFrom(...observation.signs.map(({ id }) => id)),
          fc.constantFrom('yes' as const, 'no' as const, 'no' as const, 'unsure' as const)
        )
        .map(([sign, value]) => told({ [sign]: value }))
    case 'measure': {
      const { from, to } = observation.span
      // Where the limits lie: hardly anybody tells a pH of 13, or a day ten years on.
      const [low, high] = observation.unit === 'ph' ? [2, 6] : [from, Math.min(to, 60)]
      const reading =
        observation.unit === 'day'
          ? fc.integer({ min: low, max: high })
          : fc.integer({ min: low * 20, max: Math.min(high, to) * 20 }).map(n => n / 20)
      const instrument = fc.constantFrom(undefined, ...observation.instruments.map(({ id }) => id))
      return fc.oneof(
        { weight: 1, arbitrary: fc.constant(told('unsure')) },
        {
          weight: 6,
          arbitrary: fc
            .tuple(reading, instrument)
            .map(([value, used]) => told(measured(observation, value, used)))
        }
      )
    }
  }
}

/** Facts of one call: what an ordinary jar shows of some observations, and whatever else is told, twice too. */
export function rawCall(tree: Tree): fc.Arbitrary<readonly Fact[]> {
  const observations = Object.values(tree.observations)
  const usual = usualExcept(tree, {})
  const ordinary = fc
    .subarray(Object.keys(usual))
    .map(ids => ids.map((id): Fact => ({ observation: id, answer: usual[id] as Fact['answer'] })))
  const odd = fc.array(fc.constantFrom(...observations).chain(rawFact), { maxLength: 5 })
  return fc.tuple(ordinary, odd).map(([first, second]) => [...first, ...second])
}

/** An answer to everything that a walk can still ask, as raw facts; no emergency, which ends it at once. */
export function rawRest(tree: Tree): fc.Arbitrary<Readonly<Record<string, Fact['answer']>>> {
  const ends = new Set(emergencySigns(tree).map(one => `${one.observation} ${one.sign}`))
  const each = Object.values(tree.observations).map(observation =>
    observation.kind === 'signs'
      ? fc
          .tuple(
            ...observation.signs.map(({ id }) =>
              fc.tuple(
                fc.constant(id),
                fc.constantFrom(
                  ends.has(`${observation.id} ${id}`) ? ('no' as const) : ('yes' as const),
                  'no' as const,
                  'no' as const,
                  'unsure' as const
                )
              )
            )
          )
          .map(signs => [observation.id, Object.fromEntries(signs) as Fact['answer']] as const)
      : rawFact(observation).map(({ answer }) => [observation.id, answer] as const)
  )
  return fc.tuple(...each).map(entries => Object.fromEntries(entries))
}

/** What is still missing of an observation's answer: of a screen the signs that were not told. */
export function missing(answers: Answers, observation: string, all: Fact['answer']): Fact {
  const before = answers[observation]
  if (typeof before !== 'object' || 'reading' in before || typeof all !== 'object') {
    return { observation, answer: all }
  }
  const open = Object.entries(all).filter(([sign]) => !Object.hasOwn(before, sign))
  return { observation, answer: Object.fromEntries(open) as Fact['answer'] }
}

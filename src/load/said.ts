import type { Range } from '../tree/observation.ts'
import { rangeOf } from './build-observations.ts'
import { unknownName } from './linking.ts'
import type { Project, Shaped } from './project.ts'
import type { Report } from './report.ts'
import type { AuthoredObservations } from './schemas/observations.ts'
import type { AuthoredSaid } from './schemas/said.ts'

/** A caller's own words, and what they tell. */
export interface Said {
  readonly phrase: string
  readonly observation: string
  /** An answer or sign, or `none` of the signs; null where the words name only what is observed. */
  readonly answer: string | null
  /** Whether they tell it, may mean it, or say that it is not there. */
  readonly force: 'told' | 'may-mean' | 'rules-out'
}

/** A sign that two others told together amount to. */
export interface Both {
  readonly observation: string
  readonly sign: string
  readonly of: readonly [string, string]
}

/** An answer of a choice that stands for readings of a unit. */
export interface Band {
  readonly observation: string
  readonly answer: string
  readonly unit: 'hour' | 'fahrenheit'
  readonly range: Range
}

/** Everything that callers are known to say. */
export interface CallersWords {
  /** By language tag. */
  readonly phrases: Readonly<Record<string, readonly Said[]>>
  /** What is made, and in what, by language tag. */
  readonly foods: Readonly<Record<string, readonly string[]>>
  readonly both: readonly Both[]
  readonly bands: readonly Band[]
}

type ByLanguage = Readonly<Record<string, readonly string[]>> | undefined

/** Callers' own words; names in them that refer to nothing are reported. */
export function saidBy({ observations, said }: Project, report: Report): CallersWords {
  const phrases: Record<string, Said[]> = {}
  const add = (texts: ByLanguage, of: Omit<Said, 'phrase'>): void => {
    for (const [tag, some] of Object.entries(texts ?? {})) {
      const ofTag = phrases[tag] ?? []
      phrases[tag] = ofTag
      ofTag.push(...some.map(phrase => ({ phrase, ...of })))
    }
  }
  for (const [id, observation] of Object.entries(observations?.value ?? {})) {
    add(observation.said, { observation: id, answer: null, force: 'told' })
    for (const [answer, { said: texts }] of Object.entries(answersOf(observation))) {
      add(texts, { observation: id, answer, force: 'told' })
    }
  }
  const both: Both[] = []
  const bands: Band[] = []
  for (const [id, meanings] of Object.entries(said?.value.phrases ?? {})) {
    for (const [answer, meaning] of Object.entries(meanings)) {
      for (const force of ['told', 'may-mean', 'rules-out'] as const) {
        add(meaning[force], { observation: id, answer, force })
      }
      for (const other of meaning['as-well'] ?? []) {
        add(meaning['rules-out'], { observation: id, answer: other, force: 'rules-out' })
      }
      if (meaning.reads) {
        const { unit, ...range } = meaning.reads
        bands.push({ observation: id, answer, unit, range: rangeOf(range) })
      }
      if (meaning.both) both.push({ observation: id, sign: answer, of: meaning.both })
    }
  }
  if (said && observations) checkNames(said, observations.value, report)
  return { phrases, foods: said?.value.foods ?? {}, both, bands }
}

function checkNames(
  { value, doc }: Shaped<AuthoredSaid>,
  observations: AuthoredObservations,
  report: Report
): void {
  for (const [id, meanings] of Object.entries(value.phrases)) {
    const observation = observations[id]
    if (observation === undefined) {
      const place = doc.place(['phrases', id], 'key')
      unknownName(report, 'unknown-observation', place, id, Object.keys(observations))
      continue
    }
    const answers = Object.keys(answersOf(observation))
    const known = observation.kind === 'signs' ? [...answers, 'none'] : answers
    const code = observation.kind === 'signs' ? 'unknown-sign' : 'unknown-answer'
    for (const [answer, { both = [], 'as-well': more = [] }] of Object.entries(meanings)) {
      for (const name of [answer, ...both, ...more]) {
        if (known.includes(name)) continue
        unknownName(report, code, doc.place(['phrases', id, answer], 'key'), name, known)
      }
    }
  }
}

type Answers = Readonly<Record<string, { readonly said?: ByLanguage }>>

function answersOf(observation: AuthoredObservations[string]): Answers {
  if (observation.kind === 'choice') return observation.answers
  return observation.kind === 'signs' ? observation.signs : {}
}

import type { CallersWords, SaidPhrase, SignPair, UnitBand } from '../tree/callers-words.ts'
import { rangeOf } from './build-observations.ts'
import { unknownName } from './linking.ts'
import type { AuthoredProject, Shaped } from './project.ts'
import type { FindingReport } from './report.ts'
import type { AuthoredObservations } from './schemas/observations.ts'
import type { AuthoredSaid } from './schemas/said.ts'

type ByLanguage = Readonly<Record<string, readonly string[]>> | undefined

/** Callers' own words; names in them that refer to nothing are reported. */
export function saidBy(
  { observations, said, trees }: AuthoredProject,
  report: FindingReport
): CallersWords {
  const phrases: Record<string, SaidPhrase[]> = {}
  const add = (texts: ByLanguage, of: Omit<SaidPhrase, 'phrase'>): void => {
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
  const both: SignPair[] = []
  const bands: UnitBand[] = []
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
  return {
    phrases,
    foods: said?.value.foods ?? {},
    ferments: fermentsIn(said, trees, report),
    both,
    bands
  }
}

function fermentsIn(
  said: Shaped<AuthoredSaid> | null,
  trees: AuthoredProject['trees'],
  report: FindingReport
): CallersWords['ferments'] {
  const ids = [...trees.keys()]
  return Object.fromEntries(
    Object.entries(said?.value.ferments ?? {}).map(([id, names]) => {
      if (said && !ids.includes(id)) {
        unknownName(report, 'unknown-tree', said.doc.place(['ferments', id], 'key'), id, ids)
      }
      return [id, Object.values(names).flat()]
    })
  )
}

function checkNames(
  { value, doc }: Shaped<AuthoredSaid>,
  observations: AuthoredObservations,
  report: FindingReport
): void {
  for (const [id, meanings] of Object.entries(value.phrases)) {
    const observation = observations[id]
    if (observation === undefined) {
      const place = doc.place(['phrases', id], 'key')
      unknownName(report, 'unknown-observation', place, id, Object.keys(observations))
      continue
    }
    const answers = Object.keys(answersOf(observation))
    const names = observation.kind === 'signs' ? [...answers, 'none'] : answers
    const code = observation.kind === 'signs' ? 'unknown-sign' : 'unknown-answer'
    for (const [answer, { both = [], 'as-well': more = [] }] of Object.entries(meanings)) {
      for (const name of [answer, ...both, ...more]) {
        if (names.includes(name)) continue
        unknownName(report, code, doc.place(['phrases', id, answer], 'key'), name, names)
      }
    }
  }
}

type Answers = Readonly<Record<string, { readonly said?: ByLanguage }>>

function answersOf(observation: AuthoredObservations[string]): Answers {
  if (observation.kind === 'choice') return observation.answers
  return observation.kind === 'signs' ? observation.signs : {}
}

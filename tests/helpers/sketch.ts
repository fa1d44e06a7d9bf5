import type { Observation, Range, Track } from '../../src/tree/observation.ts'
import { SAYS_NOTHING } from '../../src/tree/says-nothing.ts'
import type { Branch, Effect, Question, Rule, Tree, Use } from '../../src/tree/tree.ts'
import { VERDICTS } from './verdicts.ts'

/**
 * A tree in three lines. A question's answers are written as a branch:
 * `+likely-mold ~never *note → smell` raises, lowers the use, adds a note and leads on;
 * `= normal-growth` ends. `!` before an answer or a sign marks a danger sign.
 *
 * choice:  { '!fuzzy': '+likely-mold → b', wet: '→ b', unsure: '→ b' }
 * signs:   { '?!insects': '+discard-and-sanitize', '?!insects unsure': '~not-yet', else: '→ b' }
 *          `?a|b →`: a turn, with `turn a b`: 'turn a b': '→ c'
 * measure: { '<= 4.2': '→ b', '> 4.2': '→ c', between: '→ d', unsure: '→ d' }
 * `asks` names the observation when it is not the question's own name.
 */
export type Sketch = Readonly<Record<string, Readonly<Record<string, string>>>>

export interface More {
  readonly about?: Readonly<Record<string, Track>>
  /** settling observation → settled observation, answers as `answer: stands for`. */
  readonly settles?: Readonly<
    Record<string, { readonly of: string; readonly as: Record<string, string> }>
  >
  readonly volunteered?: readonly string[]
  readonly usual?: Readonly<Record<string, string>>
  readonly rules?: readonly Rule[]
  readonly unsureNote?: string
  readonly exact?: readonly string[]
  /** Questions whose emergency counts only where the walk comes to them. */
  readonly onlyHere?: readonly string[]
}

export function sketch(questions: Sketch, more: More = {}): Tree {
  const observations: Record<string, Observation> = {}
  const made: Record<string, Question> = {}
  for (const [id, lines] of Object.entries(questions)) {
    const asks = lines.asks ?? id
    const keys = Object.keys(lines).filter(key => key !== 'asks')
    const known = observations[asks]
    const observation = observationOf(asks, keys, more)
    if (known === undefined) observations[asks] = observation
    made[id] = questionOf(id, asks, lines, keys, observation, more)
  }
  for (const [id, { of, as }] of Object.entries(more.settles ?? {})) {
    observations[id] = {
      kind: 'choice',
      id,
      about: more.about?.[of] ?? 'batch',
      settles: of,
      answers: Object.entries(as).map(([answer, standsFor]) => ({
        id: answer,
        danger: false,
        usual: false,
        standsFor
      }))
    }
  }
  return {
    id: 'sketch',
    edition: 1,
    review: { state: 'draft', by: [], reviewed: null, due: '2027-11-01' },
    verdicts: VERDICTS,
    observations,
    start: Object.keys(questions)[0] as string,
    questions: made,
    ...SAYS_NOTHING,
    rules: more.rules ?? [],
    advice: {
      ...SAYS_NOTHING.advice,
      unsureNote: more.unsureNote === undefined ? {} : { person: more.unsureNote }
    }
  }
}

function observationOf(id: string, keys: readonly string[], more: More): Observation {
  const about = more.about?.[id] ?? 'batch'
  const signs = keys.filter(key => key.startsWith('?') && !key.endsWith(' unsure'))
  if (signs.length > 0) {
    return {
      kind: 'signs',
      id,
      about,
      signs: signs.map(key => ({
        id: bare(key),
        danger: key.includes('!'),
        volunteered: more.volunteered?.includes(bare(key)) ?? false
      }))
    }
  }
  if (keys.some(isRange)) {
    const exact = more.exact?.includes(id) ?? false
    return {
      kind: 'measure',
      id,
      about,
      unit: exact ? 'day' : 'ph',
      instruments: exact ? [] : [{ id: 'meter', plusMinus: 0.05 }],
      span: { from: 0, to: 100 }
    }
  }
  return {
    kind: 'choice',
    id,
    about,
    answers: keys
      .filter(key => key !== 'unsure')
      .map(key => ({
        id: bare(key),
        danger: key.startsWith('!'),
        usual: more.usual?.[id] === bare(key)
      }))
  }
}

function questionOf(
  id: string,
  asks: string,
  lines: Readonly<Record<string, string>>,
  keys: readonly string[],
  observation: Observation,
  more: More
): Question {
  const base = {
    id,
    asks,
    because: [],
    ...(more.onlyHere?.includes(id) && { onlyHere: true })
  }
  const at = (key: string) => branchOf(lines[key] ?? '')
  if (observation.kind === 'choice') {
    return {
      ...base,
      kind: 'choice',
      answers: Object.fromEntries(keys.map(key => [bare(key), at(key)]))
    }
  }
  if (observation.kind === 'signs') {
    return {
      ...base,
      kind: 'signs',
      volunteered: more.volunteered?.includes(id) ?? false,
      signs: Object.fromEntries(
        observation.signs.map(({ id: sign }) => {
          const key = keys.find(k => bare(k) === sign && !k.endsWith(' unsure')) as string
          const unsure = keys.find(k => k.endsWith(' unsure') && bare(k) === `${sign} unsure`)
          return [sign, { yes: at(key), unsure: branchOf(unsure ? (lines[unsure] ?? '') : '') }]
        })
      ),
      turns: keys
        .filter(key => key.startsWith('turn '))
        .map(key => ({ ...at(key), signs: key.split(' ').slice(1), orUnsure: false })),
      otherwise: at('else')
    }
  }
  return {
    ...base,
    kind: 'measure',
    volunteered: more.volunteered?.includes(id) ?? false,
    ranges: keys.filter(isRange).map(key => ({ ...at(key), range: rangeOf(key) })),
    taste: keys
      .filter(key => key.startsWith('taste '))
      .map(key => ({ ...at(key), range: rangeOf(key.slice(6)) })),
    borderline: at('between'),
    unsure: at('unsure')
  }
}

const bare = (key: string) => key.replace(/^\??!?/, '')
const isRange = (key: string) => /^[<>]/.test(key)

/** `>= 7 < 10`, `<= 4.2`. */
export function rangeOf(text: string): Range {
  const words = text.split(' ')
  const names = { '<': 'under', '<=': 'atMost', '>': 'over', '>=': 'atLeast' } as const
  const range: { -readonly [K in keyof Range]: Range[K] } = {}
  for (let i = 0; i < words.length; i += 2) {
    range[names[words[i] as keyof typeof names]] = Number(words[i + 1])
  }
  return range
}

function branchOf(text: string): Branch {
  const raise: string[] = []
  const notes: string[] = []
  let use: Use = 'as-directed'
  const words = text.split(' ').filter(word => word !== '')
  for (const word of words) {
    if (word.startsWith('+')) raise.push(word.slice(1))
    if (word.startsWith('*')) notes.push(word.slice(1))
    if (word.startsWith('~')) use = word.slice(1) as Use
  }
  const effect: Effect = { raise, use, notes }
  const to = words[words.indexOf('→') + 1]
  const end = words[words.indexOf('=') + 1]
  return { ...effect, leads: words.includes('→') ? { to: to as string } : { end: end as string } }
}

/** A rule in one line, its condition as data. */
export function rule(
  id: string,
  when: Rule['when'],
  claim: Rule['claim'],
  more: Partial<Rule> = {}
): Rule {
  return {
    id,
    when,
    unless: [],
    restUsual: false,
    claim,
    basis: 'own-caution',
    because: [],
    ...more
  }
}

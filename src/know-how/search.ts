import MiniSearch from 'minisearch'
import { ANY_FERMENT } from '../tree/know-how.ts'
import type { FoundAnswers, Searched, SearchedAnswer } from './found.ts'
import { leadOf } from './lead.ts'
import { termsOf } from './terms.ts'

/** Of the words of a question at least this share has to be found in an answer's words. */
const LEAST_SHARE = 0.4
/** The same where the question names no food. */
const LEAST_SHARE_OF_ANY = 0.51
/** An answer with less than this share of the best one's score is another matter. */
const NEAR = 0.55
const MOST = 4
/** A longer line is no question: of it the first words are read. */
const MOST_TERMS = 24

/** What is searched: the answers, their words by language, and what callers call each food. */
export interface KnowHowWords {
  readonly answers: readonly SearchedAnswer[]
  /** By language tag. */
  readonly texts: Readonly<Record<string, readonly Searched[]>>
  /** By ferment, in every language at once. */
  readonly called: Readonly<Record<string, readonly string[]>>
}

interface Entry extends Omit<Searched, 'id'> {
  /** The answer, and in which language. */
  readonly key: string
  readonly of: string
  readonly called: string
}

/** Opens the search over all answers, in every language at once. */
export function openKnowHow({
  answers,
  texts,
  called
}: KnowHowWords): (line: string) => FoundAnswers {
  const byId = new Map(answers.map(answer => [answer.id, answer]))
  const index = new MiniSearch<Entry>({
    idField: 'key',
    fields: ['ask', 'said', 'answer', 'called'],
    storeFields: ['of'],
    tokenize: text => termsOf(text).flat(),
    processTerm: term => term,
    searchOptions: {
      boost: { ask: 2.2, said: 1.8, called: 1, answer: 0.4 },
      fuzzy: slipsIn,
      prefix: term => term.length > 4 && !term.startsWith('='),
      maxFuzzy: 2,
      weights: { fuzzy: 0.55, prefix: 0.5 }
    }
  })
  index.addAll(
    Object.entries(texts).flatMap(([tag, entries]) =>
      entries.map(({ id, ...words }) => ({
        ...words,
        key: `${tag} ${id}`,
        of: id,
        called: (called[byId.get(id)?.ferment ?? ''] ?? []).join(' ')
      }))
    )
  )
  const foods = openFoods(called)

  return line => {
    const lead = leadOf(line)
    if (lead === 'emergency') return { lead, ferment: null, answers: [] }
    const terms = termsOf(line).slice(0, MOST_TERMS)
    const food = foods(terms)
    const ferment = food?.ferment ?? null
    // A line that names a food is about food; of any other more has to be known.
    const least = food === null ? LEAST_SHARE_OF_ANY : LEAST_SHARE
    const best = new Map<string, number>()
    const [first] = terms
    const hits = first === undefined ? [] : index.search(terms.flat().join(' '), { tokenize })
    for (const { of, score, queryTerms } of hits) {
      const found = terms.filter(each => each.some(term => queryTerms.includes(term))).length
      if (found / terms.length < least) continue
      const fits = food === null ? 1 : fitOf(food, byId.get(of)?.ferment ?? '', called)
      best.set(of, Math.max(best.get(of) ?? 0, score * fits * (found / terms.length)))
    }
    const ranked = [...best]
      .filter(([id]) => lead === null || standsBeside(byId.get(id), ferment))
      .sort(([, a], [, b]) => b - a)
    const top = ranked[0]?.[1] ?? 0
    return {
      lead,
      ferment,
      answers: ranked
        .filter(([, score]) => score >= top * NEAR)
        .slice(0, MOST)
        .map(([id]) => id)
    }
  }
}

/** Beside a question about one jar stands what allows nothing, of its food or of all. */
const standsBeside = (answer: SearchedAnswer | undefined, ferment: string | null): boolean =>
  answer?.warns === true && (answer.ferment === ANY_FERMENT || answer.ferment === ferment)

/** The terms of a line stand parted already. */
const tokenize = (terms: string) => terms.split(' ')

/** How many slips a term may hold: none in a short word, which is near too many others. */
const slipsIn = (term: string): number | false =>
  term.startsWith('=') || term.length < 4 ? false : term.length < 8 ? 1 : 2

/** How well an answer about one food fits a line that names one; about another it is no answer. */
function fitOf(food: Food, own: string, called: KnowHowWords['called']): number {
  const names = called[own]
  if (own === food.ferment) return 1
  if (names === undefined) return 0.85
  const stems = new Set(names.flatMap(name => termsOf(name).flat()))
  return food.stems.every(stem => stems.has(stem)) ? 0.9 : 0.35
}

/** A food that a line names: whose it is, and the stems of its name. */
interface Food {
  readonly ferment: string
  readonly stems: readonly string[]
}

/** Opens the finding of the food that a line names, misspelled too: by the longest name in it. */
function openFoods(
  called: KnowHowWords['called']
): (terms: readonly (readonly string[])[]) => Food | null {
  const names = Object.entries(called).flatMap(([ferment, all]) =>
    all.map((name, index) => ({
      key: `${ferment} ${index}`,
      ferment,
      stems: termsOf(name).map(([stem = '']) => stem)
    }))
  )
  const byKey = new Map(names.map(name => [name.key, name]))
  const index = new MiniSearch<{ key: string; name: string }>({
    idField: 'key',
    fields: ['name'],
    tokenize,
    processTerm: term => term,
    searchOptions: { fuzzy: slipsIn, maxFuzzy: 2 }
  })
  index.addAll(names.map(({ key, stems }) => ({ key, name: stems.join(' ') })))
  return terms => {
    const line = terms.map(([stem = '']) => stem).join(' ')
    const whole = index.search(line, { tokenize }).flatMap(({ id, terms: found, score }) => {
      const name = byKey.get(id)
      return name?.stems.every(stem => found.includes(stem)) ? [{ ...name, score }] : []
    })
    whole.sort((a, b) => b.stems.length - a.stems.length || b.score - a.score)
    return whole[0] ?? null
  }
}

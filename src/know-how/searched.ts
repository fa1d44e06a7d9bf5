import type { KnowHow } from '../tree/know-how.ts'
import type { Searched } from './found.ts'
import type { KnowHowWords } from './search.ts'

/** What is searched, of the answers and of every language's words, by namespace. */
export function searchedIn(
  { answers, called }: Pick<KnowHowWords, 'called'> & { readonly answers: readonly KnowHow[] },
  words: Readonly<Record<string, Readonly<Record<string, unknown>>>>
): KnowHowWords {
  const texts = Object.entries(words).map(([tag, stems]) => {
    const own = groupOf(stems['know-how'])
    const searched = answers.flatMap(({ id }): readonly Searched[] => {
      const { ask, said, answer } = groupOf(own[id])
      return ask === undefined
        ? []
        : [{ id, ask: textOf(ask), said: textOf(said), answer: textOf(answer) }]
    })
    return [tag, searched] as const
  })
  return { answers, called, texts: Object.fromEntries(texts) }
}

const groupOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? { ...value } : {}

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '')

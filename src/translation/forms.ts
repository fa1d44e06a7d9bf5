/** A Chinese sign by itself, since no spaces part the words; else letters and digits in a row. */
const WORD = /\p{Script=Han}|(?:(?!\p{Script=Han})[\p{L}\d])+/gu

/** The words of a text in small letters, in their order. */
export const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/\{\{[^}]*\}\}/g, ' ')
    .match(WORD) ?? []

/** A written form of words: `mold`, `mold*` for all that begins so, `throw * out` with one word between. */
type One = (word: string) => boolean

const oneOf = (form: string): One =>
  form === '*'
    ? () => true
    : form.endsWith('*')
      ? word => word.startsWith(form.slice(0, -1))
      : word => word === form

/** Forms are looked for by the first letters of their first word; one that begins with `*` by none. */
const LETTERS = 2

/** Many lists of forms, looked for together: each text is asked about hundreds of them. */
export interface FormLists {
  /** The places, in the list of lists, of those of which a form stands among these words. */
  standing(words: readonly string[]): ReadonlySet<number>
  /** The forms that stand among these words, as they are written there. */
  all(words: readonly string[]): readonly string[]
}

interface Run {
  readonly list: number
  readonly words: readonly One[]
}

/** Makes lists of forms ready. */
export function formLists(lists: readonly (readonly string[])[]): FormLists {
  const byStart = new Map<string, Run[]>()
  for (const [list, forms] of lists.entries()) {
    for (const form of forms) {
      const words = form
        .toLowerCase()
        .replace(/\p{Script=Han}/gu, ' $& ')
        .trim()
        .split(/\s+/)
      const start = (words[0] ?? '').replace('*', '').slice(0, LETTERS)
      byStart.set(start, [...(byStart.get(start) ?? []), { list, words: words.map(oneOf) }])
    }
  }
  const lengths = [...new Set([...byStart.keys()].map(({ length }) => length))]
  const runsAt = (words: readonly string[], at: number): readonly Run[] =>
    lengths.flatMap(length =>
      (byStart.get((words[at] ?? '').slice(0, length)) ?? []).filter(run =>
        run.words.every((one, index) => one(words[at + index] ?? ''))
      )
    )
  return {
    standing: words => new Set(words.flatMap((_, at) => runsAt(words, at).map(({ list }) => list))),
    all: words =>
      words.flatMap((_, at) =>
        runsAt(words, at).map(run => words.slice(at, at + run.words.length).join(' '))
      )
  }
}

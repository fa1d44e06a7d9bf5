import type { TakenText } from './judge.ts'

interface Group {
  readonly [name: string]: Group | string
}

/** The words of a project by file: `steps` → what `locales/<tag>/steps.json` holds. */
export type WordFiles = Readonly<Record<string, Group>>

/** Which file an English text stands in, and under which names. */
export function placeOf(
  id: string,
  english: WordFiles
): readonly [string, readonly string[]] | null {
  const [stem = '', key = ''] = id.split(/:(.*)/s)
  if (among(english[stem], key.split('.'))) return [stem, key.split('.')]
  // What one ferment alone says stands in its own file, under the name of the common one.
  const inside = [stem, ...key.split('.')]
  const own = Object.keys(english).find(file => among(english[file], inside))
  return own === undefined ? null : [own, inside]
}

/** Whether a text stands there; a plural form stands for any other of the same text. */
function among(
  group: Group | string | undefined,
  [name = '', ...rest]: readonly string[]
): boolean {
  if (group === undefined || typeof group === 'string') return false
  if (rest.length > 0) return Object.hasOwn(group, name) && among(group[name], rest)
  const same = Object.keys(group).find(other => withoutForm(other) === withoutForm(name))
  return same !== undefined && typeof group[same] === 'string'
}

/** A file's words with a text put in, its names in the order of the English. */
export function withText(
  group: Group | undefined,
  [name = '', ...rest]: readonly string[],
  text: string,
  english: Group | undefined
): Group {
  const inner =
    rest.length === 0 ? text : withText(child(group, name), rest, text, child(english, name))
  if (group && Object.hasOwn(group, name)) return { ...group, [name]: inner }
  const order = Object.keys(english ?? {}).map(withoutForm)
  const rank = (key: string) => {
    const place = order.indexOf(withoutForm(key))
    return place < 0 ? order.length : place
  }
  const all = [...Object.entries(group ?? {}), [name, inner] as const]
  return Object.fromEntries(all.sort(([a], [b]) => rank(a) - rank(b)))
}

function child(group: Group | undefined, name: string): Group | undefined {
  const inner = group?.[name]
  return typeof inner === 'string' ? undefined : inner
}

const withoutForm = (key: string): string => key.replace(/_(?:zero|one|two|few|many|other)$/, '')

/** Texts put into the files of a language; only the files that change are given back. @throws Error for an id that is no English text: `judged` lets none through. */
export function putTexts(
  taken: readonly TakenText[],
  english: WordFiles,
  files: WordFiles
): WordFiles {
  const changed: Record<string, Group> = {}
  for (const { id, target } of taken) {
    const place = placeOf(id, english)
    if (place === null) throw new Error(`\`${id}\` is no English text`)
    const [file, names] = place
    const before = changed[file] ?? files[file] ?? schemaOf(english[file])
    changed[file] = withText(before, names, target, english[file])
  }
  return changed
}

/** A new file names its schema as the English one does. */
const schemaOf = (english: Group | undefined): Group =>
  english?.$schema === undefined ? {} : { $schema: english.$schema }

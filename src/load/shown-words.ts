import { isolated } from '../translation/isolated.ts'
import { groupOf } from '../tree/group.ts'
import { SOURCE_TAG } from './check-words.ts'
import type { AuthoredProject, Shaped } from './project.ts'
import type { TranslatedText } from './reviewed-texts.ts'
import { textsIn } from './texts.ts'

/** By language tag, then by the stem of the file, the words as a reader is shown them. */
export type ShownWords = Readonly<Record<string, Readonly<Record<string, unknown>>>>

/**
 * The words of every language. In place of a translation that went stale stands the English, and behind a
 * sentence why; so it is with drafts where the office shows reviewed texts only. There a language of which
 * nothing is reviewed is not offered at all. What is for the office's people alone may not be translated:
 * it is the English as it is. What would lose its order in a right-to-left text is isolated.
 */
export function shownWords(
  { words, office }: AuthoredProject,
  translations: Readonly<Record<string, readonly TranslatedText[]>>
): ShownWords {
  const reviewedOnly = office?.value.translations === 'reviewed-only'
  const source = words.get(SOURCE_TAG) ?? new Map<string, Shaped<unknown>>()
  const english = textsIn(source.get('ui')?.value)
  const shown = [...words].flatMap(([tag, stems]) => {
    const texts = translations[tag] ?? []
    const isOffered = tag === SOURCE_TAG || texts.some(({ state }) => state === 'reviewed')
    if (reviewedOnly && !isOffered) return []
    const notice = noticeIn(tag, texts, english)
    const instead = new Map(
      texts.flatMap(text =>
        text.state === 'stale' || (reviewedOnly && text.state === 'draft')
          ? [[text.id, inEnglish(text, notice)] as const]
          : []
      )
    )
    // What a language is called in its own words is how its reader finds it.
    instead.delete(`ui:${NAME}`)
    const files = [...new Set([...source.keys(), ...stems.keys()])].map(stem => {
      const value = completed(stems.get(stem)?.value, source.get(stem)?.value)
      return [stem, exchanged(value, stem, '', instead)]
    })
    return [[tag, Object.fromEntries(files)] as const]
  })
  return Object.fromEntries(shown)
}

const NAME = 'language'

/** Why the English stands there, in words of the language where those may be shown. */
type Notice = (text: TranslatedText) => string

function noticeIn(
  tag: string,
  texts: readonly TranslatedText[],
  english: ReadonlyMap<string, string>
): Notice {
  return ({ state, reviewedOn }) => {
    const key = state === 'stale' ? 'in-english.older' : 'in-english.not-reviewed'
    const own = texts.find(({ id }) => id === `ui:${key}`)
    const speaks = own !== undefined && own.state !== 'stale'
    const says = speaks ? own.target : (english.get(key) ?? '')
    return says.replace('{{day}}', dayIn(speaks ? tag : SOURCE_TAG, reviewedOn ?? ''))
  }
}

const dayIn = (tag: string, day: string): string =>
  day === ''
    ? day
    : new Intl.DateTimeFormat(`${tag}-u-nu-latn`, { dateStyle: 'long', timeZone: 'UTC' }).format(
        new Date(day)
      )

/** The English of a text; a label has no room for why, and what is no sentence gets no second one. */
const inEnglish = (text: TranslatedText, notice: Notice): string =>
  /[.!?]["”)]*$/.test(text.english) ? `${text.english} (${notice(text)})` : text.english

/** A group of texts, with the English of those that it lacks. */
function completed(own: unknown, english: unknown): unknown {
  if (own === undefined) return english
  if (typeof own !== 'object' || typeof english !== 'object' || !own || !english) return own
  const names = new Set([...Object.keys(english), ...Object.keys(own)])
  const [mine, theirs] = [groupOf(own), groupOf(english)]
  return Object.fromEntries([...names].map(name => [name, completed(mine[name], theirs[name])]))
}

function exchanged(
  group: unknown,
  stem: string,
  above: string,
  instead: ReadonlyMap<string, string>
): unknown {
  if (typeof group === 'string') return isolated(instead.get(`${stem}:${above}`) ?? group)
  if (typeof group !== 'object' || group === null) return group
  return Object.fromEntries(
    Object.entries(group).map(([key, inner]) => [
      key,
      exchanged(inner, stem, above === '' ? key : `${above}.${key}`, instead)
    ])
  )
}

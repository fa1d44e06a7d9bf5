import { createInstance } from 'i18next'
import { isSafetyText } from './kinds.ts'
import type { TextKey } from './text-key.ts'

/** The language that authors write first, and that a missing label falls back to. */
export const SOURCE_TAG = 'en'

/** Every text by language tag and namespace, as the locale files hold them. */
export type Resources = Readonly<Record<string, Readonly<Record<string, unknown>>>>

/** What stands in a text's `{{…}}`; `count` also chooses the plural. */
export type TextValues = Readonly<Record<string, string | number>>

/** The words of one language. */
export interface Words {
  readonly tag: string
  /** The text of a key. @throws MissingText when it is a safety text, or missing in every language. */
  t(key: TextKey, values?: TextValues): string
  /** Whether the authors wrote this text at all, in the language they write first. */
  has(key: TextKey, values?: TextValues): boolean
}

/** A text that must be there is not. Never shown to a caller: it stops the build or the command. */
export class MissingText extends Error {
  override readonly name = 'MissingText'
  readonly key: TextKey
  readonly tag: string

  constructor(key: TextKey, tag: string) {
    super(`The text \`${key}\` is missing in \`${tag}\`. Write it in locales/${tag}.`)
    this.key = key
    this.tag = tag
  }
}

/** What no author writes: it stands for a text that is not there. */
const MISSING = '\u0000'

/** Opens the words of one language over all that was loaded. */
export function createWords(resources: Resources, tag: string): Words {
  const texts = createInstance()
  texts.init({
    resources: resources as Record<string, Record<string, Record<string, unknown>>>,
    lng: tag,
    // Falling back is ours to decide, by the kind of the text.
    fallbackLng: false,
    initAsync: false,
    returnNull: false,
    interpolation: { escapeValue: false }
  })
  /** Looked up once for each text: a screen asks for a hundred of them each time it is drawn. */
  const found = (key: TextKey, values: TextValues, lng: string): string | null => {
    const options = { ...values, lng, returnObjects: true, defaultValue: MISSING }
    const text: unknown = texts.t(key, options)
    // A key may also stop at a group of texts, which is not a text.
    return typeof text === 'string' && text !== MISSING ? text : null
  }
  return {
    tag,
    has: (key, values = {}) => found(key, values, SOURCE_TAG) !== null,
    t(key, values = {}) {
      const own = found(key, values, tag)
      if (own !== null) return own
      const [namespace = '', ...rest] = key.split(':')
      const label = !isSafetyText(namespace, rest.join(':'))
      const source = label ? found(key, values, SOURCE_TAG) : null
      if (source === null) throw new MissingText(key, tag)
      return source
    }
  }
}

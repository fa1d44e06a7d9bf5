import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** The tags of the made languages: accented from the left, and written from the right. No build has them. */
export const PSEUDO = 'qps-ploc'
export const PSEUDO_RTL = 'qps-plocm'

/** How much longer than its English a text is: as long as the longest translation may get. */
const LONGER = 0.4
const PLAIN = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz'
const ACCENTED = [...'ÀƁĆĐÉƑĜĤÎĴĶĹḾŃÖƤɊŘŠŤÛṼŴẊÝŽàƀćđéƒĝĥîĵķĺḿńöƥɋřšťûṽŵẋýž']
/** A pad as long as a word, so that it breaks where words do. */
const PAD = 'éîöûà'
const GAP = /(\{\{[^{}]*\}\})/
const [RLO, PDF, RLI, PDI] = ['\u202e', '\u202c', '\u2067', '\u2069']

const accented = (text: string): string =>
  [...text].map(letter => ACCENTED[PLAIN.indexOf(letter)] ?? letter).join('')

/** Runs a text's words through `of`, and leaves its gaps as they are. */
const besideGaps = (text: string, of: (words: string) => string): string =>
  text
    .split(GAP)
    .map(part => (GAP.test(part) || part === '' ? part : of(part)))
    .join('')

/**
 * An English text as the made languages have it: every letter accented, 40 % longer, in brackets that show
 * where it begins and ends; from the right, each stretch between gaps is turned around and isolated.
 */
export function pseudo(text: string, tag: typeof PSEUDO | typeof PSEUDO_RTL): string {
  if (text === '') return text
  const letters = text.replace(new RegExp(GAP, 'g'), '').length
  const words = Math.ceil((letters * LONGER) / (PAD.length + 1))
  const body = `⟦${besideGaps(text, accented)}${` ${PAD}`.repeat(words)}⟧`
  if (tag === PSEUDO) return body
  return besideGaps(body, part => `${RLI}${RLO}${part}${PDF}${PDI}`)
}

/** Every text of a value, with the way to it. */
function* textsOf(value: unknown, way = ''): Generator<readonly [way: string, text: string]> {
  if (typeof value === 'string') yield [way, value]
  else if (typeof value === 'object' && value !== null) {
    for (const [key, inside] of Object.entries(value)) yield* textsOf(inside, `${way}.${key}`)
  }
}

/** Every text of a language, by its file and its way in it. */
export function textsIn(tag: string): ReadonlyMap<string, string> {
  const folder = join(import.meta.dirname, '../../locales', tag)
  return new Map(
    readdirSync(folder).flatMap(file => {
      const { $schema: _, ...texts } = JSON.parse(readFileSync(join(folder, file), 'utf8'))
      return [...textsOf(texts, file)]
    })
  )
}

import { readSigned } from '../science/decimal.ts'
import { at } from '../tree/must.ts'
import { baseOf, DROPPED, NUMBERS } from './lexicon.ts'

/** A word of a line as it is compared: without case, accents, apostrophes and plural. */
export interface Token {
  readonly word: string
  /** With its plural, for a look-up that forgives typing errors. */
  readonly raw: string
  readonly number?: number
}

/** Whether a word is what is made, or in what; whoever is "brewing" says more. */
export const isFood = ({ word, raw }: Token, foods: ReadonlySet<string>): boolean =>
  foods.has(word) && !raw.endsWith('ing')

const TOKEN = /(?:(?<![^\s])[-−])?\d+(?:[.,]\d+)*|[°%½]|\p{L}+/gu
const UNITS = 'one|two|three|four|five|six|seven|eight|nine'
const TENS = new RegExp(`\\b(twenty|thirty)[\\s-]+(${UNITS})\\b`, 'g')
const SHORT_NOT = /\b(is|are|was|were|do|does|did|has|have|had|would|could|should|wo)(?:n't|nt)\b/g

/** The words of a text, in order; articles and forms of "be" are left out everywhere. */
export function tokensOf(text: string): readonly Token[] {
  const tokens = [...cleaned(text).matchAll(TOKEN)].map(([raw]) => tokenOf(raw))
  return halves(tokens).filter(({ word }) => !DROPPED.has(word))
}

/** The words alone, as phrases are compared. */
export const wordsOf = (text: string): readonly string[] => tokensOf(text).map(({ word }) => word)

/** A text without case, accents and apostrophes, its short forms written out. */
export function cleaned(text: string): string {
  return (
    text
      .normalize('NFD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .replace(/[’‘ʼ`´]/g, "'")
      .replace(/º/g, '°')
      .replace(/\bcan(?:'t|t| not)\b/g, 'cannot')
      .replace(SHORT_NOT, '$1 not')
      .replace(/'(?:s|m|re|ve|ll|d)\b/g, '')
      .replace(/'/g, '')
      .replace(TENS, '$1$2')
      // Spanish drops "son", they are; nobody says it after a possessive.
      .replace(/\b(my|our|your|his|her|their) son\b/g, '$1 ownson')
      // In Spanish "once" is eleven.
      .replace(/(?<=\b(?:had|has|have|got|was|up)\b[a-z ]{0,30} )once\b/g, 'onetime')
      .replace(/\btreinta y un[oa]?\b/g, 'treintaiuno')
      .replace(/\bveintiun\b/g, 'veintiuno')
      // The hour of a clock: "am" alone is a form of "be".
      .replace(/(?<=\d) ?[ap]\.? ?m\b\.?/g, ' oclock')
      .replace(/\bp\. ?h\b\.?/g, 'ph')
      .replace(/(?<=\d) ?½/g, '.5')
      .replace(
        /\b(?:a|una?) (?=(?:week|day|month|year|couple|hour|semana|dia|mes|ano|hora)\b)/g,
        '1 '
      )
      .replace(/\bpor ciento\b/g, '%')
      .replace(/\bhuelen\b/g, 'huele')
      .replace(/\b(?:1 |a )?(?:couple of|couple|par de) (?=[a-z]+s\b)/g, '2 ')
  )
}

/** A word as it was typed, as it is compared. */
export function tokenOf(raw: string): Token {
  const number = /\d/.test(raw) ? numberOf(raw) : NUMBERS.get(raw)
  if (number === undefined) return { word: baseOf(raw), raw }
  return { word: String(number), raw, number }
}

/** A comma is a decimal point to some; before three digits it parts the thousands. */
function numberOf(raw: string): number | undefined {
  const plain = raw.replace('−', '-')
  if (/^-?\d{1,3}(?:,\d{3})+$/.test(plain)) return Number(plain.replaceAll(',', ''))
  return readSigned(plain) ?? undefined
}

/** "Two and a half" is one number. */
function halves(tokens: readonly Token[]): readonly Token[] {
  const out: Token[] = []
  for (let i = 0; i < tokens.length; i++) {
    const token = at(tokens, i)
    const run = tokens
      .slice(i + 1, i + 4)
      .map(({ word }) => word)
      .join(' ')
    const tail = run.startsWith('and a half') ? 3 : /^y medi[oa]\b/.test(run) ? 2 : 0
    if (token.number === undefined || tail === 0) out.push(token)
    else {
      const number = token.number + 0.5
      out.push({ word: String(number), raw: String(number), number })
      i += tail
    }
  }
  return out
}

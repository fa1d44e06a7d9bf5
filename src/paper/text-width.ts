import { directionOf } from '../words/direction.ts'

/** How a line of text is set: its size in points, and whether it is bold. */
export interface TypeOf {
  readonly size: number
  readonly bold: boolean
}

/**
 * Advance widths of Atkinson Hyperlegible Next in thousandths of its size, rounded up to the next 25: a drawing is
 * laid out where no browser can be asked. A test holds them to what a browser measures.
 */
const REGULAR: Readonly<Record<number, string>> = {
  175: "'",
  225: ',.:;',
  250: '`j|·‘’',
  275: 'il',
  300: ' !()¡',
  325: '"[f',
  350: ']rt{}',
  375: '-_°',
  400: '/I\\“”',
  425: '1',
  450: 'y¿•',
  475: 'svz',
  500: '*?ckx',
  525: '7Ja–',
  550: '2Lehnou×',
  575: '<>EFTY^bdgpq~«»',
  600: '3569$PSV',
  625: '48+BRXZ−ø',
  650: '0=ACKß',
  675: '#D…',
  700: 'GHNUw',
  725: 'OQ',
  750: '&',
  800: '@',
  825: 'M—½',
  850: 'm→≤≥',
  875: 'W',
  925: '%',
  975: '⅓⅔',
  1000: 'æ'
}

const BOLD: Readonly<Record<number, string>> = {
  225: "'",
  275: ',.:;j|‘’',
  300: '`i·',
  325: ' !l¡',
  350: '()[]',
  375: '-f',
  400: '"_rt{}°',
  425: 'I',
  450: '1/\\•',
  500: '*“”',
  525: 'csyz–',
  550: '7?vx~¿×',
  575: '9<>FJLaehknu',
  600: '23+E^bdgopq−',
  625: '458$=STZ',
  650: '6BPRVY«»',
  675: '0CK',
  700: 'ADUXø',
  725: '&GHNß',
  750: 'Ow',
  775: '#Q',
  800: '@…',
  850: '—→≤≥',
  875: 'M½',
  900: 'Wm',
  975: '%',
  1050: '⅓⅔æ'
}

type Widths = ReadonlyMap<string, number>

const widthsOf = (table: Readonly<Record<number, string>>): Widths =>
  new Map(
    Object.entries(table).flatMap(([width, signs]) =>
      [...signs].map(sign => [sign, Number(width) / 1000] as const)
    )
  )

const WIDTHS = { regular: widthsOf(REGULAR), bold: widthsOf(BOLD) }

/** Ideographs and their marks are as wide as they are high. */
const IDEOGRAPH = /[\u2e80-\u9fff\uf900-\ufaff\uff00-\uffef]/
const ARABIC = /[\u0600-\u06ff]/
/** Marks over and under a letter, and what only says which way a line runs. */
const NO_WIDTH = /[\u0300-\u036f\u064b-\u065f\u200e\u200f\u2066-\u2069]/g

/** Set in a typeface of its own, Noto Sans, which is that much wider. */
const WIDER: Readonly<Record<string, number>> = { vi: 1.12 }

/** About how wide a line of text is, in points; never less than it is. */
export function textWidth(text: string, { size, bold }: TypeOf, tag: string): number {
  const widths = bold ? WIDTHS.bold : WIDTHS.regular
  const letters = [...text.normalize('NFD').replace(NO_WIDTH, '')]
  const ems = letters.map(letter => {
    if (IDEOGRAPH.test(letter)) return 1
    if (ARABIC.test(letter)) return bold ? 0.68 : 0.6
    return widths.get(letter) ?? 0.85
  })
  return ems.reduce((sum, em) => sum + em, 0) * size * (WIDER[tag] ?? 1)
}

/** A text as lines of at most a width. Languages without spaces break between any two ideographs. */
export function wrapText(
  text: string,
  width: number,
  type: TypeOf,
  tag: string
): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const piece of piecesOf(text)) {
    if (line !== '' && textWidth((line + piece).trimEnd(), type, tag) > width) {
      const open = openIn(line)
      lines.push(line.trimEnd() + POP.repeat(open.length))
      line = open.join('')
    }
    line += piece
  }
  return line.trim() === '' ? lines : [...lines, line.trimEnd()]
}

/** Each line is a paragraph of its own: what runs its own way is closed at its end, and goes on in the next (UAX #9). */
const POP = '\u2069'
const ISOLATES = /[\u2066-\u2069]/g

function openIn(line: string): readonly string[] {
  const open: string[] = []
  for (const [sign] of line.matchAll(ISOLATES)) {
    if (sign === POP) open.pop()
    else open.push(sign)
  }
  return open
}

/** A number or an address, in its own order and on one line whatever the language. */
export const inOwnOrder = (text: string): string => `\u2066${text.replaceAll(' ', '\u00a0')}${POP}`

/** A text that runs its own way among another language's. */
export const isolated = (text: string, direction: 'ltr' | 'rtl'): string =>
  `${direction === 'ltr' ? '\u2066' : '\u2067'}${text}${POP}`

/** Marks that end a clause stay with what is before them. */
const piecesOf = (text: string): readonly string[] =>
  text.match(/[\u2e80-\u9fff][\u3000-\u303f\uff00-\uffef]*|[^ \n\u2e80-\u9fff]+[ \n]*|[ \n]+/g) ??
  []

/** Whether a language is read from the right: its drawings are mirrored. */
export const isMirrored = (tag: string): boolean => directionOf(tag) === 'rtl'

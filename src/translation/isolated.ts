const LEFT_TO_RIGHT = '\u2066'
const BY_ITS_FIRST_LETTER = '\u2068'
const END = '\u2069'

const RIGHT_TO_LEFT = /[\p{Script=Arabic}\p{Script=Hebrew}]/u
const GAP = /(\{\{[^}]*\}\})/

/** Words, numbers and signs that no letter of a right-to-left script parts, such as “40 °F (4 °C)”. */
const RUN = /[\dA-Za-z](?:[^\p{Script=Arabic}\p{Script=Hebrew}\n“”؛،؟]*[\dA-Za-z°%)¼-¾⅐-⅞])?/gu
/** A letter, a degree or a phone number: numbers and ranges by themselves read well from the right. */
const NEEDS_ITS_ORDER = /[A-Za-z°]|\d-\d/
/** Where one run ends and the next begins: a sentence's end, or a mark between words. */
const BREAK = /((?<=[.:;,!?])\s+)/

/**
 * A text of a right-to-left script whose amounts, phone numbers, Latin names and gaps keep their own order,
 * each in an isolate (Unicode Standard Annex 9, 2.4): “1-800” is not shown as “800-1”. Any other text stays
 * as it is.
 */
export const isolated = (text: string): string =>
  RIGHT_TO_LEFT.test(text)
    ? text
        .split(GAP)
        .map((part, index) =>
          index % 2 === 1 ? `${BY_ITS_FIRST_LETTER}${part}${END}` : part.replace(RUN, inOrder)
        )
        .join('')
    : text

const inOrder = (run: string): string =>
  run
    .split(BREAK)
    .map(part => (NEEDS_ITS_ORDER.test(part) ? around(part) : part))
    .join('')

/** A bracket that the run does not open, and what ends a sentence, stay outside. */
function around(part: string): string {
  const body = /^.*?(?=[.:;,!?]*$)/s.exec(part)?.[0] ?? part
  const opens = body.split('(').length
  const closes = body.split(')').length
  const kept = closes > opens ? body.slice(0, body.lastIndexOf(')')) : body
  return `${LEFT_TO_RIGHT}${kept}${END}${part.slice(kept.length)}`
}

const LEFT_TO_RIGHT = '\u2066'
const END = '\u2069'

/** Words, numbers and signs that no letter of a right-to-left script parts, such as “40 °F (4 °C)”. */
const RUN = /[\dA-Za-z](?:[^\p{Script=Arabic}\p{Script=Hebrew}\n“”؛،؟]*[\dA-Za-z°%)¼-¾⅐-⅞])?/gu
/** A letter, a degree or a phone number: numbers and ranges by themselves read well from the right. */
const NEEDS_ITS_ORDER = /[A-Za-z°]|\d-\d/
/** Where one run ends and the next begins: a sentence's end, or a mark between words. */
const BREAK = /((?<=[.:;,!?])\s+)/

/**
 * A text of a right-to-left script whose amounts, phone numbers and Latin names keep their own order, each
 * in an isolate (Unicode Standard Annex 9, 2.4): “1-800” is not shown as “800-1”.
 */
export const isolated = (text: string): string =>
  text.replace(RUN, run =>
    run
      .split(BREAK)
      .map(part => (NEEDS_ITS_ORDER.test(part) ? around(part) : part))
      .join('')
  )

/** A bracket that the run does not open, and what ends a sentence, stay outside. */
function around(part: string): string {
  const body = /^.*?(?=[.:;,!?]*$)/s.exec(part)?.[0] ?? part
  const opens = body.split('(').length
  const closes = body.split(')').length
  const kept = closes > opens ? body.slice(0, body.lastIndexOf(')')) : body
  return `${LEFT_TO_RIGHT}${kept}${END}${part.slice(kept.length)}`
}

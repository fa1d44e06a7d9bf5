/** A phone number in a sentence, and the emergency number, which a voice reads as nine hundred and eleven. */
const PHONE = /(?<![\d.,-])(?:(?:1-)?\d{3}-\d{3}-\d{4}|\d{3}-\d{4}|911)(?![\d-]|[.,]\d)/g

/** Marks that say in which direction a part runs: they are for the eye. */
const DIRECTION = /[\u200e\u200f\u2066-\u2069]/g

/** A number digit by digit, with a pause where a mark stood between its groups. */
export const digitByDigit = (number: string): string =>
  number
    .replace(DIRECTION, '')
    .replace(/(?<=\d)[-.()\s]+(?=\d)/g, ', ')
    .replace(/\d+/g, digits => [...digits].join(' '))

/**
 * Texts as a voice says them, a sentence at a time: a pause goes on with the sentence that it broke off.
 * Phone numbers stand digit by digit in all of them.
 */
export function spokenSentences(texts: readonly string[], tag: string): readonly string[] {
  return texts
    .flatMap(text => sentencesIn(text.replace(DIRECTION, ''), tag))
    .map(sentence => sentence.replace(PHONE, digitByDigit))
}

function sentencesIn(text: string, tag: string): readonly string[] {
  // Browsers of before 2024 may lack it: a text is then one sentence.
  if (typeof Intl.Segmenter !== 'function') return text.trim() === '' ? [] : [text.trim()]
  const segments = new Intl.Segmenter(tag, { granularity: 'sentence' }).segment(text)
  return [...segments].map(({ segment }) => segment.trim()).filter(one => one !== '')
}

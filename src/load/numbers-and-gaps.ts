const PHONE = /(?:\d-)?(?:\d{3}-)?\d{3}-\d{4}/
const NUMBER = /\d+(?:[.,]\d+)*(?:[/⁄]\d+)?/
const TOLD = new RegExp(`${PHONE.source}|${NUMBER.source}`, 'g')
const FRACTION = /[¼-¾⅐-⅞]/g

/** The names in a text's `{{…}}`, in the order of the alphabet. */
export const gapsIn = (text: string): readonly string[] =>
  [
    ...new Set([...text.matchAll(/\{\{\s*([^\s},]+)[^}]*\}\}/g)].map(([, name = '']) => name))
  ].sort()

/** The numbers, fractions and phone numbers that a text says in digits, each as often as it does. */
export function numbersIn(text: string): readonly string[] {
  const plain = text
    .replace(/\{\{[^}]*\}\}/g, ' ')
    // `1½` and `1 1/2` are the same two numbers.
    .replace(FRACTION, fraction => ` ${fraction.normalize('NFKC')}`)
  return [...plain.matchAll(TOLD)].map(([told]) => told.replaceAll(',', '.').replace('⁄', '/'))
}

/** What of the first list the second has not, counting how often each stands there. */
export function without(all: readonly string[], others: readonly string[]): readonly string[] {
  const left = [...others]
  return all.filter(each => {
    const at = left.indexOf(each)
    if (at >= 0) left.splice(at, 1)
    return at < 0
  })
}

/** An English text and what stands for it in another language. */
export interface TextPair {
  readonly english: string
  readonly target: string
}

/** A rule between English and another language, by the name that exceptions use. */
export const RULES = [
  'gaps',
  'numbers',
  'units',
  'bounds',
  'negation',
  'terms',
  'items',
  'sentences',
  'length',
  'left-in-english',
  'script',
  'marks',
  'register'
] as const
export type LintRule = (typeof RULES)[number]

/** Where a translation parts from the English, by one rule. */
export interface TextFault {
  readonly rule: LintRule
  /** What English says and the translation does not, as the rule counts it. */
  readonly lacks: readonly string[]
  /** What the translation says and English does not. */
  readonly adds: readonly string[]
}

/** What a fault is about in one line, as exceptions write it: `-mold +yeast`. */
export const faultText = ({ lacks, adds }: Pick<TextFault, 'lacks' | 'adds'>): string =>
  [...lacks.map(one => `-${one}`), ...adds.map(one => `+${one}`)].join(' ')

/** What of the first list the second has not, counting how often each stands there. */
export function without(all: readonly string[], others: readonly string[]): readonly string[] {
  const left = [...others]
  return all.filter(each => {
    const at = left.indexOf(each)
    if (at >= 0) left.splice(at, 1)
    return at < 0
  })
}

/** The fault of a rule by which both texts should say the same things, in any order; null when they do. */
export function unlike(
  rule: LintRule,
  english: readonly string[],
  target: readonly string[]
): TextFault | null {
  const lacks = without(english, target)
  const adds = without(target, english)
  return lacks.length + adds.length === 0 ? null : { rule, lacks, adds }
}

/** Where a sentence ends: before a space and what may begin the next, or behind a stop that is wide itself. */
const SENTENCE_END =
  /(?<=[.!?؟]["”)]*)\s+(?=[\p{Lu}\p{Lo}\d¿¡“("{])|(?<=[。！？])(?![”)])|(?<=[。！？]["”)]+)(?!["”)])/u

/** The sentences of a text; a colon ends none. */
export const sentencesIn = (text: string): readonly string[] =>
  text.split(SENTENCE_END).filter(sentence => /[\p{L}\d]/u.test(sentence))

/** Part by part where both texts have as many sentences, and in a sentence as many semicolons, else as one. */
export function aligned(pair: TextPair): readonly TextPair[] {
  return beside(pair, sentencesIn).flatMap(sentence =>
    beside(sentence, text => text.split(/[;؛]\s+|；/))
  )
}

function beside(pair: TextPair, partsOf: (text: string) => readonly string[]): readonly TextPair[] {
  const ours = partsOf(pair.english)
  const theirs = partsOf(pair.target)
  if (ours.length !== theirs.length) return [pair]
  return ours.map((part, at) => ({ english: part, target: theirs[at] ?? '' }))
}

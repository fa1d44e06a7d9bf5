/** Words that turn a sentence round, by language. `without` is none of them: it describes. */
const NEGATIONS: Readonly<Record<string, RegExp>> = {
  en: /\b(?:no|not|none|never|nobody|nothing|nowhere|neither|nor|cannot)\b|n[’']t\b/iu,
  es: /(?<!\p{L})(?:no|nunca|jamás|nadie|nada|ni|ning(?:ún|un[oa]s?)|tampoco)(?!\p{L})/iu
}

/** By sentence, whether a text says no. @throws Error for a language whose words are not listed. */
export function negatedIn(tag: string, text: string): readonly boolean[] {
  const negation = NEGATIONS[tag]
  if (!negation) throw new Error(`List the negations of \`${tag}\` in tests/words/negations.ts.`)
  return text.split(/(?<=[.!?]”?)\s+/).map(sentence => negation.test(sentence))
}

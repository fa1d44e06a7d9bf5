/** The texts of one language as they are written, group by group. */
export type SelfTestTexts = Readonly<Record<string, unknown>>

const isGroup = (part: unknown): part is SelfTestTexts => typeof part === 'object' && part !== null

/** The text behind some keys, with its gaps filled; null where there is none. */
export function textAt(
  texts: SelfTestTexts,
  keys: readonly string[],
  gaps: Readonly<Record<string, string>> = {}
): string | null {
  const text = keys.reduce<unknown>((part, key) => (isGroup(part) ? part[key] : undefined), texts)
  if (typeof text !== 'string') return null
  return text.replace(/\{\{(\w+)\}\}/g, (gap, name: string) => gaps[name] ?? gap)
}

/** The sentence of a finding: the check's own, else the one that several checks share. */
export function sentenceOf(
  texts: SelfTestTexts,
  { check, found, gaps }: { check: string; found: string; gaps: Readonly<Record<string, string>> }
): string {
  return (
    textAt(texts, ['found', check, found], gaps) ?? textAt(texts, ['found', found], gaps) ?? found
  )
}

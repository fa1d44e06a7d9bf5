/** A translation of some English. */
export interface SaidText {
  readonly english: string
  readonly target: string
}

/** One English text and the translations that part from the one used most. */
export interface TwoWays<T extends SaidText> {
  readonly english: string
  readonly others: readonly T[]
}

/** English texts of more than one word that are not translated alike everywhere; the usual way is not listed. */
export function saidTwoWays<T extends SaidText>(said: readonly T[]): readonly TwoWays<T>[] {
  const byEnglish = new Map<string, T[]>()
  for (const one of said) {
    if (!/\S\s+\S/.test(one.english)) continue
    const all = byEnglish.get(one.english)
    if (all) all.push(one)
    else byEnglish.set(one.english, [one])
  }
  return [...byEnglish].flatMap(([english, all]) => {
    const count = new Map<string, number>()
    for (const { target } of all) count.set(target, (count.get(target) ?? 0) + 1)
    if (count.size < 2) return []
    const [usual] = [...count].sort((a, b) => b[1] - a[1])[0] ?? ['']
    return [{ english, others: all.filter(({ target }) => target !== usual) }]
  })
}

/** The command was not used as its manual page says; the message says what to do instead. Exit code 2. */
export class BadUse extends Error {
  override readonly name = 'BadUse'
}

/** One sentence that names the nearest known words, for the end of a BadUse. */
export function didYouMean(nearest: readonly string[]): string {
  if (nearest.length === 0) return ''
  return ` Did you mean ${nearest.map(name => `\`${name}\``).join(' or ')}?`
}

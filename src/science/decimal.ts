/** A number in digits as people type it, with a decimal point or comma: `3.5`, `3,5`. Null for anything else. */
export function readDecimal(text: string): number | null {
  const plain = text.trim().replace(',', '.')
  return /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : null
}

/** The same for a number that may be below 0, such as `-2`. */
export function readSigned(text: string): number | null {
  const isNegative = text.startsWith('-')
  const size = readDecimal(isNegative ? text.slice(1) : text)
  return isNegative && size !== null ? -size : size
}

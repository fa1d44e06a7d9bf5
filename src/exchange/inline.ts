/** A part of a text that nobody translates: a gap, a link or a phone number. */
export interface Code {
  /** What it is, for the translator's program and eyes. */
  readonly is: 'gap' | 'link' | 'phone'
  readonly text: string
}

/** A text in parts, in their order: sentences as they are, and what stands untouched in them. */
export type InlinePart = string | Code

/** Links end before the mark that closes their sentence. */
const CODES =
  /(?<gap>\{\{[^{}]*\}\})|(?<link>https?:\/\/[^\s<>"]*[^\s<>".,;:!?)])|(?<phone>(?<![\d-])(?:1-)?(?:\d{3}-)?\d{3}-\d{4}(?![\d-]))/g

/** The parts of a text; joined they are the text again, sign for sign. */
export function partsOf(text: string): readonly InlinePart[] {
  const parts: InlinePart[] = []
  let end = 0
  for (const match of text.matchAll(CODES)) {
    if (match.index > end) parts.push(text.slice(end, match.index))
    const is = match.groups?.gap ? 'gap' : match.groups?.link ? 'link' : 'phone'
    parts.push({ is, text: match[0] })
    end = match.index + match[0].length
  }
  if (end < text.length) parts.push(text.slice(end))
  return parts
}

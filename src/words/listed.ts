/** A sentence that is a list: what introduces it, and its parts as they are written. */
export interface ListedText {
  readonly lead: string
  readonly parts: readonly string[]
}

/** So many parts are easier to find among as a list than in a sentence. */
const FEWEST = 4

/** A colon and semicolons as English, Chinese and Arabic write them. */
const LEAD = /^([^:：;；؛]+[:：])\s*(.+)$/su
const BETWEEN = /[;；؛]\s*/u

/** A text as the list that it is, such as "Call 911 for any of these: …; …; …; …"; null where it is none. */
export function listedText(text: string): ListedText | null {
  const [, lead, rest] = LEAD.exec(text) ?? []
  const parts = rest?.split(BETWEEN) ?? []
  return lead === undefined || parts.length < FEWEST ? null : { lead, parts }
}

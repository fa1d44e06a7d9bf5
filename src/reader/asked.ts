import { GRAMMARS } from './grammars.ts'
import { cleaned } from './normal.ts'

/**
 * How a part of a line asks. `look`: whether something is there, "is it mold?". `plea`: what to do or what
 * may be done; what it mentions is told by nobody.
 */
export type Asked = 'no' | 'look' | 'plea'

const PLEAS = Object.values(GRAMMARS).flatMap(({ pleas }) => pleas.map(each => new RegExp(each)))
const LOOKS = Object.values(GRAMMARS).flatMap(({ looks }) => looks.map(each => new RegExp(each)))

/** Reads whether a part asks, with its mark or without. */
export function askedIn(text: string, marked: boolean): Asked {
  const line = cleaned(text).replace(/\s+/g, ' ').trim()
  if (PLEAS.some(plea => plea.test(line))) return 'plea'
  return marked || LOOKS.some(look => look.test(line)) ? 'look' : 'no'
}

const OPENING = Object.values(GRAMMARS)
  .flatMap(({ runOn }) => runOn)
  .join('|')

/** The places in a line at which a question begins without a mark before it: "white fuzz can i eat it". */
export const RUN_ON = new RegExp(`(?<=[^\\s,;.!?¡¿]\\s+)(?=(?:${OPENING})\\b)`, 'giu')

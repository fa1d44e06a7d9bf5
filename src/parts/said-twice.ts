import type { Report } from '../report/report.ts'
import { cautionsOf } from '../words/beside.ts'
import { type Said, say } from '../words/say.ts'
import type { Setting } from './setting.tsx'

/** A finished walk in the language of the screen, and in the one that stands beside it. */
export interface SaidTwice {
  readonly said: Said
  readonly beside: Said | null
}

/** Words a finished report in the language of the screen, and in the one that stands beside it. */
export function tellOf({ words, second, sources }: Setting, report: Report): SaidTwice {
  const said = say(report, words, sources)
  if (second === null) return { said, beside: null }
  const beside = say(report, second.words, sources)
  return { said, beside: second.shows === 'everything' ? beside : cautionsOf(beside) }
}

import type { Report } from '../report/report.ts'
import { cautionsOf } from '../words/beside.ts'
import { type Said, say } from '../words/say.ts'
import type { Words } from '../words/words.ts'
import { type SeenAnswer, seenAnswer } from './seen-answer.ts'
import type { Setting } from './setting.tsx'

/** A finished walk in the language of the screen, and in the one that stands beside it. */
export interface SaidTwice {
  readonly said: Said
  readonly beside: Said | null
}

/** An outcome with the answer whose drawing stands beside it. */
export interface ToldOutcome extends SaidTwice {
  readonly seen: SeenAnswer | null
}

/** Words a finished report in the language of the screen, and in the one that stands beside it. */
export function tellOf(setting: Setting, report: Report): ToldOutcome {
  const { words, second, sources, atOffice = false } = setting
  const seen = seenAnswer(report, setting)
  const sayIn = (of: Words): Said => {
    const said = say(report, of, sources)
    return atOffice ? fromTheOffice(said, of) : said
  }
  const said = sayIn(words)
  if (second === null) return { said, beside: null, seen }
  const beside = sayIn(second.words)
  return { said, beside: second.shows === 'everything' ? beside : cautionsOf(beside), seen }
}

/** An outcome as its own office reads it out: in place of its number stands what its desk does next. */
function fromTheOffice(said: Said, words: Words): Said {
  const calls = said.calls.map(call =>
    call.to === 'office'
      ? {
          to: call.to,
          name: words.t('ui:referral.this-desk.name'),
          phone: null,
          say: words.t('ui:referral.this-desk.say')
        }
      : call
  )
  return { ...said, calls, bringIn: said.bringIn && { ...said.bringIn, callFirst: null } }
}

import { sentencesIn } from '../translation/pair.ts'
import { wordsIn } from './counts.ts'

/** What an author is told of the wording of a step. */
export const HABITS = ['long', 'forbids-first', 'denies-twice', 'two-actions'] as const
export type Habit = (typeof HABITS)[number]

/** The most words of a step. */
export const MOST_WORDS_OF_A_STEP = 20

const NEGATION = /\b(?:no|not|none|never|nobody|nothing|neither|nor|cannot|without)\b|n[’']t\b/gi
const CONDITION =
  /^(?:if|for|when|where|once|while|after|before|until|unless|with|without|in|on|at|by|from|as|then|and|also|only)\b/i

/** Words that begin some step as a command: what the steps themselves teach of them. */
export function commandsIn(steps: readonly string[]): ReadonlySet<string> {
  return new Set(
    steps.flatMap(step => {
      const [first = ''] = wordsIn(step)
      return CONDITION.test(first) || NEGATION_ALONE.test(first) ? [] : [first.toLowerCase()]
    })
  )
}

const NEGATION_ALONE = /^(?:no|not|none|never|nothing|do|don’t)$/i

/** The habits that a step does not keep; `commands` as `commandsIn` gives them. */
export function habitsBroken(step: string, commands: ReadonlySet<string>): readonly Habit[] {
  const parts = sentencesIn(step).flatMap(sentence =>
    sentence.split(/;\s+|:\s+|,\s+(?:and |then )+/)
  )
  const actions = parts.filter(part => commands.has(wordsIn(part)[0]?.toLowerCase() ?? ''))
  const twice = sentencesIn(step)
    .flatMap(sentence => sentence.split(/[;:,]\s+/))
    .some(clause => (clause.match(NEGATION) ?? []).length > 1)
  return [
    ...(wordsIn(step).length > MOST_WORDS_OF_A_STEP ? ['long' as const] : []),
    ...(/^(?:do not|don’t|never|no)\b/i.test(step) ? ['forbids-first' as const] : []),
    ...(twice ? ['denies-twice' as const] : []),
    ...(actions.length > 1 ? ['two-actions' as const] : [])
  ]
}

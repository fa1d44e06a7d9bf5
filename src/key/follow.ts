import { type Answers, choiceOf, measureOf, signsOf } from '../tree/answers.ts'
import { join, NOTHING_YET, type Outcome } from '../tree/caution.ts'
import { holds } from '../tree/range.ts'
import type { Tree } from '../tree/tree.ts'
import type { Key, Lead, LeadRow, LeadTakes, LeadWhen } from './key.ts'

/** What somebody holds at the end of a key, and the numbers passed on the way. */
export interface FollowedKey {
  readonly outcome: Outcome
  readonly passed: readonly number[]
}

/**
 * Follows a key as a person with a finger does, from its own data alone: the tree is asked only which of
 * two sheets is the more cautious, as the list on the key's first page says. A sign that was not told is
 * not there; a question that was not answered is "not sure".
 *
 * @throws Error where no line of a lead applies.
 */
export function followKey(key: Key, tree: Tree, answers: Answers): FollowedKey {
  // Answers as they stand at their lead: a second look writes into the first.
  const chosen: Record<string, string> = {}
  const passed: number[] = []
  let outcome = NOTHING_YET
  let number = 1
  for (;;) {
    const lead = key.leads[number - 1]
    if (lead === undefined) throw new Error(`${key.tree} has no lead ${number}`)
    passed.push(number)
    const applies = ({ when }: LeadRow) => isSo(when, lead, answers, chosen)
    const turn = lead.turns.find(applies)
    if (turn === undefined) throw new Error(`${key.tree}: nothing applies at lead ${number}`)
    const { goes } = turn
    if ('stop' in goes) {
      // Of several emergency signs on one lead all are taken.
      const stops = lead.turns.filter(each => 'stop' in each.goes && applies(each))
      return { outcome: taken(tree, NOTHING_YET, stops), passed }
    }
    outcome = taken(tree, outcome, [...lead.rows.filter(applies), turn])
    if ('end' in goes) return { outcome, passed }
    if (goes.as !== undefined) chosen[goes.as.observation] = goes.as.answer
    number = goes.to
  }
}

const taken = (
  tree: Tree,
  outcome: Outcome,
  rows: readonly { readonly takes: LeadTakes }[]
): Outcome =>
  rows.reduce(
    (held, { takes: { sheets, use, notes } }) => join(tree, held, { raise: sheets, use, notes }),
    outcome
  )

function isSo(
  when: LeadWhen,
  { observation }: Lead,
  answers: Answers,
  chosen: Readonly<Record<string, string>>
): boolean {
  const signs = signsOf(answers, observation)
  const reading = measureOf(answers, observation)
  const read = reading === undefined || reading === 'unsure' ? null : reading
  switch (when.kind) {
    case 'answer':
      return (chosen[observation] ?? choiceOf(answers, observation) ?? 'unsure') === when.answer
    case 'sign':
      return signs[when.sign] === when.value
    case 'any-sign':
      return when.signs.some(
        sign => signs[sign] === 'yes' || (when.orUnsure && signs[sign] === 'unsure')
      )
    case 'range': {
      const limits = when.limits.find(({ instrument }) => instrument === (read?.instrument ?? null))
      return read !== null && limits !== undefined && holds(limits.range, read.reading)
    }
    case 'reading':
      return read !== null && holds(when.range, read.reading)
    case 'unsure':
      return read === null
    case 'otherwise':
      return true
  }
}

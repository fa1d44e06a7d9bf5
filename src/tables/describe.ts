import type { Tree } from '../tree/tree.ts'
import { unaryTest } from './feel.ts'
import { variableName } from './names.ts'
import type { Table } from './table.ts'

/** What a reader of a tree's tables has to know, whichever table it is. */
export function aboutOf({ id, edition, review, fingerprint }: Tree): string {
  return [
    `The tree ${id}, edition ${edition}, review state ${review.state}, review due ${review.due}, meaning ${fingerprint}.`,
    'Every set of answers fits exactly one row of a table. A volunteered sign that nobody told counts as "no".',
    'Where an observation settles another, the settled one takes the effective answer: of what was told and what the settling answers stand for, the one listed first.',
    'A measure has a low, a reading and a high: the reading less and plus what its instrument may be out by (no instrument named: the widest). A count has its reading alone. Where nobody measured, the measure itself is "unsure" and its numbers are not looked at.',
    'An empty annotation: nothing is said there that would rest on a source.'
  ].join(' ')
}

/** What one table speaks of, and what it leaves out. */
export function describe({ lens, part }: Table): string {
  const subject =
    typeof lens === 'object'
      ? `Whether the note ${lens.note} is said`
      : lens === 'use'
        ? 'What may be drunk'
        : `The verdict on the ${lens}`
  const share =
    part === null
      ? ''
      : `, part ${part.number} of ${part.of}, complete only together` +
        (part.where.length === 0
          ? ': the emergencies'
          : `, where ${part.where.map(({ input, cell }) => `${variableName(input)} is ${unaryTest(cell)}`).join(' and ')}`)
  const emergencies =
    lens === 'person'
      ? 'Emergencies are in it.'
      : 'For sets of answers without an emergency: nothing of this is judged in one. The table on the person has the emergencies.'
  return `${subject}${share}. ${emergencies}`
}

import { z } from 'zod'
import { because, id, ids, rangeKeys, use } from './common.ts'
import { conjunction } from './rules.ts'

const noteKeys = {
  note: ids.optional().describe('Advice that this adds: one note of the tree, or a list.')
}
const effectKeys = {
  raise: ids
    .optional()
    .describe('A verdict that stands from here on, or a list; the walk goes on all the same.'),
  use: use.optional().describe('What may be drunk at most. It can only become less.'),
  ...noteKeys
}
const leadsKeys = {
  to: id.optional().describe('The question that follows: one of this file, a piece, or an exit.'),
  end: id.optional().describe('The verdict on the batch with which the walk ends here.')
}

const effect = z.strictObject(effectKeys).meta({ id: 'effect' })
/** What follows instead, and what else must have been told for it. */
const cases = z
  .array(
    z.strictObject({
      when: conjunction.describe('What is told besides, by observation; all must hold.'),
      ...effectKeys,
      ...leadsKeys
    })
  )
  .min(1)
const insteadKeys = {
  instead: cases
    .optional()
    .describe(
      'What follows instead where something else is told besides, in order; the first that fits is taken. One that leads nowhere leads where the branch does.'
    )
}
const branch = z
  .strictObject({ ...effectKeys, ...leadsKeys, ...insteadKeys })
  .meta({ id: 'branch' })

const asks = id.describe('The observation of shared/observations.yaml that is asked for.')
const unsureOfSign = 'What follows when the caller cannot tell about this one sign.'
const answersSaid =
  'For a choice: each answer and what follows; `others` serves those not listed, `unsure` stands apart.'
const signsSaid = 'For a screen of signs: what follows from each sign that is there.'
const rangesSaid = 'For a measure: parts of its line, which cover it once, without gap or overlap.'
const borderlineSaid = 'For a measure: when the reading, give or take, lies in no one part.'
const unsureSaid = 'What follows when the caller cannot tell. Never gentler than the answers.'

/** A question of a tree or piece. Which keys it may have depends on the kind of what it asks. */
export const questionSchema = z
  .strictObject({
    asks,
    because,
    like: id
      .optional()
      .describe('Another question that asks the same: all that stands there is copied in here.'),
    volunteered: z
      .boolean()
      .optional()
      .describe(
        'true: heard when a caller tells it, never asked; untold a sign counts as no, a measure as unsure.'
      ),
    'only-here': z
      .boolean()
      .optional()
      .describe(
        'true: an emergency that it raises counts only on walks that come here. It ends no other walk.'
      ),
    answers: z.record(id, branch).optional().describe(answersSaid),
    signs: z
      .record(
        id,
        z.strictObject({ ...effectKeys, unsure: effect.optional().describe(unsureOfSign) })
      )
      .optional()
      .describe(signsSaid),
    branch: z
      .array(
        z.strictObject({
          signs: z.array(id).min(1).describe('Taken when one of these signs is there.'),
          'or-unsure': z.boolean().optional().describe('true: taken when it is unsure as well.'),
          ...effectKeys,
          ...leadsKeys,
          ...insteadKeys
        })
      )
      .optional()
      .describe('For a screen of signs: where else to go, in order; the first that fits is taken.'),
    taste: z
      .array(z.strictObject({ ...rangeKeys, ...effectKeys }))
      .optional()
      .describe('For a measure: limits of taste, held against the bare reading.'),
    ranges: z
      .array(z.strictObject({ ...rangeKeys, ...effectKeys, ...leadsKeys, ...insteadKeys }))
      .optional()
      .describe(rangesSaid),
    borderline: branch.optional().describe(borderlineSaid),
    unsure: branch.optional().describe(unsureSaid),
    ...leadsKeys,
    ...insteadKeys
  })
  .meta({ id: 'question' })
export type AuthoredQuestion = z.infer<typeof questionSchema>
export type AuthoredBranch = z.infer<typeof branch>
export type AuthoredEffect = z.infer<typeof effect>

const note = z.strictObject(noteKeys).meta({ id: 'adds-note' })

/** A question put after the outcome: notes only. */
export const afterSchema = z
  .strictObject({
    asks,
    because,
    answers: z.record(id, note).optional().describe(answersSaid),
    signs: z
      .record(id, z.strictObject({ ...noteKeys, unsure: note.optional().describe(unsureOfSign) }))
      .optional()
      .describe(signsSaid),
    ranges: z
      .array(z.strictObject({ ...rangeKeys, ...noteKeys }))
      .optional()
      .describe(rangesSaid),
    borderline: note.optional().describe(borderlineSaid),
    unsure: note.optional().describe(unsureSaid)
  })
  .meta({ id: 'question-after' })

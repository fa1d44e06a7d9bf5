import { z } from 'zod'
import { because, day, id, recheck, text, trigger } from './common.ts'
import { afterSchema, questionSchema } from './question.ts'
import { conjunction, ruleSchema } from './rules.ts'
import { stepsSchema } from './verdicts.ts'

const note = z
  .strictObject({
    adds: z.array(id).optional().describe('Steps said before those of the verdict.'),
    clean: z.array(id).optional().describe('Steps said before the cleaning steps of the verdict.'),
    drops: z
      .array(id)
      .optional()
      .describe('Steps and notes that this note makes wrong: they are not said.'),
    'not-when-discarded': z
      .boolean()
      .optional()
      .describe('true: it speaks of waiting, so it is left out once the batch is thrown away.'),
    recheck: recheck.optional(),
    refer: z.array(trigger).optional().describe('Who is to be called because of it.'),
    because
  })
  .meta({ id: 'note' })
const notes = z
  .record(id, note)
  .optional()
  .describe('Notes that answers add, by name. Their words: locales/<language>/notes.json.')
const questions = z
  .record(id, questionSchema)
  .describe('The questions, by name; each asks for one observation.')
const start = id.describe('The question or piece that comes first.')
const ownName = id.describe('The name of the file, without its ending.')
export type AuthoredNote = z.infer<typeof note>

/** Who stands behind what an author wrote, and until when. */
export const review = z.strictObject({
  state: z.enum(['draft', 'signed']).describe('signed once a specialist has signed it.'),
  by: z.array(text).describe('Who reviewed it: roles, not names of people.'),
  reviewed: day.nullable().describe('The day of the review; null while there was none.'),
  due: day.describe('The day by which it has to be reviewed again.')
})

/** `trees/<id>/tree.yaml`: one tree. */
export const treeSchema = z.strictObject({
  id: ownName,
  edition: z.number().int().min(1).describe('The published number: 1, 2, 3 …'),
  review: review.describe('Who stands behind this tree, and until when.'),
  picture: id
    .optional()
    .describe('The drawing by which callers find it: shared/pictures/<picture>.svg.'),
  order: z
    .number()
    .int()
    .min(1)
    .optional()
    .describe(
      'Its place among the ferments to choose from; what is asked about most stands first.'
    ),
  'counts-days': id
    .optional()
    .describe('The observation that counts the days of this ferment, for `recheck: { day: … }`.'),
  'asked-again': conjunction
    .optional()
    .describe('What is told after a wait in which nothing changed, written like `when` of a rule.'),
  'open-cases': z
    .record(id, z.record(text, text.describe('Why it is not mended yet.')))
    .optional()
    .describe('Where a law does not hold yet, by the law and by the answer that shows it.'),
  pieces: z
    .record(id, z.record(id, id).describe('Where each exit of the piece leads in this tree.'))
    .optional()
    .describe('Shared questions to copy in: the piece, and where its exits lead.'),
  start,
  last: id
    .optional()
    .describe(
      'The question or piece that comes last: every end leads through it before the outcome is told.'
    ),
  questions,
  after: z
    .record(id, afterSchema)
    .optional()
    .describe('Questions put after the outcome: they add notes and change no verdict.'),
  rules: z.array(ruleSchema).optional().describe('What must hold for every set of answers.'),
  advice: z
    .record(id, stepsSchema)
    .optional()
    .describe('Steps of a verdict in this tree, in place of those in shared/verdicts.yaml.'),
  notes
})
export type AuthoredTree = z.infer<typeof treeSchema>

/** `shared/pieces/<id>.yaml`: questions that several trees copy in. */
export const pieceSchema = z.strictObject({
  id: ownName,
  start,
  exits: z.array(id).describe('Ways out, by name; each tree says where they lead.'),
  questions,
  rules: z
    .array(ruleSchema)
    .optional()
    .describe('What must hold in every tree that copies the piece in.'),
  notes
})
export type AuthoredPiece = z.infer<typeof pieceSchema>

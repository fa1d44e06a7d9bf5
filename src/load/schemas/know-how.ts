import { z } from 'zod'
import { BEYOND } from '../../tree/know-how.ts'
import { because, id, said } from './common.ts'
import { conjunction, ruleSchema } from './rules.ts'
import { review } from './tree.ts'

const answer = z
  .strictObject({
    because,
    basis: ruleSchema.shape.basis,
    beyond: z
      .array(z.enum(BEYOND).meta({ id: 'beyond' }))
      .min(1)
      .describe('Whom to ask when it is beyond this answer, first the one to ask first.'),
    limits: z
      .record(id, z.record(id, z.array(z.number()).min(1)))
      .optional()
      .describe(
        'The numbers that it says and a tree decides by: by tree, by measure, such as `{ kombucha-jar: { jar-ph: [4.2] } }`.'
      ),
    states: z
      .array(z.number())
      .min(1)
      .optional()
      .describe('The pH and the days that it says and no tree decides by.'),
    allows: z
      .record(id, conjunction)
      .optional()
      .describe(
        'When it says that the food may be had: by tree, conditions as in a rule. The tree must then allow it too.'
      ),
    pictures: z
      .array(id)
      .min(1)
      .optional()
      .describe('The drawings of what is done, in this order: shared/pictures/<id>.svg.'),
    class: z.literal(true).optional().describe('It stands on the class sheet of its ferment.'),
    warns: z
      .literal(true)
      .optional()
      .describe('It allows nothing: it may be shown beside a question about one jar.'),
    review: review.optional().describe('Where it differs from that of the file.')
  })
  .meta({ id: 'know-how' })

/** `shared/know-how/<ferment>.yaml`: answers to how-to questions; `any.yaml` is about every ferment. */
export const knowHowSchema = z.strictObject({
  review: review.describe('Who stands behind these answers, and until when.'),
  called: said
    .optional()
    .describe('What callers call this food, by language, such as `en: [kraut, sauerkraut]`.'),
  answers: z.record(id, answer).describe('The answers, in the order in which they are listed.')
})
export type AuthoredKnowHow = z.infer<typeof knowHowSchema>
export type AuthoredAnswer = z.infer<typeof answer>

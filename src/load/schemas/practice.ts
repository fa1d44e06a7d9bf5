import { z } from 'zod'
import { DIFFICULTIES } from '../../tree/practice-caller.ts'
import { id } from './common.ts'
import { told } from './rows.ts'

const TAG = /^[a-z]{2,3}(?:-[A-Za-z0-9]{2,8})*$/

const caller = z
  .strictObject({
    difficulty: z
      .enum(DIFFICULTIES)
      .describe(
        'plain: few facts, clear words. mixed: red herrings. hard: corrections, doubt, danger in passing.'
      ),
    speaks: z
      .string()
      .regex(TAG, 'the tag of a language, like `es`')
      .optional()
      .describe('The tag of the language that the caller speaks; en where left out.'),
    'takes-it-for': id
      .optional()
      .describe('The tree of the ferment that the caller takes it for, where that is another one.'),
    answers: told.describe(
      'What the caller says when asked. What is not listed is the usual answer of the tree.'
    ),
    pictures: z
      .array(id)
      .min(1)
      .optional()
      .describe('The drawings of what the caller sees, in shared/pictures.')
  })
  .meta({ id: 'practice-caller' })

/** `shared/practice/<tree>.yaml`: invented callers. What they tell stands in `locales/<tag>/practice.json`. */
export const practiceSchema = z.strictObject({
  callers: z.record(id, caller).describe('The callers, in the order in which they are listed.')
})
export type AuthoredPractice = z.infer<typeof practiceSchema>

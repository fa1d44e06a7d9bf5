import { z } from 'zod'
import { CALL_TIMES, VESSEL_DEEDS } from '../../tree/does.ts'
import { id, trigger } from './common.ts'
import { conjunction } from './rules.ts'

const deed = z.enum(VESSEL_DEEDS)

const does = z
  .strictObject({
    batch: z
      .enum(['keep', 'other-use', 'hold', 'discard'])
      .optional()
      .describe('What becomes of the food; hold: kept for the health department.'),
    else: z
      .enum(['discard'])
      .optional()
      .describe('What becomes of it if what is found out is not as it should be.'),
    vessel: z
      .union([deed, z.array(deed).min(1)])
      .optional()
      .describe('What is done to the vessel; several in the order in which they are done.'),
    after: z.enum(['chill']).optional().describe('What must have been done to the vessel before.'),
    first: z.boolean().optional().describe('true: it comes before what else is done.'),
    stops: z
      .boolean()
      .optional()
      .describe('true: no other step is done before the call that it names.'),
    later: z
      .boolean()
      .optional()
      .describe('true: it can wait until all else is done, and is said after it.'),
    top: z
      .enum(['leave', 'touch'])
      .optional()
      .describe('What is done to the growth, the film or the food in it.'),
    use: z.enum(['none', 'some']).optional().describe('Whether anybody has some of it.'),
    call: z
      .partialRecord(trigger, z.enum(CALL_TIMES))
      .optional()
      .describe('Whom to call, and by when; soon: no time is named.'),
    'once-called': z
      .array(id)
      .optional()
      .describe('Steps said in its place where whom it calls is called now anyway.'),
    measure: id.optional().describe('What is measured.'),
    look: z
      .enum(['near', 'afar', 'others'])
      .optional()
      .describe('Somebody looks or smells, from where.'),
    ask: z
      .union([z.boolean(), z.enum(['who'])])
      .optional()
      .describe('true: something is asked or looked up; who: who had some or will have some.'),
    washes: z.boolean().optional().describe('true: something is washed.'),
    pours: z.boolean().optional().describe('true: something is poured out or away.'),
    dated: z.boolean().optional().describe('true: its words name a time to wait for, or until.'),
    ends: z
      .boolean()
      .optional()
      .describe('true: it says by when a wait is over and what then, or what it does ends it.'),
    'by-day': z
      .number()
      .int()
      .min(0)
      .optional()
      .describe('It names this day of the ferment as one to come.'),
    'reason-for': z
      .array(id)
      .min(1)
      .optional()
      .describe('Verdicts for which a note gives the reason though another answer raises them.'),
    states: z
      .array(z.number())
      .min(1)
      .optional()
      .describe(
        'Numbers that its words state, a pH or a day, by which no tree that says it decides.'
      ),
    presumes: z
      .array(id)
      .min(1)
      .optional()
      .describe('What must be there for it, by the names under presumptions.'),
    otherwise: z
      .array(id)
      .optional()
      .describe('Steps said in its place where the answers rule out what it presumes.')
  })
  .meta({ id: 'does' })
export type AuthoredDoes = z.infer<typeof does>

/** `shared/steps.yaml`: what each step does, and each note that tells somebody to do something. */
export const doesSchema = z.strictObject({
  presumptions: z
    .record(
      id,
      z.strictObject({
        'ruled-out-by': z
          .array(conjunction)
          .min(1)
          .describe('Answers by which it is not there, each written like `when` of a rule.')
      })
    )
    .optional()
    .describe('What a step can presume, by name.'),
  steps: z
    .record(id, does)
    .default({})
    .describe('Every step, by name, with what it does; {}: nothing.'),
  'follow-ups': z
    .record(id, does)
    .optional()
    .describe('The follow-ups whose answer tells somebody to do something.'),
  notes: z
    .record(id, does)
    .optional()
    .describe('The notes that tell somebody to do something; the rest only explain.')
})
export type AuthoredDeeds = z.infer<typeof doesSchema>

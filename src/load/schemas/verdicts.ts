import { z } from 'zod'
import { because, id, recheck, trigger, use } from './common.ts'

const REFER = 'Who is to be called, in this order.'
const steps = (said: string) => z.array(id).optional().describe(said)

/** The steps of a verdict; a tree may say its own. */
export const stepsSchema = z
  .strictObject({
    'do-now': steps('What to do now. Steps are names; their words: locales/<language>/steps.json.'),
    'as-directed': steps('Said after do-now while it may be drunk as directed.'),
    'not-yet': steps('Said after do-now while it may not be drunk yet.'),
    never: steps('Said after do-now when it may never be drunk.'),
    clean: steps('How to clean up.'),
    keep: steps('What becomes of the rest of the batch.'),
    'start-again': steps('How to start again.'),
    recheck: recheck.optional(),
    refer: z.array(trigger).optional().describe(REFER),
    because
  })
  .meta({ id: 'steps' })
export type AuthoredSteps = z.infer<typeof stepsSchema>

const verdict = z
  .strictObject({
    ceiling: use.describe('What may be drunk at most under this verdict.'),
    signal: z
      .enum(['danger', 'warning', 'caution', 'notice', 'none'])
      .describe('The signal word; none for a gentle verdict.'),
    refer: z.array(trigger).optional().describe(REFER),
    recheck: recheck.optional(),
    'leave-it': z
      .boolean()
      .optional()
      .describe('true: nobody goes back to the jar, so steps about the batch are not said.'),
    'from-memory': z
      .boolean()
      .optional()
      .describe(
        'true: the rest is asked from memory; nobody tilts, presses or opens it to answer.'
      ),
    'tells-why': z
      .boolean()
      .optional()
      .describe('true: its own `why` names what was seen, and no note need say it.'),
    advice: stepsSchema.describe('What to do; a tree may say its own.')
  })
  .meta({ id: 'verdict' })
export type AuthoredVerdict = z.infer<typeof verdict>

/** `shared/verdicts.yaml`: the verdicts of each track, gentlest first, and what holds for all trees. */
export const verdictsSchema = z.strictObject({
  'unsure-note': z
    .partialRecord(z.enum(['person', 'container', 'batch']), id)
    .describe('The note that an unsure danger sign must add, by what the sign is about.'),
  'while-ill': z
    .strictObject({
      note: id
        .optional()
        .describe(
          'The note by which somebody is ill, in trees that have it; else any person verdict.'
        ),
      adds: z.array(id).describe('Steps that are said in place of those that change kept food.'),
      'at-a-distance': steps('Said in place of adds of a jar that nobody goes back to.'),
      refer: z.array(trigger).optional().describe(REFER)
    })
    .describe('What throwing it away becomes while somebody is ill.'),
  urgency: z.array(id).describe('The verdicts that are said before the rest, most urgent first.'),
  person: z.record(id, verdict).describe('Verdicts about people, gentlest first.'),
  container: z.record(id, verdict).describe('Verdicts about the container, gentlest first.'),
  batch: z.record(id, verdict).describe('Verdicts on the batch, gentlest first.')
})
export type AuthoredVerdicts = z.infer<typeof verdictsSchema>

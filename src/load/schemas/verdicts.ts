import { z } from 'zod'
import { id, ids, recheck, trigger, use } from './common.ts'

/** The steps of a verdict; a tree may say its own. */
export const stepsSchema = z.strictObject({
  'do-now': z.array(id).optional(),
  'as-directed': z.array(id).optional(),
  'not-yet': z.array(id).optional(),
  never: z.array(id).optional(),
  clean: z.array(id).optional(),
  keep: z.array(id).optional(),
  'start-again': z.array(id).optional(),
  recheck: recheck.optional(),
  refer: z.array(trigger).optional(),
  because: ids
})
export type AuthoredSteps = z.infer<typeof stepsSchema>

const verdict = z.strictObject({
  ceiling: use,
  signal: z.enum(['danger', 'warning', 'caution', 'notice', 'none']),
  refer: z.array(trigger).optional(),
  recheck: recheck.optional(),
  'leave-it': z.boolean().optional(),
  advice: stepsSchema
})
export type AuthoredVerdict = z.infer<typeof verdict>

/** `shared/verdicts.yaml`: the verdicts of each track, gentlest first, and what holds for all trees. */
export const verdictsSchema = z.strictObject({
  'unsure-note': z.partialRecord(z.enum(['person', 'container', 'batch']), id),
  'while-ill': z.strictObject({
    drops: z.array(id),
    adds: z.array(id),
    'at-a-distance': z.array(id).optional(),
    touching: z.array(id).optional(),
    refer: z.array(trigger).optional()
  }),
  person: z.record(id, verdict),
  container: z.record(id, verdict),
  batch: z.record(id, verdict)
})
export type AuthoredVerdicts = z.infer<typeof verdictsSchema>

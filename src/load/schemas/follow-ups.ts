import { z } from 'zod'
import { because, id } from './common.ts'

/** `shared/follow-ups.yaml`: what callers ask once they have heard a verdict, in the order in which it is offered. */
export const followUpsSchema = z.record(
  id,
  z
    .strictObject({
      after: z.array(id).min(1).describe('The verdicts after which it is offered.'),
      trees: z.array(id).min(1).optional().describe('The trees it is about; all where left out.'),
      'except-trees': z.array(id).min(1).optional().describe('The trees it is not about.'),
      because
    })
    .meta({ id: 'follow-up' })
)
export type AuthoredFollowUps = z.infer<typeof followUpsSchema>

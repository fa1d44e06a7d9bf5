import { z } from 'zod'
import { FEATURES } from '../../tree/look-alikes.ts'
import { because, id } from './common.ts'

const side = z
  .strictObject({
    above: id.describe('The drawing from above, in shared/pictures.'),
    side: id.optional().describe('The drawing from the side, in shared/pictures.')
  })
  .meta({ id: 'seen' })

/** `shared/look-alikes.yaml`: what callers mix up, two and two, in the order in which it is listed. */
export const lookAlikesSchema = z.record(
  id,
  z
    .strictObject({
      one: side.describe('The one that alarms less.'),
      other: side.describe('The one that alarms more.'),
      differs: z
        .array(z.enum(FEATURES))
        .min(1)
        .describe('By what they are told apart, the surest first.'),
      asked: z.array(id).min(1).describe('The observations at which callers mix them up.'),
      trees: z.array(id).min(1).optional().describe('The trees it helps in; all where left out.'),
      because
    })
    .meta({ id: 'look-alike' })
)
export type AuthoredLookAlikes = z.infer<typeof lookAlikesSchema>

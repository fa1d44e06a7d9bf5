import type { Does } from '../tree/does.ts'
import type { AuthoredDoes } from './schemas/steps.ts'

/** In the form of the tree; what a step does of which nothing is written is a finding of its own. */
export function doesOf({
  else: orElse,
  'once-called': onceCalled,
  'by-day': byDay,
  'reason-for': reasonFor,
  vessel,
  ...rest
}: AuthoredDoes = {}): Does {
  return {
    ...rest,
    ...(orElse !== undefined && { orElse }),
    ...(onceCalled !== undefined && { onceCalled }),
    ...(byDay !== undefined && { byDay }),
    ...(reasonFor !== undefined && { reasonFor }),
    ...(vessel !== undefined && { vessel: [vessel].flat() })
  }
}

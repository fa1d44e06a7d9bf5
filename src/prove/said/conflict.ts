import type { CallTime, Does, VesselDeed } from '../../tree/does.ts'

/** Of what two sentences say different things. */
export type Matter = 'batch' | 'vessel' | 'temperature' | 'surface' | 'use' | 'call' | 'cleaning'

const MOVES: readonly VesselDeed[] = ['cover', 'move', 'chill', 'warm', 'vent', 'open']
const OPENS: readonly VesselDeed[] = ['vent', 'open']
const DATED: readonly CallTime[] = ['now', 'today', 'this-week']

/** Of what the two say different things, unless one is to be done after the other; null where they agree. */
export function conflictOf(one: Does, other: Does): Matter | null {
  return disagrees(one, other) ?? disagrees(other, one)
}

function disagrees(one: Does, other: Does): Matter | null {
  if (one.batch !== undefined && other.batch !== undefined && one.batch !== other.batch)
    return 'batch'
  if (one.orElse === 'discard' && other.batch === 'hold') return 'batch'
  if (!one.stops && does(one, 'leave') && MOVES.some(deed => does(other, deed))) return 'vessel'
  if (does(one, 'closed') && OPENS.some(deed => does(other, deed))) return 'vessel'
  if (does(one, 'hold') && does(other, 'discard')) return 'vessel'
  if (does(one, 'chill') && does(other, 'warm') && !one.first && other.after !== 'chill')
    return 'temperature'
  if (does(one, 'discard') && other.washes) return 'cleaning'
  if (one.top === 'leave' && other.top === 'touch' && !other.first) return 'surface'
  if (one.use === 'none' && other.use === 'some') return 'use'
  return callsDiffer(one, other) ? 'call' : null
}

const does = ({ vessel }: Does, deed: VesselDeed): boolean => vessel?.includes(deed) === true

/** Two days for one call; or a call that is to be made now, and made only if something goes wrong. */
function callsDiffer({ call: one = {} }: Does, { call: other = {} }: Does): boolean {
  return Object.entries(one).some(([whom, when]) => {
    const then = other[whom]
    if (then === undefined || then === when) return false
    return DATED.includes(when) && (DATED.includes(then) || (when === 'now' && then === 'if-worse'))
  })
}

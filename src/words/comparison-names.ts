import type { Outcome } from '../tree/caution.ts'

/** How kinds of change are called in a report. */
export const CHANGE_NAMES: Readonly<
  Record<'less-cautious' | 'more-cautious' | 'sideways', string>
> = {
  'less-cautious': 'LESS CAUTIOUS',
  'more-cautious': 'More cautious',
  sideways: 'Otherwise worded, as cautious'
}

/** An exact count as people read it: 7,262,178. */
export const countText = (count: bigint): string => count.toLocaleString('en-US')

/** A share of all sets of answers as people read it; never 0% for something. */
export function shareText(part: bigint, whole: bigint): string {
  if (part === 0n) return '0%'
  const millionths = Number((part * 100_000_000n) / whole)
  return millionths === 0
    ? 'under 0.000001%'
    : `${Number((millionths / 1_000_000).toPrecision(3))}%`
}

/** An outcome in the words of the rules. */
export const outcomeText = ({ person, container, batch, use }: Outcome): string =>
  [person, container, batch, use].filter(one => one !== null).join(', ')

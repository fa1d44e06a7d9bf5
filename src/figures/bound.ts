import type { Shares } from './shares.ts'

/** Bits of uncertainty in some shares (Shannon's entropy). */
export function entropy(shares: Iterable<number>): number {
  let bits = 0
  for (const share of shares) if (share > 0) bits -= share * Math.log2(share)
  return bits
}

/**
 * The fewest screens, on average, from which any order of asking could know the outcome.
 *
 * What is answered on a walk decides its outcome, so the answers hold at least as many bits: with
 * independent screens H(outcome) <= sum of p(i) H(i), where p(i) <= 1 is how often screen i is asked.
 * The mean number of screens is the sum of p(i), least when the screens of most bits are asked first.
 * (Shannon 1948, entropy of joint events and of choices in steps; cited from memory. The bound for a
 * single branching, H / log2 D, is the case of equal screens with D even answers.)
 */
export function fewestScreens(outcomeBits: number, shares: Shares): number {
  const bits = Object.values(shares)
    .map(likely => entropy(likely.map(({ share }) => share)))
    .sort((a, b) => b - a)
  let [left, screens] = [outcomeBits, 0]
  for (const of of bits) {
    if (left <= 0 || of === 0) break
    screens += Math.min(1, left / of)
    left -= of
  }
  return screens
}

import type { Claim } from './tree.ts'

/** Upper bounds keep a tree from being right by always alarming; an error in one harms. */
export function isUpperBound(claim: Claim): boolean {
  return (
    claim.kind === 'at-most' ||
    claim.kind === 'nothing-about' ||
    claim.kind === 'use-at-least' ||
    (claim.kind === 'use-is' && claim.use !== 'never')
  )
}

import { level, useLevel, verdict, verdictsOf } from '../tree/caution.ts'
import type { Lens } from '../tree/lens.ts'
import { must } from '../tree/must.ts'
import { type Claim, type Tree, USES } from '../tree/tree.ts'

/** A claim as a question to a diagram: which side it speaks of, and which levels break it. */
export interface Breach {
  readonly lens: Lens
  readonly breaks: (level: number) => boolean
}

export function breachOf(tree: Tree, claim: Claim): Breach {
  switch (claim.kind) {
    case 'note':
      return { lens: { note: claim.note }, breaks: level => level === 0 }
    case 'nothing-about':
      return { lens: claim.track, breaks: level => level > 0 }
    case 'use-is':
      return { lens: 'use', breaks: level => level !== useLevel(claim.use) }
    case 'use-at-most':
      return { lens: 'use', breaks: level => level < useLevel(claim.use) }
    case 'use-at-least':
      return { lens: 'use', breaks: level => level > useLevel(claim.use) }
    case 'at-least':
    case 'at-most': {
      const { track } = verdict(tree, claim.verdict)
      const limit = level(tree, track, claim.verdict)
      return claim.kind === 'at-least'
        ? { lens: track, breaks: level => level < limit }
        : { lens: track, breaks: level => level > limit }
    }
  }
}

/** The claim as an author wrote it. */
export function claimText(claim: Claim): string {
  if (claim.kind === 'note') return `note: ${claim.note}`
  if (claim.kind === 'nothing-about') return `nothing-about: ${claim.track}`
  return `${claim.kind}: ${'verdict' in claim ? claim.verdict : claim.use}`
}

/** A level as the author's word for it. */
export function levelText(tree: Tree, lens: Lens, level: number): string {
  if (typeof lens === 'object') return level === 1 ? `note ${lens.note}` : `no note ${lens.note}`
  if (lens === 'use') return must(USES[level], 'use')
  return verdictsOf(tree, lens)[level - 1] ?? `nothing on the ${lens} track`
}

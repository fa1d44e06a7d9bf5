import type { OfficePack } from '../office/office-pack.ts'
import type { Outcome } from '../tree/caution.ts'
import type { Tree } from '../tree/tree.ts'
import { writeGeneral, writeOutcome } from './outcome-address.ts'
import { addressOf } from './route.ts'

/** Where a sheet can be seen again: what the QR code says, and what is short enough to be typed. */
export interface SheetAddress {
  readonly scanned: string
  readonly typed: string
  /** Whether it shows the outcome; where it may not be shared the questions are asked there. */
  readonly showsOutcome: boolean
}

/** Where the public finds this installation: as its office says, else where this page came from. */
export function homeOf(office: OfficePack | null): string {
  return office?.address ?? new URL('.', location.href.split('#')[0]).href
}

/** Where an outcome is seen again; without one that may be shared, where its questions are asked. */
export function sheetAddress(
  tree: Tree,
  shared: Outcome | null,
  language: string,
  home: string,
  of: 'one jar' | 'general' = 'one jar'
): SheetAddress {
  if (shared === null) {
    const questions = home + addressOf(tree.id, language)
    return { scanned: questions, typed: questions, showsOutcome: false }
  }
  const typed = home + writeGeneral(tree, shared, language)
  const scanned = of === 'general' ? typed : home + writeOutcome(tree, shared, language)
  return { scanned, typed, showsOutcome: true }
}

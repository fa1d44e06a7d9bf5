import type { ComponentChildren } from 'preact'
import type { Words } from '../words/words.ts'
import type { Setting } from './setting.tsx'

export const PAPERS = ['letter', 'a4'] as const
export const PRINTS = ['standard', 'large'] as const

/** What somebody prints: on which paper, in which type (standard from 12 points on, large from 18), which sheets. */
export interface PrintChoice {
  readonly paper: (typeof PAPERS)[number]
  readonly print: (typeof PRINTS)[number]
  readonly sheets: ReadonlySet<SheetName>
  /** English behind a reviewed translation; behind a draft it always is. */
  readonly twoSides: boolean
}

/** What is asked for by most who print here. */
export const USUAL_PRINT: PrintChoice = {
  paper: 'letter',
  print: 'standard',
  sheets: new Set(['outcome']),
  twoSides: false
}

export type SheetName = 'outcome' | OtherSheetName

/** The sheets that are not about a verdict, by the group of their texts. */
export type OtherSheetName = 'card' | 'chart' | 'class' | 'key'

/** A sheet of a tree that is not about a verdict. */
export interface OtherSheet {
  readonly name: OtherSheetName
  title(words: Words): string
  /** Its side in one language. */
  side(words: Words): ComponentChildren
}

/** Of a walk's tree the sheets that are not about a verdict. */
export type OtherSheets = (setting: Setting) => readonly OtherSheet[]

/**
 * The languages that a sheet has a side in, the caller's own in front; English behind a draft, and behind
 * a reviewed translation where that is wanted.
 */
export function sidesOf(
  { words, second, behind = null }: Setting,
  twoSides: boolean
): readonly Words[] {
  const other = second?.words ?? (twoSides ? behind : null)
  return other === null ? [words] : [words, other]
}

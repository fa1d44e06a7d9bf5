import type { Answers } from './answers.ts'

/** How hard a call is to take, easiest first. */
export const DIFFICULTIES = ['plain', 'mixed', 'hard'] as const
export type Difficulty = (typeof DIFFICULTIES)[number]

/** An invented caller for practice. What the call comes to is walked from the tree, never written down. */
export interface PracticeCaller {
  readonly id: string
  /** The tree whose ferment the caller really has. */
  readonly tree: string
  readonly difficulty: Difficulty
  /** The tag of the language that the caller speaks. */
  readonly speaks: string
  /** The tree of the ferment that the caller takes it for; null where the caller names the right one. */
  readonly takesItFor: string | null
  /** What is not usual, by observation; all else is the tree's usual answer. */
  readonly answers: Answers
  /** The drawings of what the caller sees. */
  readonly pictures: readonly string[]
}

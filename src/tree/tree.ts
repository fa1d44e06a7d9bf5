import type { Does } from './does.ts'
import type { FollowUp } from './follow-ups.ts'
import type { Observation, Range, Track } from './observation.ts'

/** What may be drunk or eaten, freest first. */
export const USES = ['as-directed', 'not-yet', 'never'] as const
export type Use = (typeof USES)[number]

/** What is said, on one of the three tracks. */
export interface Verdict {
  readonly id: string
  readonly track: Track
  /** The freest use that this verdict allows; answers only lower it. */
  readonly ceiling: Use
  readonly signal: Signal
}

/** The signal word beside a verdict (ANSI Z535.6, ISO 3864-2); `none` for a gentle one. */
export type Signal = 'danger' | 'warning' | 'caution' | 'notice' | 'none'

/** What an answer does on the way: it raises verdicts, lowers `use`, adds notes. */
export interface Effect {
  readonly raise: readonly string[]
  /** `as-directed` lowers nothing. */
  readonly use: Use
  readonly notes: readonly string[]
}

/** An effect, and where the walk goes from there: to a question, or to an end with its batch verdict. */
export interface Branch extends Effect {
  readonly leads: Destination
}

export type Destination = { readonly to: string } | { readonly end: string }

/** A place in a tree that asks for one observation. */
export type Question = ChoiceQuestion | SignsQuestion | MeasureQuestion

interface Asks {
  readonly id: string
  readonly asks: string
  readonly because: readonly string[]
  /** An emergency that it raises counts only on walks that come here; elsewhere it ends the walk at once. */
  readonly onlyHere?: boolean
}

export interface ChoiceQuestion extends Asks {
  readonly kind: 'choice'
  /** By answer id, `unsure` included. A settling observation has `unsure` alone. */
  readonly answers: Readonly<Record<string, Branch>>
}

export interface SignsQuestion extends Asks {
  readonly kind: 'signs'
  /** Reads what was told and never stops to ask: a sign not told counts as no. */
  readonly volunteered: boolean
  readonly signs: Readonly<Record<string, { readonly yes: Effect; readonly unsure: Effect }>>
  /** In order: the first turn that is taken decides where the walk goes. */
  readonly turns: readonly SignBranch[]
  readonly otherwise: Branch
}

/** Taken when any of its signs is a yes, or, where it says so, unsure. */
export interface SignBranch extends Branch {
  readonly signs: readonly string[]
  readonly orUnsure: boolean
}

export interface MeasureQuestion extends Asks {
  readonly kind: 'measure'
  /** Reads what was told and never stops to ask: untold counts as unsure, which then is the gentlest. */
  readonly volunteered?: boolean
  /** Together they cover the line once. */
  readonly ranges: readonly (Branch & { readonly range: Range })[]
  /** Limits of taste: they compare the reading alone and add their effect beside the range's. */
  readonly taste: readonly (Effect & { readonly range: Range })[]
  /** Where no range holds the whole interval. */
  readonly borderline: Branch
  readonly unsure: Branch
}

/** A question put after the outcome: it adds notes on what to change next time, nothing else. */
export type AfterQuestion = Question

/** Where a published figure, a relayed one, our caution or a memory stands behind a rule. */
export type Basis = 'published' | 'relayed' | 'common-practice' | 'own-caution' | 'memory'

/** What must hold for every complete set of answers, written apart from the tree. */
export interface Rule {
  readonly id: string
  readonly when: readonly Condition[]
  /** Exceptions: each a conjunction under which the rule does not speak. */
  readonly unless: readonly (readonly Condition[])[]
  /** Every observation that `when` does not name has an answer marked usual. */
  readonly restUsual: boolean
  readonly claim: Claim
  readonly basis: Basis
  readonly because: readonly string[]
  /** What sources say otherwise; the rule is the side taken. No part of the meaning. */
  readonly dissent?: readonly Dissent[]
}

/** A source, where it is one text, and what it says against a rule. */
export interface Dissent {
  readonly source?: string
  readonly says: string
}

/** A rule of what is said: of the steps, in this order, and of the notes. */
export interface SpokenRule extends Omit<Rule, 'claim'> {
  readonly says: readonly string[]
  readonly never: readonly string[]
}

/** One literal of a rule's conjunction. */
export type Condition =
  | { readonly kind: 'choice'; readonly observation: string; readonly among: readonly string[] }
  | {
      readonly kind: 'sign'
      readonly observation: string
      readonly sign: string
      readonly among: readonly ('yes' | 'no' | 'unsure')[]
    }
  /** `straddles`: the interval reaches to both sides of the limit. */
  | {
      readonly kind: 'measure'
      readonly observation: string
      readonly is: { readonly within: Range } | { readonly straddles: number } | 'unsure'
    }

export type Claim =
  | { readonly kind: 'at-least' | 'at-most'; readonly verdict: string }
  | { readonly kind: 'use-is' | 'use-at-most' | 'use-at-least'; readonly use: Use }
  | { readonly kind: 'nothing-about'; readonly track: Track }
  | { readonly kind: 'note'; readonly note: string }

export interface Review {
  readonly state: 'draft' | 'signed'
  /** Roles, not names. */
  readonly by: readonly string[]
  readonly reviewed: string | null
  /** Past this day the advice says that its review is overdue. */
  readonly due: string
}

/** A complete tree: expanded, linked and free of findings. Plain data, so that a browser can load it. */
export interface Tree {
  readonly id: string
  readonly edition: number
  readonly review: Review
  /** Every verdict there is, gentlest first on each track. */
  readonly verdicts: readonly Verdict[]
  /** Every observation that the tree asks or reads, in the order of the walk. */
  readonly observations: Readonly<Record<string, Observation>>
  /** The drawing by which callers find it. */
  readonly picture?: string
  /** Its place among the ferments to choose from; one without any stands last. */
  readonly order?: number
  /** The observation that counts this ferment's days; named where a recheck falls on one of them. */
  readonly countsDays?: string
  readonly start: string
  readonly questions: Readonly<Record<string, Question>>
  readonly after: readonly AfterQuestion[]
  readonly rules: readonly Rule[]
  readonly spokenRules: readonly SpokenRule[]
  /** What is told after a wait in which nothing changed. */
  readonly askedAgain: readonly Condition[]
  /** By name what a step can presume: the answers that rule it out, each a conjunction. */
  readonly presumptions: Readonly<Record<string, readonly (readonly Condition[])[]>>
  /** Where a law is known not to hold yet, and why: by the law, then by the answer that shows it. */
  readonly openCases: Readonly<Record<string, Readonly<Record<string, string>>>>
  /** Slips in it that no rule or law finds, by name, and why. */
  readonly unfoundFaults: Readonly<Record<string, string>>
  readonly advice: Advice
  /** SHA-256 over the meaning: without edition and review, its place, and what the proofs alone read. */
  readonly fingerprint: string
  /** SHA-256 over the English words and the pictures that go with that meaning. */
  readonly wordsFingerprint: string
}

/** Which steps a verdict and a note stand for. Their words are in the locales, keyed by step id. */
export interface Advice {
  readonly verdicts: Readonly<Record<string, Steps>>
  readonly notes: Readonly<Record<string, NoteAdvice>>
  /** What each step does that is said in this tree. */
  readonly does: Readonly<Record<string, Does>>
  /** The verdicts that are said before the rest, most urgent first. */
  readonly urgency: readonly string[]
  /** What "throw it away" becomes while somebody is ill. */
  readonly whileIll: WhileIll
  /** What callers ask once the verdict is out, in the authors' order. */
  readonly followUps: readonly FollowUp[]
  /** The note that an unsure danger sign about a person must add. */
  readonly unsureNote: Readonly<Partial<Record<Track, string>>>
}

/** The food of somebody who is ill is kept: the health department may want it. */
export interface WhileIll {
  /** The note by which somebody is ill; without one, any person verdict that cannot wait. */
  readonly note?: string
  readonly adds: readonly string[]
  /** Said instead of `adds` of a jar that nobody goes back to. */
  readonly atADistance: readonly string[]
  readonly refer: readonly string[]
}

export interface Steps {
  readonly doNow: readonly string[]
  /** Said after `doNow`, by the use that the outcome leaves. */
  readonly byUse: Readonly<Record<Use, readonly string[]>>
  readonly clean: readonly string[]
  readonly keep: readonly string[]
  readonly startAgain: readonly string[]
  readonly recheck?: Recheck
  readonly because: readonly string[]
  /** While this stands nobody goes back to the jar: the batch's steps are not said. */
  readonly leaveIt: boolean
  /** While this stands the rest is asked from memory: nobody handles the jar to answer. */
  readonly fromMemory?: boolean
  /** Its own words say why: they name what was seen. */
  readonly tellsWhy?: boolean
  /** The office or line to call, by trigger. */
  readonly refer: readonly string[]
}

export interface NoteAdvice {
  /** Said before the verdict's own steps. */
  readonly adds: readonly string[]
  /** Said before the verdict's own cleaning steps, where it has any. */
  readonly clean: readonly string[]
  /** Steps and notes that it makes wrong. */
  readonly drops: readonly string[]
  /** What its own words tell somebody to do. */
  readonly does: Does
  /** It speaks of waiting or of going on: nothing to say of a batch that is thrown out. */
  readonly notWhenDiscarded: boolean
  readonly recheck?: Recheck
  readonly because: readonly string[]
  readonly refer: readonly string[]
}

/** When to look again: within so many hours, or on a day of the ferment. */
export type Recheck = { readonly hours: readonly [number, number] } | { readonly day: number }

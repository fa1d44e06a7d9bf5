import type { Answers } from '../../src/tree/answers.ts'
import type { Expected } from './told.ts'

/** Who published a statement, as the sources file names its publisher. */
export const PUBLISHERS = {
  USDA: /^US Department of Agriculture/,
  NCHFP: /^National Center for Home Food Preservation$/,
  'land-grant extension': /Extension|^NC State University$|^Utah State University$/,
  FDA: /^US Food and Drug Administration$/,
  CDC: /^US Centers for Disease Control and Prevention$/,
  TTB: /^US Alcohol and Tobacco Tax and Trade Bureau$/,
  'US health agency': /^US (Health Resources|National Institutes)/,
  journal: /Journal|^Food Protection Trends|^mBio$|^Revista|^Epidemiology/,
  'state or local government': /^(New York State|City of)/,
  'government abroad': /^(Niagara|Queensland|New Zealand|NSW|Government of Canada|Canadian)/,
  'poison center or hospital': /Poison Center$|Hospital$/,
  'not noted': /^$/,
  news: /^(HuffPost|Food Safety News)$/
} as const
export type Publisher = keyof typeof PUBLISHERS

/** What must come out. A verdict bound speaks of the track that the verdict is on. */
export interface Held extends Expected {
  readonly atLeast?: string
  readonly atMost?: string
  /** Notes and steps that are among what is said. */
  readonly says?: readonly string[]
  /** Notes and steps that are not. */
  readonly leavesOut?: readonly string[]
}

/** What a publication states, and what a tree must make of it with everything else usual. */
export interface Statement {
  /** A key of the sources file. */
  readonly source: string
  readonly publisher: Publisher
  /** In our words. */
  readonly states: string
  readonly tree: string
  readonly told: Answers
  readonly holds: Held
}

type Stated = readonly [states: string, told: Answers, holds: Held]

/** The statements of one source that one tree must hold to. */
export const statedIn =
  (tree: string) =>
  (source: string, publisher: Publisher, stated: readonly Stated[]): readonly Statement[] =>
    stated.map(([states, told, holds]) => ({ source, publisher, states, tree, told, holds }))

/** Signs told of one observation. */
export const signs = (observation: string, ...told: readonly string[]): Answers => ({
  [observation]: Object.fromEntries(told.map(sign => [sign, 'yes' as const]))
})
/** Things told of people. */
export { person as people } from './told.ts'

/** Nothing to say against it. */
export const fine: Held = {
  person: null,
  container: null,
  batch: 'normal-growth',
  use: 'as-directed'
}
/** Nothing against it, and not ready. */
export const growing: Held = { ...fine, use: 'not-yet' }
/** To be thrown out. */
export const discard: Held = { batch: 'discard-and-sanitize', use: 'never' }
/** To be thrown out as mold. */
export const mold: Held = { batch: 'likely-mold', use: 'never' }
/** To be left closed and bagged. */
export const toxin: Held = { batch: 'possible-toxin', use: 'never' }
/** To be looked at again. */
export const wait: Held = { batch: 'wait-and-recheck', use: 'not-yet' }
/** For the specialist. */
export const specialist: Held = { batch: 'ask-specialist', use: 'not-yet' }
/** An emergency, which leaves the jar unspoken. */
export const emergency: Held = { person: 'emergency', batch: null, use: 'never' }

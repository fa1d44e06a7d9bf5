import { groundOf } from '../../words/known.ts'
import { type CitedSource, entriesOf, type SourceLedger } from '../../words/sources.ts'
import type { PacketItem } from './items.ts'
import type { Packet } from './packet.ts'
import { type AnyRule, BASIS_NAMES, rulesOf } from './rule-words.ts'

/** By what numbers the parts of a packet name each other. */
export interface References {
  readonly rules: readonly AnyRule[]
  /** `R12`, by rule. */
  readonly ruleNumber: ReadonlyMap<string, number>
  /** The number of the item that a rule is decided in. */
  readonly itemOfRule: ReadonlyMap<string, number>
  /** What is cited at all, in the order in which it is first cited. */
  readonly sources: readonly CitedSource[]
  readonly sourceNumber: ReadonlyMap<string, number>
}

export function referencesOf({ tree, items, sources }: Packet): References {
  const rules = rulesOf(tree)
  const cited = [
    ...rules.flatMap(({ because, dissent = [] }) => [
      ...because,
      ...dissent.flatMap(({ source }) => source ?? [])
    ]),
    ...items.flatMap(({ because }) => because),
    ...Object.values(tree.questions).flatMap(({ because }) => because),
    ...Object.values(tree.advice.verdicts).flatMap(({ because }) => because),
    ...Object.values(tree.advice.notes).flatMap(({ because }) => because)
  ]
  const listed = entriesOf([...new Set(cited)], sources)
  return {
    rules,
    ruleNumber: new Map(rules.map(({ id }, index) => [id, index + 1])),
    itemOfRule: new Map(
      items.flatMap((item, index) => item.rules.map(rule => [rule, index + 1] as const))
    ),
    sources: listed,
    sourceNumber: new Map(listed.map(({ id }, index) => [id, index + 1]))
  }
}

/** How it is known: what kind of ground, whether it was read, and in which copy. */
export function knownText(source: SourceLedger[string]): string {
  const { copy, note } = source
  const copies: Readonly<Record<string, string>> = {
    original: 'the publisher’s own text was read',
    copy: 'a copy was read',
    none: 'no text was read'
  }
  const ground = groundOf(source)
  const isText = ground === 'published' || ground === 'relayed'
  const how = isText && copy !== undefined ? copies[copy] : undefined
  return [BASIS_NAMES[ground], how, note].filter(Boolean).join('; ')
}

/** The heading that an item stands under. */
export const GROUP_NAMES: Readonly<Record<PacketItem['group'], string>> = {
  dissent: 'Sources differ: is the side taken the right one?',
  frees: 'Rules that let food be kept or used, or hold an alarm back',
  limit: 'Limits and instruments',
  holds: 'Rules that hold back, discard or warn',
  said: 'Steps, notes and answers to callers'
}

/** What to ask of the items under a heading. */
export const GROUP_HINTS: Readonly<Record<PacketItem['group'], string>> = {
  dissent:
    'The project takes the side that is written here. Say “change” where the other one is right.',
  frees: 'An error here can hurt somebody: these say when nothing more cautious may come out.',
  limit: 'Numbers that decide and that no publication carries, at least in part.',
  holds: 'An error here costs food or a needless call.',
  said: 'What a caller is told to do, in its own words.'
}

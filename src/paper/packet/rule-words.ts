import type { Outcome } from '../../tree/caution.ts'
import type { Track } from '../../tree/observation.ts'
import type { Basis, Claim, Rule, SpokenRule, Tree, Use } from '../../tree/tree.ts'
import type { TextKey } from '../../words/text-key.ts'
import { verdictText } from '../../words/verdict-text.ts'
import type { Words } from '../../words/words.ts'
import { conditionLines } from './condition-words.ts'

/** A rule of either kind. */
export type AnyRule = Rule | SpokenRule

/** Every rule of a tree, those of what is said last. */
export const rulesOf = (tree: Tree): readonly AnyRule[] => [...tree.rules, ...tree.spokenRules]

export const USE_NAMES: Readonly<Record<Use, string>> = {
  'as-directed': 'may be used as directed',
  'not-yet': 'not to be used yet',
  never: 'never to be used'
}

export const TRACK_NAMES: Readonly<Record<Track, string>> = {
  person: 'the person',
  container: 'the container',
  batch: 'the batch'
}

export const BASIS_NAMES: Readonly<Record<Basis, string>> = {
  published: 'published',
  relayed: 'known at second hand',
  'common-practice': 'common practice, no source',
  'own-caution': 'our own caution',
  memory: 'from memory'
}

/** A name of ours as a sentence: those of rules say what the rule says. */
export function nameText(id: string): string {
  const text = id.replaceAll('-', ' ')
  return text.charAt(0).toUpperCase() + text.slice(1)
}

/** For which answers a rule speaks. */
export function whenText(words: Words, tree: Tree, rule: AnyRule): string {
  const lines = conditionLines(words, tree, rule.when)
  const rest = rule.restUsual ? ['All else looks ordinary'] : []
  const all = [...lines, ...rest]
  const unless = rule.unless.map(
    each => `Unless ${conditionLines(words, tree, each).join(', and ')}`
  )
  return [...(all.length === 0 ? ['Whatever is answered'] : all), ...unless].join('. ')
}

/** What must then come out. */
export function thenText(words: Words, tree: Tree, rule: AnyRule): string {
  if ('claim' in rule) return claimWords(words, tree, rule.claim)
  const quoted = (ids: readonly string[]) =>
    ids.map(id => `“${briefText(words, id)}”`).join(rule.never.length > 0 ? ' or ' : ', then ')
  return rule.never.length > 0
    ? `It never says ${quoted(rule.never)}`
    : `It says ${quoted(rule.says)}`
}

function claimWords(words: Words, tree: Tree, claim: Claim): string {
  switch (claim.kind) {
    case 'at-least':
    case 'at-most': {
      const track = tree.verdicts.find(({ id }) => id === claim.verdict)?.track ?? 'batch'
      const name = `“${verdictText(words, tree.id, claim.verdict, 'name')}”`
      return claim.kind === 'at-least'
        ? `For ${TRACK_NAMES[track]} ${name} or a more cautious verdict`
        : `For ${TRACK_NAMES[track]} ${name} or a gentler verdict, or none`
    }
    case 'use-is':
      return `Exactly: ${USE_NAMES[claim.use]}`
    case 'use-at-most':
      return claim.use === 'never'
        ? `Exactly: ${USE_NAMES.never}`
        : `No freer than: ${USE_NAMES[claim.use]}`
    case 'use-at-least':
      return `No stricter than: ${USE_NAMES[claim.use]}`
    case 'nothing-about':
      return `No verdict at all about ${TRACK_NAMES[claim.track]}`
    case 'note':
      return `It says “${briefText(words, claim.note)}”`
  }
}

/** A step or a note in its own words. */
export function saidText(words: Words, id: string): string {
  const keys: readonly TextKey[] = [`steps:${id}`, `notes:${id}`]
  const key = keys.find(each => words.has(each))
  return key === undefined ? nameText(id) : words.t(key)
}

/** Its first sentence: a rule is about whether it is said, and its words stand in part 5. */
function briefText(words: Words, id: string): string {
  const text = saidText(words, id)
  const [first = text] = /^.*?[.!?](?=\s|$)/.exec(text) ?? []
  return first === text ? text : `${first} …`
}

/** An outcome, side by side, in the names that callers see. */
export function outcomeLines(
  words: Words,
  tree: Tree,
  { person, container, batch, use }: Outcome
): readonly string[] {
  const named = (track: Track, id: string | null) =>
    id === null
      ? []
      : [`${nameText(track)}: ${verdictText(words, tree.id, id, 'name').replace(/\.$/, '')}`]
  return [
    ...named('person', person),
    ...named('container', container),
    ...named('batch', batch),
    nameText(USE_NAMES[use])
  ]
}

/** So many of something: `1 rule`, `12 rules`. */
export const countOf = (count: number, name: string): string =>
  `${count} ${name}${count === 1 ? '' : 's'}`

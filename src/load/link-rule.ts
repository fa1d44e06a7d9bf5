import type { Place } from '../findings/place.ts'
import type { Claim, Condition, Dissent, Rule, SpokenRule } from '../tree/tree.ts'
import type { Keys } from './authored.ts'
import { linkCondition } from './link-condition.ts'
import { inPiece, type Linking, linkSources, unknownName } from './linking.ts'
import { neverApplies } from './never-applies.ts'
import { listed } from './schemas/common.ts'
import { type AuthoredConjunction, type AuthoredRule, CLAIMS } from './schemas/rules.ts'

/** A rule as authored, and where its parts stand. */
export interface DraftRule {
  readonly body: AuthoredRule
  place(keys: Keys, part?: 'key' | 'value'): Place
}

/** The claim of a rule of what is said. */
type Spoken = Pick<SpokenRule, 'says' | 'never'>

/** The steps that a tree's verdicts and notes can say, and all that any tree can. */
export interface Sayable {
  readonly here: ReadonlySet<string>
  readonly anywhere: ReadonlySet<string>
}

/** A rule with its names checked; `asked` are the observations in the tree's answer space. */
export function linkRule(
  linking: Linking,
  { body, place }: DraftRule,
  asked: ReadonlySet<string>,
  steps: Sayable
): Rule | SpokenRule | null {
  const { report } = linking
  const before = report.findings.length
  const because = listed(body.because)
  linkSources(linking, because, index => place(['because', index], 'value'))
  const dissent = linkDissent(linking, { body, place })
  const claim = linkClaim(linking, { body, place }, steps)
  const conjunction = (authored: AuthoredConjunction, keys: Keys) =>
    linkConjunction(linking, { body, place }, authored, keys, asked)
  const { rest } = body.when
  if (rest !== undefined && rest !== 'usual') {
    const facts = { key: 'rest', value: String(rest), among: ['usual'], near: [] }
    report.add('wrong-value', place(['when', 'rest'], 'value'), facts)
  }
  const when = conjunction(body.when, ['when'])
  const unless = (body.unless ?? []).map((each, index) => conjunction(each, ['unless', index]))
  if (report.findings.length > before || claim === null) return null
  const rule: Rule | SpokenRule = {
    id: body.id,
    when,
    unless,
    restUsual: rest === 'usual',
    ...('says' in claim ? claim : { claim }),
    basis: body.basis,
    because,
    ...(dissent.length > 0 && { dissent })
  }
  const why = neverApplies(rule, linking.observations)
  if (why !== null) report.add('rule-never-applies', place(['id'], 'value'), { rule: body.id, why })
  return why === null ? rule : null
}

/** What sources say otherwise, with their names checked. */
function linkDissent(linking: Linking, { body, place }: DraftRule): readonly Dissent[] {
  return (body.dissent ?? []).map(({ source, says }, index) => {
    if (source === undefined) return { says }
    linkSources(linking, [source], () => place(['dissent', index, 'source'], 'value'))
    return { source, says }
  })
}

/** The conditions of one conjunction, with their names checked. */
export function linkConjunction(
  linking: Linking,
  { body, place }: Pick<DraftRule, 'place'> & { readonly body: Pick<AuthoredRule, 'id'> },
  authored: AuthoredConjunction,
  keys: Keys,
  asked: ReadonlySet<string>
): readonly Condition[] {
  const { report, observations } = linking
  return Object.entries(authored).flatMap(([observation, condition]) => {
    const spot = [...keys, observation]
    if (observation === 'rest') return []
    if (!observations.has(observation)) {
      unknownName(report, 'unknown-observation', place(spot), observation, observations.keys())
      return []
    }
    if (!asked.has(observation)) {
      report.add('rule-asks-unasked', place(spot), { rule: body.id, observation })
      return []
    }
    return linkCondition(linking, { body, place }, observation, condition, spot)
  })
}

function linkClaim(
  { report, verdicts, notes }: Linking,
  { body, place }: DraftRule,
  steps: Sayable
): Claim | Spoken | null {
  const claims = CLAIMS.filter(kind => body.then[kind] !== undefined)
  const kind = claims[0]
  if (kind === undefined || claims.length > 1) {
    const facts = { rule: body.id, count: claims.length, known: CLAIMS }
    report.add('rule-claims-not-one', place(['then']), facts)
    return null
  }
  if (kind === 'use-is' || kind === 'use-at-most' || kind === 'use-at-least') {
    const use = body.then[kind]
    return use === undefined ? null : { kind, use }
  }
  if (kind === 'nothing-about') {
    const track = body.then[kind]
    return track === undefined ? null : { kind, track }
  }
  if (kind === 'says' || kind === 'never-says') {
    const named = listed(body.then[kind])
    const names = new Set([...steps.here, ...notes])
    for (const [index, name] of named.entries()) {
      const spot = place(['then', kind, index], 'value')
      // What a piece forbids may be said by some other tree that takes it in.
      const elsewhere = kind === 'never-says' && inPiece(spot) && steps.anywhere.has(name)
      if (!names.has(name) && !elsewhere) unknownName(report, 'unknown-step', spot, name, names)
    }
    if (kind === 'says') return { says: named, never: [] }
    const never = named.filter(name => names.has(name))
    return never.length === 0 ? null : { says: [], never }
  }
  const name = body.then[kind] ?? ''
  const spot = place(['then', kind], 'value')
  if (kind === 'note') {
    if (!notes.has(name)) unknownName(report, 'unknown-note', spot, name, notes)
    return { kind, note: name }
  }
  if (!verdicts.has(name)) unknownName(report, 'unknown-verdict', spot, name, verdicts.keys())
  return { kind, verdict: name }
}

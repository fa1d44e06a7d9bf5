import { isSignValue } from '../tree/answers.ts'
import type { Group } from '../tree/group.ts'
import type { Observation } from '../tree/observation.ts'
import type { Condition } from '../tree/tree.ts'
import type { Keys } from './authored.ts'
import { rangeOf } from './build-observations.ts'
import { KIND_WORDS } from './kind-words.ts'
import type { DraftRule } from './link-rule.ts'
import { type Linking, unknownName } from './linking.ts'
import type { AuthoredCondition } from './schemas/rules.ts'

/** What a condition belongs to, by name: a rule, or what is told when asked again. */
type Asking = Pick<DraftRule, 'place'> & { readonly body: Pick<DraftRule['body'], 'id'> }
type Named = Pick<Linking, 'observations' | 'report'>

const RANGE_KEYS = ['at-least', 'over', 'under', 'at-most', 'straddles']
const WANTS = {
  choice: 'an answer, a list of answers, or `unsure`',
  signs: 'a sign, or a group of signs each with `yes`, `no` or `unsure`',
  measure: 'a range like `{ at-most: 4.2 }`, `{ straddles: 4.2 }`, or `unsure`'
}

/** What a rule asks of one observation, as literals of its conjunction. */
export function linkCondition(
  linking: Named,
  rule: Asking,
  id: string,
  authored: AuthoredCondition,
  keys: Keys
): readonly Condition[] {
  const observation = linking.observations.get(id)
  switch (observation?.kind) {
    case 'choice': {
      if (typeof authored === 'object' && !Array.isArray(authored)) break
      const among = typeof authored === 'string' ? [authored] : authored
      const names = [...observation.answers.map(answer => answer.id), 'unsure']
      checkNames(linking, rule, 'unknown-answer', among, names, keys)
      return [{ kind: 'choice', observation: id, among }]
    }
    case 'signs': {
      if (Array.isArray(authored)) break
      const names = observation.signs.map(sign => sign.id)
      const signs: Group = typeof authored === 'string' ? { [authored]: 'yes' } : authored
      checkNames(linking, rule, 'unknown-sign', Object.keys(signs), names, keys)
      return Object.entries(signs).map(([sign, values]) => ({
        kind: 'sign',
        observation: id,
        sign,
        among: [values].flat().filter(isSignValue)
      }))
    }
    case 'measure': {
      if (authored === 'unsure') return [{ kind: 'measure', observation: id, is: 'unsure' }]
      if (typeof authored === 'string' || Array.isArray(authored)) break
      const names = Object.keys(authored)
      if (names.length === 0 || names.some(name => !RANGE_KEYS.includes(name))) break
      if (authored.straddles === undefined) {
        return [{ kind: 'measure', observation: id, is: { within: rangeOf(authored) } }]
      }
      if (names.length > 1 || typeof authored.straddles !== 'number') break
      return [{ kind: 'measure', observation: id, is: { straddles: authored.straddles } }]
    }
  }
  return notForKind(linking, rule, observation, keys)
}

function checkNames(
  { report }: Named,
  { place }: Asking,
  code: 'unknown-answer' | 'unknown-sign',
  names: readonly string[],
  all: readonly string[],
  keys: Keys
): void {
  for (const name of names) {
    if (all.includes(name)) continue
    unknownName(report, code, place([...keys, name], 'value'), name, all)
  }
}

function notForKind(
  { report }: Named,
  { body, place }: Asking,
  observation: Observation | undefined,
  keys: Keys
): readonly Condition[] {
  if (!observation) return []
  const { id, kind } = observation
  const facts = { rule: body.id, observation: id, kind: KIND_WORDS[kind], wants: WANTS[kind] }
  report.add('condition-not-for-kind', place(keys), facts)
  return []
}

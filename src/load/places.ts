import type { Place, Places } from '../findings/place.ts'
import { groupOf } from '../tree/group.ts'
import type { Authored } from './authored.ts'
import type { DraftQuestion } from './expand.ts'
import type { LinkedTree } from './link-tree.ts'

/**
 * Where the parts of a tree stand: `questions/growth`, `questions/growth/dry-fuzzy`, the index of a
 * range, `branch/0` and `taste/0` under their question, `after/cover`, `rules/fuzz-is-mold`,
 * `notes/still-sweet`, `review/due`, `advice/likely-mold` where the tree says its own steps,
 * `observations/day`, `verdicts/likely-mold`, `deeds/steps/call-911`, `deeds/follow-ups/the-dog`.
 */
export function placesOf(
  { tree, draft, rules }: LinkedTree,
  authored: Authored,
  observations: Authored,
  verdicts: Authored,
  deeds: Places,
  apart?: Authored
): Places {
  const keysOf = (part: string) => Object.keys(groupOf(groupOf(authored.value)[part]))
  const own = [
    ...keysOf('review').map(
      key => [`review/${key}`, authored.place(['review', key], 'value')] as const
    ),
    ...keysOf('advice').map(id => [`advice/${id}`, authored.place(['advice', id])] as const),
    ...[...draft.questions.values()].flatMap(each => ofQuestion('questions', each)),
    ...draft.after.flatMap(each => ofQuestion('after', each)),
    ...rules.map(({ body, place }) => [`rules/${body.id}`, place(['id'], 'value')] as const),
    ...[...draft.notes.values()].map(({ id, place }) => [`notes/${id}`, place([])] as const),
    ...Object.keys(tree.observations).map(
      id => [`observations/${id}`, observations.place([id])] as const
    ),
    ...keysOf('open-cases').map(
      law => [`open-cases/${law}`, authored.place(['open-cases', law])] as const
    ),
    ...Object.keys(tree.unfoundFaults).map(
      fault =>
        [`unfound-faults/${fault}`, (apart ?? authored).place(['unfound-faults', fault])] as const
    ),
    ...tree.verdicts.map(
      ({ id, track }) => [`verdicts/${id}`, verdicts.place([track, id])] as const
    )
  ]
  return { ...Object.fromEntries(own), ...deeds }
}

/** Where it is said what steps and follow-ups do: the same places for every tree. */
export function placesOfDeeds(deeds: Authored): Places {
  return Object.fromEntries(
    ['steps', 'follow-ups'].flatMap(part =>
      Object.keys(groupOf(groupOf(deeds.value)[part])).map(
        id => [`deeds/${part}/${id}`, deeds.place([part, id])] as const
      )
    )
  )
}

function ofQuestion(
  under: string,
  { id, body, place }: DraftQuestion
): readonly (readonly [string, Place])[] {
  const spot = `${under}/${id}`
  const named = (key: 'answers' | 'signs') =>
    Object.keys(body[key] ?? {}).map(name => [`${spot}/${name}`, place([key, name])] as const)
  const numbered = (key: 'ranges' | 'branch' | 'taste', prefix: string) =>
    (body[key] ?? []).map((_, index) => [`${spot}/${prefix}${index}`, place([key, index])] as const)
  const alone = (['borderline', 'unsure'] as const).flatMap(key =>
    body[key] ? [[`${spot}/${key}`, place([key])] as const] : []
  )
  return [
    [spot, place([])],
    ...alone,
    ...named('answers'),
    ...named('signs'),
    ...numbered('ranges', ''),
    ...numbered('branch', 'branch/'),
    ...numbered('taste', 'taste/')
  ]
}

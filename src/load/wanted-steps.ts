import type { Place } from '../findings/place.ts'
import type { LinkedTree } from './link-tree.ts'
import type { AuthoredProject } from './project.ts'

/** Every step that some tree says, with the first place that says it. */
export function wantedSteps(
  project: AuthoredProject,
  linked: readonly LinkedTree[]
): ReadonlyMap<string, Place> {
  const said = [...linked.flatMap(each => stepsOf(each, project)), ...stepsOfAll(project)]
  const inPlace = said.flatMap(([step, place]) =>
    inPlaceOf(project, step).map(other => [other, place] as const)
  )
  return new Map([...said, ...inPlace].reverse())
}

/** What may be said in place of a step. */
function inPlaceOf({ steps }: AuthoredProject, step: string): readonly string[] {
  const { 'once-called': onceCalled = [], otherwise = [] } = steps?.value.steps[step] ?? {}
  return [...onceCalled, ...otherwise]
}

const LISTS = ['do-now', 'as-directed', 'not-yet', 'never', 'clean', 'keep', 'start-again'] as const

function stepsOf(
  { tree, draft }: LinkedTree,
  project: AuthoredProject
): (readonly [string, Place])[] {
  const own = project.trees.get(tree.id)
  const ofVerdicts = Object.entries(own?.value.advice ?? {}).flatMap(([id, steps]) =>
    LISTS.flatMap(list =>
      (steps[list] ?? []).flatMap((step, index) =>
        own ? [[step, own.doc.place(['advice', id, list, index])] as const] : []
      )
    )
  )
  const ofNotes = [...draft.notes.values()].flatMap(({ body, place }) =>
    (['adds', 'clean'] as const).flatMap(list =>
      (body[list] ?? []).map((step, index) => [step, place([list, index])] as const)
    )
  )
  return [...ofVerdicts, ...ofNotes]
}

function stepsOfAll({ verdicts }: AuthoredProject): (readonly [string, Place])[] {
  if (!verdicts) return []
  const { value, doc } = verdicts
  const ofVerdicts = (['person', 'container', 'batch'] as const).flatMap(track =>
    Object.entries(value[track]).flatMap(([id, { advice }]) =>
      LISTS.flatMap(list =>
        (advice[list] ?? []).map(
          (step, index) => [step, doc.place([track, id, 'advice', list, index])] as const
        )
      )
    )
  )
  const whileIll = (['adds', 'at-a-distance'] as const).flatMap(part =>
    (value['while-ill'][part] ?? []).map(
      (step, index) => [step, doc.place(['while-ill', part, index])] as const
    )
  )
  return [...ofVerdicts, ...whileIll]
}

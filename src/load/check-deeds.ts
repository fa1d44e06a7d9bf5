import type { Place } from '../findings/place.ts'
import type { LinkedTree } from './link-tree.ts'
import { unknownName } from './linking.ts'
import type { AuthoredProject } from './project.ts'
import type { FindingReport } from './report.ts'
import { wantedSteps } from './wanted-steps.ts'

const PARTS = ['steps', 'follow-ups', 'notes'] as const
type Part = (typeof PARTS)[number]

/** Reports steps of which nobody wrote what they do, and lines about what nobody says. */
export function checkDeeds(
  project: AuthoredProject,
  linked: readonly LinkedTree[],
  report: FindingReport
): void {
  const { steps, verdicts } = project
  if (!steps || !verdicts || linked.length === 0) return
  const { value, doc } = steps
  const said = wantedSteps(project, linked)
  for (const [step, place] of said) {
    if (!Object.hasOwn(value.steps, step)) report.add('deed-missing', place, { step })
  }
  const notes = new Set(linked.flatMap(({ draft }) => [...draft.notes.keys()]))
  const unused = (part: Part, what: string, names: { has(name: string): boolean }) => {
    for (const name of Object.keys(value[part] ?? {})) {
      if (!names.has(name)) report.add('deed-unused', doc.place([part, name]), { what, name })
    }
  }
  unused('steps', 'step', said)
  unused('notes', 'note', notes)
  unused('follow-ups', 'follow-up', new Set(Object.keys(project.followUps?.value ?? {})))
  const presumptions = Object.keys(value.presumptions ?? {})
  const observations = Object.keys(project.observations?.value ?? {})
  for (const [name, { 'ruled-out-by': all }] of Object.entries(value.presumptions ?? {})) {
    for (const [index, observation] of all.flatMap((each, index) =>
      Object.keys(each).map(id => [index, id] as const)
    )) {
      if (observations.includes(observation)) continue
      const place = doc.place(['presumptions', name, 'ruled-out-by', index, observation])
      unknownName(report, 'unknown-observation', place, observation, observations)
    }
  }
  for (const part of PARTS) {
    for (const [name, { presumes }] of Object.entries(value[part] ?? {})) {
      presumes?.forEach((presumed, index) => {
        if (presumptions.includes(presumed)) return
        const place: Place = doc.place([part, name, 'presumes', index], 'value')
        unknownName(report, 'unknown-presumption', place, presumed, presumptions)
      })
    }
  }
}

import type { Place } from '../findings/place.ts'
import { CAUTIONS } from '../tree/cautions.ts'
import { USES } from '../tree/tree.ts'
import type { Authored, Keys } from './authored.ts'
import type { Linked } from './link-tree.ts'
import type { Project } from './project.ts'
import type { AuthoredObservation } from './schemas/observations.ts'

/** The texts that a file of words must have, with the place of what each is for. */
export type Wanted = ReadonlyMap<string, Place>

/** What every file of words must have, by the file's stem. */
export function wantedTexts(
  project: Project,
  linked: readonly Linked[]
): ReadonlyMap<string, Wanted> {
  const wanted = new Map<string, Wanted>()
  const { observations, verdicts } = project
  if (observations) {
    const of = Object.entries(observations.value).flatMap(([id, observation]) =>
      ofObservation(id, observation, observations.doc)
    )
    wanted.set('observations', new Map(of))
  }
  if (verdicts) {
    const of = (['person', 'container', 'batch'] as const).flatMap(track =>
      Object.keys(verdicts.value[track]).flatMap(id =>
        ['name', 'message', 'why'].map(
          key => [`${id}.${key}`, verdicts.doc.place([track, id])] as const
        )
      )
    )
    wanted.set('verdicts', new Map(of))
  }
  wanted.set('notes', first(linked.flatMap(notesOf)))
  wanted.set(
    'steps',
    first([...linked.flatMap(each => stepsOf(each, project)), ...stepsOfAll(project)])
  )
  for (const { tree } of linked) {
    const place = project.trees.get(tree.id)?.doc.place(['id'], 'value')
    if (!place) continue
    const keys = [
      'title',
      'about',
      ...USES.map(use => `use.${use}`),
      ...CAUTIONS.map(caution => `cautions.${caution}`)
    ]
    wanted.set(tree.id, new Map(keys.map(key => [key, place])))
  }
  return wanted
}

function ofObservation(
  id: string,
  observation: AuthoredObservation,
  doc: Authored
): (readonly [string, Place])[] {
  const text = (key: string, keys: Keys): readonly [string, Place] => [
    `${id}.${key}`,
    doc.place([id, ...keys])
  ]
  const common = ['ask', 'how', 'why'].map(key => text(key, []))
  switch (observation.kind) {
    case 'choice':
      return [
        ...common,
        ...Object.keys(observation.answers).map(answer =>
          text(`answers.${answer}.label`, ['answers', answer])
        ),
        text('answers.unsure.label', [])
      ]
    case 'signs':
      return [
        ...common,
        ...Object.keys(observation.signs).map(sign => text(`signs.${sign}.label`, ['signs', sign])),
        text('none', []),
        text('unsure', [])
      ]
    case 'measure':
      return [
        ...common,
        ...Object.keys(observation.instruments ?? {}).map(instrument =>
          text(`instruments.${instrument}`, ['instruments', instrument])
        ),
        text('unit', []),
        text('unsure.label', [])
      ]
  }
}

const notesOf = ({ draft }: Linked): (readonly [string, Place])[] =>
  [...draft.notes.values()].map(({ id, place }) => [id, place([])] as const)

const LISTS = ['do-now', 'as-directed', 'not-yet', 'never', 'clean', 'keep', 'start-again'] as const

function stepsOf({ tree, draft }: Linked, project: Project): (readonly [string, Place])[] {
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

function stepsOfAll({ verdicts }: Project): (readonly [string, Place])[] {
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

/** The first place of each text. */
const first = (texts: readonly (readonly [string, Place])[]): Wanted =>
  new Map([...texts].reverse())

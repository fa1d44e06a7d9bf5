import type { Place } from '../findings/place.ts'
import { CAUTIONS } from '../tree/cautions.ts'
import { USES } from '../tree/tree.ts'
import type { Authored, Keys } from './authored.ts'
import type { LinkedTree } from './link-tree.ts'
import { picturesBy } from './pictures.ts'
import type { AuthoredProject } from './project.ts'
import type { AuthoredObservation } from './schemas/observations.ts'
import { wantedSteps } from './wanted-steps.ts'

/** The texts that a file of words must have, with the place of what each is for. */
export type Wanted = ReadonlyMap<string, Place>

/** What every file of words must have, by the file's stem. */
export function wantedTexts(
  project: AuthoredProject,
  linked: readonly LinkedTree[]
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
  wanted.set('steps', wantedSteps(project, linked))
  for (const [stem, texts] of ofCompanions(project)) wanted.set(stem, texts)
  for (const { tree } of linked) {
    const place = project.trees.get(tree.id)?.doc.place(['id'], 'value')
    if (!place) continue
    const keys = [
      'title',
      'about',
      'examples',
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

/** Drawn for every question, whatever its observation. */
const ALWAYS_DRAWN = ['mark-none', 'mark-unsure']

/** Pictures are described where anybody described one: small projects have drawings and no words for them. */
function* ofCompanions(project: AuthoredProject): Generator<[string, Wanted]> {
  const { observations, lookAlikes, followUps, knowHow, practice, trees } = project
  if (observations && project.words.get('en')?.has('pictures')) {
    const { value, doc } = observations
    const ofAnswers = Object.entries(picturesBy(value)).flatMap(([id, { own, answers }]) =>
      [...(own === null ? [] : [own]), ...Object.values(answers)].map(
        picture => [picture, doc.place([id])] as const
      )
    )
    const ofTrees = [...trees.values()].flatMap(({ value: { picture }, doc: tree }) =>
      picture === undefined ? [] : [[picture, tree.place(['picture'], 'value')] as const]
    )
    const ofPairs = Object.entries(lookAlikes?.value ?? {}).flatMap(([id, { one, other }]) =>
      [one.above, one.side, other.above, other.side].flatMap(picture =>
        picture !== undefined && lookAlikes ? [[picture, lookAlikes.doc.place([id])] as const] : []
      )
    )
    const named = [...ofPairs, ...ofTrees, ...ofAnswers]
    yield [
      'pictures',
      new Map(
        [...ALWAYS_DRAWN.map(picture => [picture, doc.place([])] as const), ...named].flatMap(
          ([picture, place]) => ['short', 'long'].map(key => [`${picture}.${key}`, place] as const)
        )
      )
    ]
  }
  if (lookAlikes) {
    const { value, doc } = lookAlikes
    const texts = Object.entries(value).flatMap(([id, { differs }]) =>
      [
        ...['title', 'one', 'other', 'same', 'sure'],
        ...differs.flatMap(feature => [
          `differences.${feature}.one`,
          `differences.${feature}.other`
        ])
      ].map(key => [`${id}.${key}`, doc.place([id])] as const)
    )
    yield ['look-alikes', new Map(texts)]
  }
  if (followUps) {
    const { value, doc } = followUps
    const texts = Object.keys(value).flatMap(id =>
      ['ask', 'answer'].map(key => [`${id}.${key}`, doc.place([id])] as const)
    )
    yield ['follow-ups', new Map(texts)]
  }
  if (knowHow.size > 0) {
    const texts = [...knowHow.values()].flatMap(({ value, doc }) =>
      Object.entries(value.answers).flatMap(([id, { pictures = [] }]) => [
        ...['ask', 'said', 'answer'].map(
          key => [`${id}.${key}`, doc.place(['answers', id])] as const
        ),
        ...pictures.map(
          (picture, index) =>
            [
              `${id}.pictures.${picture}`,
              doc.place(['answers', id, 'pictures', index], 'value')
            ] as const
        )
      ])
    )
    yield ['know-how', new Map(texts)]
  }
  if (practice.size > 0) {
    const texts = [...practice.values()].flatMap(({ value, doc }) =>
      Object.keys(value.callers).map(id => [id, doc.place(['callers', id])] as const)
    )
    yield ['practice', new Map(texts)]
  }
}

const notesOf = ({ draft }: LinkedTree): (readonly [string, Place])[] =>
  [...draft.notes.values()].map(({ id, place }) => [id, place([])] as const)

/** The first place of each text. */
const first = (texts: readonly (readonly [string, Place])[]): Wanted =>
  new Map([...texts].reverse())

import type { Observation, Range } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import type { Words } from '../words/words.ts'

/** A tree as `jarside list` shows it. */
export interface ListedTree {
  readonly id: string
  readonly edition: number
  readonly draft: boolean
  readonly observations: readonly ListedObservation[]
}

export type ListedObservation = Observation & {
  /** Asked after the outcome: it adds notes on what to change, nothing else. */
  readonly after: boolean
}

/** Gathers a tree's observations, in the order of the walk. */
export function listedTree(tree: Tree): ListedTree {
  const walked = new Set(Object.values(tree.questions).map(({ asks }) => asks))
  return {
    id: tree.id,
    edition: tree.edition,
    draft: tree.review.state === 'draft',
    observations: Object.values(tree.observations).map(observation => ({
      ...observation,
      after: !walked.has(observation.id) && tree.after.some(({ asks }) => asks === observation.id)
    }))
  }
}

/** A listed tree as lines to read. */
export function listText(tree: ListedTree, words: Words): string[] {
  const draft = tree.draft ? [words.t('ui:draft')] : []
  return [
    `${tree.id}: ${[words.t(`${tree.id}:title`), words.t('ui:edition', { edition: tree.edition }), ...draft].join(' · ')}`,
    ...tree.observations.flatMap(observationText),
    ''
  ]
}

function observationText(observation: ListedObservation): string[] {
  const { id, kind, about, after } = observation
  const settles = kind === 'choice' && observation.settles ? [`settles ${observation.settles}`] : []
  const head = [kind, `about the ${about}`, ...settles, ...(after ? ['after the outcome'] : [])]
  return [
    '',
    `  ${id} (${head.join(', ')})`,
    ...answerLines(observation).map(line => `    ${line}`)
  ]
}

function answerLines(observation: Observation): string[] {
  switch (observation.kind) {
    case 'choice':
      return [
        ...observation.answers.map(({ id, danger, usual, standsFor }) =>
          marked(id, {
            danger,
            usual,
            [`stands for ${standsFor}`]: standsFor !== undefined
          })
        ),
        'unsure'
      ]
    case 'signs':
      return observation.signs.map(({ id, danger, volunteered }) =>
        marked(id, { danger, 'told only': volunteered })
      )
    case 'measure':
      return [
        `${observation.unit} from ${observation.span.from} to ${observation.span.to}, or unsure`,
        ...(observation.usual ? [`usual: ${rangeText(observation.usual)}`] : []),
        ...observation.instruments.map(({ id, plusMinus }) => `@${id}  ±${plusMinus}`)
      ]
  }
}

function marked(id: string, marks: Readonly<Record<string, boolean>>): string {
  const names = Object.entries(marks).flatMap(([name, holds]) => (holds ? [name] : []))
  return names.length > 0 ? `${id}  (${names.join(', ')})` : id
}

function rangeText(range: Range): string {
  const words: readonly (readonly [string, number | undefined])[] = [
    ['at least', range.atLeast],
    ['over', range.over],
    ['under', range.under],
    ['at most', range.atMost]
  ]
  return words
    .flatMap(([word, limit]) => (limit === undefined ? [] : [`${word} ${limit}`]))
    .join(', ')
}

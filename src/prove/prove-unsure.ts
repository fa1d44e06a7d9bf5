import type { Finding } from '../findings/finding.ts'
import type { Places } from '../findings/place.ts'
import { isInterval } from '../tree/answers.ts'
import { level, useLevel } from '../tree/caution.ts'
import type { Lens } from '../tree/lens.ts'
import type { Track } from '../tree/observation.ts'
import { holdsAll } from '../tree/range.ts'
import type { Value, Variable } from '../tree/space.ts'
import type { Tree } from '../tree/tree.ts'
import type { TreeDiagrams } from '../tree/tree-diagrams.ts'
import { walk } from '../tree/walk.ts'
import { levelText } from './claim.ts'
import { everything } from './open.ts'
import { type Proved, standing } from './proved.ts'
import { levelIn } from './replay.ts'
import { completed, shortestTo, witnessOf } from './witness.ts'

/**
 * Not knowing never reassures: with all other answers equal, where some answer to an observation
 * withholds `as-directed` so does unsure (and so does a borderline measurement), and an unsure danger
 * sign waits, lowers the pressure on a container, or asks after the person.
 */
export function proveUnsure(made: TreeDiagrams, places: Places): readonly Proved[] {
  return [
    standing('not-knowing-never-reassures', 'law', withholding(made, places)),
    standing('an-unsure-danger-sign-is-not-gentle', 'law', dangers(made, places))
  ]
}

function withholding(made: TreeDiagrams, places: Places): readonly Finding[] {
  const { diagrams } = made
  const use = made.of('use')
  return made.variables.flatMap((variable, index) => {
    const each = variable.values.map((_, value) => diagrams.restrict(use, index, value))
    const most = each.reduce((a, b) => diagrams.join(a, b), diagrams.constant(0))
    return variable.values.flatMap((value, at) => {
      if (!countsAsUnsure(made.tree, variable, value)) return []
      const reassures = diagrams.combine([each[at] as number, most], ([here, some]) =>
        here === 0 && (some as number) > 0 ? 1 : 0
      )
      const answers = answersTo(made, reassures, level => level === 1, index, at)
      return answers === undefined
        ? []
        : [finding('unsure-reassures', made, variable, value, places, answers, {})]
    })
  })
}

/** A borderline measurement, which no range of some question holds, counts as unsure. */
function countsAsUnsure(tree: Tree, variable: Variable, { answer }: Value): boolean {
  if (answer === 'unsure') return true
  if (!isInterval(answer)) return false
  return Object.values(tree.questions).some(
    question =>
      question.kind === 'measure' &&
      question.asks === variable.observation &&
      !question.ranges.some(({ range }) => holdsAll(range, answer))
  )
}

function dangers(made: TreeDiagrams, places: Places): readonly Finding[] {
  const note = made.tree.advice.unsureNote.person
  return made.variables.flatMap((variable, index) => {
    const track = dangerTrack(made.tree, variable)
    if (track === null) return []
    const at = variable.values.findIndex(({ answer }) => answer === 'unsure')
    const wants: [Lens, number][] = {
      batch: [['batch', level(made.tree, 'batch', 'wait-and-recheck')]] as [Lens, number][],
      container: [
        ['batch', level(made.tree, 'batch', 'wait-and-recheck')],
        ['container', level(made.tree, 'container', 'pressure-caution')]
      ] as [Lens, number][],
      person: [['use', useLevel('not-yet')], ...(note === undefined ? [] : [[{ note }, 1]])] as [
        Lens,
        number
      ][]
    }[track]
    return wants.flatMap(([lens, wanted]) => {
      const restricted = made.diagrams.restrict(made.of(lens), index, at)
      const answers = answersTo(made, restricted, got => got < wanted, index, at)
      if (answers === undefined) return []
      const got = levelIn(made.tree, lens, walk(made.tree, answers).outcome)
      const facts = {
        wants: levelText(made.tree, lens, wanted),
        gets: levelText(made.tree, lens, got)
      }
      const code =
        typeof lens === 'object' ? 'unsure-person-note-missing' : 'unsure-danger-too-gentle'
      return [
        finding(code, made, variable, { label: 'unsure', answer: 'unsure' }, places, answers, facts)
      ]
    })
  })
}

/** The track of the danger that a coordinate can tell of, or null when it tells of none. */
function dangerTrack(tree: Tree, variable: Variable): Track | null {
  const observation = tree.observations[variable.observation]
  if (observation === undefined || observation.kind === 'measure') return null
  const danger =
    observation.kind === 'choice'
      ? observation.answers.some(answer => answer.danger)
      : observation.signs.some(sign => sign.id === variable.sign && sign.danger)
  return danger ? observation.about : null
}

function answersTo(
  made: TreeDiagrams,
  diagram: number,
  wanted: (level: number) => boolean,
  index: number,
  value: number
) {
  const open = everything(made)
  const choice = shortestTo(made, diagram, open, wanted)
  return choice && completed(made, new Map([...choice, [index, value]]), open)
}

function finding(
  code: Finding['code'],
  made: TreeDiagrams,
  variable: Variable,
  value: Value,
  places: Places,
  answers: Parameters<typeof witnessOf>[1],
  facts: Finding['facts']
): Finding {
  const asked = Object.values(made.tree.questions).find(q => q.asks === variable.observation)
  return {
    code,
    place: places[`questions/${asked?.id}`] ?? null,
    because: [],
    facts: {
      observation: variable.observation,
      sign: variable.sign ?? '',
      answer: value.label,
      ...facts
    },
    witness: witnessOf(made.tree, answers)
  }
}

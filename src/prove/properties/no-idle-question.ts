import type { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import { rank } from '../../tree/effective.ts'
import { effectsOf } from '../../tree/effects.ts'
import type { Lens } from '../../tree/lens.ts'
import { observationOf } from '../../tree/must.ts'
import type { ChoiceObservation } from '../../tree/observation.ts'
import type { Question } from '../../tree/tree.ts'
import { found } from '../found.ts'
import { lensesOf, notesOf, passing } from '../lenses.ts'
import { isReached } from '../one-unusual.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/**
 * Of every question some answer changes an outcome or a note, with all else that is told the same; of
 * one asked after the outcome, a note.
 */
export const noIdleQuestion: Property = {
  id: 'no-idle-question',
  kind: 'shape',
  needsWalks: true,
  prove(compiled, places) {
    const { questions, after } = compiled.tree
    const idle = ({ id, asks }: Question, path: string) => [
      found('idle-question', places[`${path}/${id}`], { question: id, observation: asks })
    ]
    return standing(this.id, this.kind, [
      ...Object.values(questions)
        // Of a question that nobody is ever asked another property speaks.
        .filter(({ id }) => isReached(compiled, id))
        .map(one => (matters(compiled, one) ? [] : idle(one, 'questions'))),
      ...after.map(one => (changesNotes(one) ? [] : idle(one, 'after')))
    ])
  }
}

function matters(compiled: TreeDiagrams, question: Question): boolean {
  const asked = compiled.tree.observations[question.asks]
  if (asked?.kind === 'choice' && asked.settles !== undefined) {
    return settles(compiled, question, asked, asked.settles)
  }
  const indexes = compiled.variables.flatMap(({ observation }, index) =>
    observation === question.asks ? [index] : []
  )
  return nearestFirst(compiled, question).some(lens =>
    indexes.some(index => mattersOn(compiled, question.id, lens, index))
  )
}

/** The notes of the question's own answers first: most questions show there that they matter. */
function nearestFirst(compiled: TreeDiagrams, question: Question): readonly Lens[] {
  const own = new Set(notesOf(question))
  const isOwn = (lens: Lens) => typeof lens === 'object' && own.has(lens.note)
  const all = lensesOf(compiled.tree)
  return [...all.filter(isOwn), ...all.filter(lens => !isOwn(lens))]
}

/** Whether another answer from the question on, to what went before the same, gives another level. */
function mattersOn(compiled: TreeDiagrams, question: string, lens: Lens, index: number): boolean {
  const onward = compiled.from(question, lens)
  return (compiled.variables[index]?.values ?? []).some((_, value) => {
    const diagram = compiled.diagrams.restrict(onward, index, value)
    return diagram !== onward && compiled.instead(lens, question, diagram) !== compiled.of(lens)
  })
}

/** Whether a second answer given at the question changes what came of the first. */
function settles(
  compiled: TreeDiagrams,
  question: Question,
  settler: ChoiceObservation,
  settled: string
): boolean {
  const { diagrams, variables } = compiled
  const first = observationOf(compiled.tree.observations, settled, 'choice')
  const index = compiled.indexOf(settled)
  if (index === undefined) return false
  const values = variables[index]?.values ?? []
  const asked = passing(compiled, question.id)
  const rankOf = (value: number) => rank(first, values[value]?.answer)
  return lensesOf(compiled.tree).some(lens =>
    values.some((_, other) =>
      settler.answers.some(({ standsFor = '' }) => {
        const second = values.findIndex(({ answer }) => answer === standsFor)
        if (second < 0 || rankOf(second) >= rankOf(other)) return false
        const [here, before, after] = [
          diagrams.restrict(asked, index, other),
          diagrams.restrict(compiled.of(lens), index, other),
          diagrams.restrict(compiled.of(lens), index, second)
        ]
        return (
          diagrams.combine([here, before, after], ([is, a, b]) => (is === 1 && a !== b ? 1 : 0)) !==
          0
        )
      })
    )
  )
}

function changesNotes(question: Question): boolean {
  // Signs add their notes beside each other; of any other kind one answer's notes count.
  if (question.kind === 'signs') return notesOf(question).length > 0
  const all = effectsOf(question).map(({ notes }) => [...notes].sort().join(' '))
  return new Set(all).size > 1
}

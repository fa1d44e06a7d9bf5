import type { Range } from '../../tree/observation.ts'
import type { Effect, Question, Tree } from '../../tree/tree.ts'

/** An answer to a question that adds a note wherever a walk comes to it. */
export interface NoteOccasion {
  readonly observation: string
  readonly answer:
    | { readonly kind: 'answer'; readonly answers: readonly string[] }
    | { readonly kind: 'sign'; readonly sign: string; readonly value: 'yes' | 'unsure' }
    | { readonly kind: 'any-sign'; readonly signs: readonly string[]; readonly orUnsure: boolean }
    | { readonly kind: 'range'; readonly range: Range }
    | { readonly kind: 'borderline' }
    | { readonly kind: 'no-sign' }
}

/** Every occasion of a note, in the order of the walk, each once. */
export function noteOccasions(tree: Tree, note: string): readonly NoteOccasion[] {
  const all = Object.values(tree.questions).flatMap(question => ofQuestion(question, note))
  return [...new Map(all.map(occasion => [JSON.stringify(occasion), occasion])).values()]
}

function ofQuestion(question: Question, note: string): readonly NoteOccasion[] {
  const adds = (effect: Effect) => effect.notes.includes(note)
  const observation = question.asks
  switch (question.kind) {
    case 'choice': {
      const answers = Object.entries(question.answers).flatMap(([answer, effect]) =>
        adds(effect) ? [answer] : []
      )
      return answers.length === 0 ? [] : [{ observation, answer: { kind: 'answer', answers } }]
    }
    case 'signs': {
      const ofSigns = Object.entries(question.signs).flatMap(([sign, effects]) =>
        (['yes', 'unsure'] as const).flatMap(value =>
          adds(effects[value]) ? [{ kind: 'sign' as const, sign, value }] : []
        )
      )
      const ofTurns = question.turns
        .filter(adds)
        .map(({ signs, orUnsure }) => ({ kind: 'any-sign' as const, signs, orUnsure }))
      const otherwise = adds(question.otherwise) ? [{ kind: 'no-sign' as const }] : []
      return [...ofSigns, ...ofTurns, ...otherwise].map(answer => ({ observation, answer }))
    }
    case 'measure': {
      const ofRanges = [...question.ranges, ...question.taste]
        .filter(adds)
        .map(({ range }) => ({ kind: 'range' as const, range }))
      const between = adds(question.borderline) ? [{ kind: 'borderline' as const }] : []
      const unsure = adds(question.unsure) ? [{ kind: 'answer' as const, answers: ['unsure'] }] : []
      return [...ofRanges, ...between, ...unsure].map(answer => ({ observation, answer }))
    }
  }
}

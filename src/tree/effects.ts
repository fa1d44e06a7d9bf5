import type { Effect, Question } from './tree.ts'

/** Every effect that some answer to a question can have. */
export function effectsOf(question: Question): readonly Effect[] {
  switch (question.kind) {
    case 'choice':
      return Object.values(question.answers)
    case 'signs':
      return [
        ...Object.values(question.signs).flatMap(({ yes, unsure }) => [yes, unsure]),
        ...question.turns,
        question.otherwise
      ]
    case 'measure':
      return [...question.ranges, ...question.taste, question.borderline, question.unsure]
  }
}

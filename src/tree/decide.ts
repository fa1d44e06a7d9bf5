import {
  type Answer,
  type Answers,
  measureOf,
  SIGN_VALUES,
  type SignValue,
  signsOf
} from './answers.ts'
import { lessFree } from './caution.ts'
import { type Effective, effectiveChoice } from './effective.ts'
import { observationOf } from './must.ts'
import type { ChoiceObservation } from './observation.ts'
import { holds, holdsAll } from './range.ts'
import type {
  Branch,
  ChoiceQuestion,
  Effect,
  MeasureQuestion,
  Question,
  SignsQuestion,
  Tree,
  Use
} from './tree.ts'

/** What a question makes of the answers: its effect and where it leads. */
export interface Decision {
  readonly branch: Branch
  /** Where a settling observation gave the answer that counted. */
  readonly settledBy?: string
}

/** Whether a question reads what was told and never stops to ask. */
export const isVolunteered = (question: Question): boolean =>
  question.kind !== 'choice' && question.volunteered === true

/** Decides one question by the answers, or undefined when what it asks is not yet told. */
export function decide(tree: Tree, question: Question, answers: Answers): Decision | undefined {
  switch (question.kind) {
    case 'choice':
      return decideChoice(tree, question, answers)
    case 'signs':
      return decideSigns(tree, question, answers)
    case 'measure':
      return decideMeasure(question, answers)
  }
}

function decideChoice(
  tree: Tree,
  question: ChoiceQuestion,
  answers: Answers
): Decision | undefined {
  const observation = observationOf(tree.observations, question.asks, 'choice')
  const effective = effectiveChoice(tree, observation, answers)
  if (effective === undefined) return undefined
  const branch = branchFor(observation, question, effective)
  return branch && { branch, ...pickSettled(effective) }
}

function branchFor(
  observation: ChoiceObservation,
  question: ChoiceQuestion,
  effective: Effective
): Branch | undefined {
  // A settled question is not reached by a settling answer that says something: only by `unsure`.
  const answer = observation.settles === undefined ? effective.answer : 'unsure'
  return Object.hasOwn(question.answers, answer) ? question.answers[answer] : undefined
}

function pickSettled({ settledBy }: Effective): { settledBy?: string } {
  return settledBy === undefined ? {} : { settledBy }
}

function decideSigns(tree: Tree, question: SignsQuestion, answers: Answers): Decision | undefined {
  const observation = observationOf(tree.observations, question.asks, 'signs')
  const signs = signsOf(answers, question.asks)
  const open = observation.signs.some(sign => !sign.volunteered && !Object.hasOwn(signs, sign.id))
  if (open && !question.volunteered) return undefined
  const says = (sign: string) => (Object.hasOwn(signs, sign) ? signs[sign] : 'no')
  const effects = Object.entries(question.signs).flatMap(([sign, effect]) => {
    const value = says(sign)
    return value === undefined || value === 'no' ? [] : [effect[value]]
  })
  const turn =
    question.turns.find(({ signs, orUnsure }) =>
      signs.some(sign => takesTurn(says(sign), orUnsure))
    ) ?? question.otherwise
  return { branch: { ...mergeEffects([...effects, turn]), leads: turn.leads } }
}

/** Whether a sign's value takes a turn. */
export function takesTurn(value: Answer | undefined, orUnsure: boolean): boolean {
  return value === 'yes' || (orUnsure && value === 'unsure')
}

/** Several effects at once: every raise, the least free use, every note. */
export function mergeEffects(effects: readonly Effect[]): Effect {
  return {
    raise: [...new Set(effects.flatMap(effect => effect.raise))],
    use: effects.reduce<Use>((use, effect) => lessFree(use, effect.use), 'as-directed'),
    notes: [...new Set(effects.flatMap(effect => effect.notes))]
  }
}

function decideMeasure(question: MeasureQuestion, answers: Answers): Decision | undefined {
  const reading = measureOf(answers, question.asks)
  if (reading === undefined && !question.volunteered) return undefined
  if (reading === undefined || reading === 'unsure') return { branch: question.unsure }
  const taste = question.taste.filter(({ range }) => holds(range, reading.reading))
  const branch =
    question.ranges.find(({ range }) => holdsAll(range, reading)) ?? question.borderline
  return { branch: { ...mergeEffects([...taste, branch]), leads: branch.leads } }
}

/** The more worrying of two values told of one sign. */
export function worseSign(a: SignValue, b: SignValue): SignValue {
  return SIGN_VALUES.indexOf(a) <= SIGN_VALUES.indexOf(b) ? a : b
}

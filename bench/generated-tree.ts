import type { Observation } from '../src/tree/observation.ts'
import { SAYS_NOTHING } from '../src/tree/says-nothing.ts'
import type { Branch, Question, Tree } from '../src/tree/tree.ts'
import { VERDICTS } from '../tests/helpers/verdicts.ts'
import { GENTLE_ENDS, type Leads, layersOf, namesOf, onward } from './generated-layout.ts'
import {
  askedAgain,
  gate,
  questionOf,
  SIGNS,
  signsQuestion,
  tailQuestion
} from './generated-questions.ts'
import { generatedRules } from './generated-rules.ts'
import { type Pick, picks } from './pick.ts'

/** How large a generated tree is, and whether it has the shape of a real one. */
export interface Size {
  readonly questions: number
  readonly observations: number
  readonly seed?: number
  /** No order between observations, every one read again anywhere. */
  readonly hostile?: boolean
}

/**
 * A tree in the shape of the shipped one: screens of signs first, each asked of everybody; then choices
 * and measures, spread over more and more questions; a twentieth of the questions are gates that read a
 * screen again, a twentieth ask again silently what the first choice was, and a twentieth are tails that
 * read the people's screen again and end. @throws RangeError when the questions cannot ask so much.
 */
export function generatedTree(size: Size): Tree {
  const pick = picks(size.seed ?? 1)
  const observations = observationsOf(size.observations)
  const questions = size.hostile
    ? hostile(size, observations, pick)
    : shaped(size, observations, pick)
  const tree: Tree = {
    id: 'generated',
    edition: 1,
    review: { state: 'draft', by: [], reviewed: null, due: '2027-11-01' },
    verdicts: VERDICTS,
    observations: Object.fromEntries(observations.map(one => [one.id, one])),
    start: 'q0',
    questions: Object.fromEntries(questions.map(question => [question.id, question])),
    ...SAYS_NOTHING
  }
  return { ...tree, rules: generatedRules(tree, pick) }
}

/** A fifth are screens of signs, at least three; of the rest two thirds choices, one third measures. */
function observationsOf(count: number): readonly Observation[] {
  const screens = Math.max(3, Math.round(count / 5))
  return Array.from({ length: count }, (_, index): Observation => {
    const id = `o${index}`
    if (index < screens) {
      const about = index === 0 ? 'person' : index === 1 ? 'container' : 'batch'
      const signs = Array.from({ length: SIGNS }, (_, sign) => ({
        id: `s${sign}`,
        danger: sign < 2,
        volunteered: index === 2 && sign === SIGNS - 1
      }))
      return { kind: 'signs', id, about, signs }
    }
    if (index % 3 === 2) {
      const instruments = index % 2 === 0 ? [] : [{ id: 'meter', plusMinus: 0.05 }]
      const span = { from: 0, to: 14 }
      const unit = instruments.length === 0 ? 'day' : 'ph'
      return { kind: 'measure', id, about: 'batch', unit, instruments, span, usual: { atMost: 4 } }
    }
    const answers = Array.from({ length: 4 + (index % 4) }, (_, answer) => ({
      id: `a${answer}`,
      danger: answer === 0,
      usual: answer >= 2
    }))
    return { kind: 'choice', id, about: 'batch', answers }
  })
}

function shaped({ questions }: Size, observations: readonly Observation[], pick: Pick): Question[] {
  const screens = observations.filter(({ kind }) => kind === 'signs')
  const body = observations.slice(screens.length)
  const some = Math.max(1, Math.floor(questions / 20))
  const layers = layersOf(body.length, questions - screens.length - 3 * some)
  const names = namesOf(screens.length, layers, some)
  const first = body.find(({ kind }) => kind === 'choice') as Observation
  const tail = (): Branch['leads'] => ({ to: pick.from(names.tails) })
  const questionList: Question[] = screens.map((screen, index) => {
    const next = names.all[index + 1] as string
    return signsQuestion(names.all[index] as string, screen, { to: next }, tail, pick)
  })
  for (const [depth, layer] of names.layers.entries()) {
    for (const [column, id] of layer.entries()) {
      let turn = 0
      const leads: Leads = () => onward(names, depth, column, turn++, pick, tail)
      questionList.push(questionOf(id, body[depth] as Observation, leads, tail, pick))
    }
  }
  for (const [index, id] of names.gates.entries()) {
    questionList.push(
      gate(id, screens[1] as Observation, { to: names.afterGate[index] as string }, tail)
    )
  }
  for (const [index, id] of names.again.entries()) {
    questionList.push(askedAgain(id, first, { to: names.afterAgain[index] as string }, tail))
  }
  for (const id of names.tails) questionList.push(tailQuestion(id, screens[0] as Observation))
  return questionList
}

/** Every question asks anything, and leads to any of the next twenty. */
function hostile(
  { questions }: Size,
  observations: readonly Observation[],
  pick: Pick
): Question[] {
  return Array.from({ length: questions }, (_, index) => {
    let turn = 0
    const leads: Leads = () =>
      index === questions - 1
        ? { end: pick.from(GENTLE_ENDS) }
        : { to: `q${Math.min(questions - 1, index + 1 + (turn++ === 0 ? 0 : pick.below(20)))}` }
    const observation = pick.from(observations)
    return observation.kind === 'signs'
      ? signsQuestion(`q${index}`, observation, leads(), leads, pick)
      : questionOf(`q${index}`, observation, leads, leads, pick)
  })
}

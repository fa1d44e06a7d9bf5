import { type AnyStateMachine, assign, createMachine } from 'xstate'
import { stepOf, type Walk } from '../evaluate/walk.ts'
import { type Answer, type Answers, measureOf, signsOf } from '../tree/answers.ts'
import { join, NOTHING_YET, type Outcome } from '../tree/caution.ts'
import { decide, takesTurn } from '../tree/decide.ts'
import { effectiveChoice } from '../tree/effective.ts'
import { EMERGENCY, emergenciesTold } from '../tree/emergency.ts'
import { must } from '../tree/must.ts'
import { holdsAll } from '../tree/range.ts'
import type { Branch, Question, Tree } from '../tree/tree.ts'

/** What the machine remembers: the answers, what the walk has raised on its way here, and by what. */
export interface Context {
  readonly answers: Answers
  readonly outcome: Outcome
  readonly trail: Walk['trail']
}

/** Tells an answer (a new one replaces the old; of signs only those named), takes one back, or tells all anew. */
export type AnswerEvent =
  | { readonly type: 'retell'; readonly answers: Answers }
  | { readonly type: 'observe'; readonly observation: string; readonly answer: Answer }
  | { readonly type: 'withdraw'; readonly observation: string }

/** What an action is given. */
interface Heard {
  readonly context: Context
  readonly event: AnswerEvent
}

type Guard = (args: { context: Context }) => boolean

/** The machine's name for the end that speaks a batch verdict. */
const endState = (verdict: string) => `end/${verdict}`
const EMERGENCY_STATE = 'end/emergency'
const ARRIVING = 'arriving'

const compiled = new WeakMap<Tree, AnyStateMachine>()

/** The machine of a tree, compiled once for all its walks. */
export function machineOf(tree: Tree): AnyStateMachine {
  let machine = compiled.get(tree)
  if (machine === undefined) {
    machine = compileMachine(tree)
    compiled.set(tree, machine)
  }
  return machine
}

/**
 * A tree as a state machine: a state for each question and each end, eventless transitions guarded by
 * the answers. Every telling starts again at the start, so that no history can leave a trace.
 */
export function compileMachine(tree: Tree): AnyStateMachine {
  const states = Object.fromEntries(
    Object.values(tree.questions).map(question => [question.id, stateOf(tree, question)])
  )
  const ends = endsOf(tree).map(verdict => [endState(verdict), {}])
  const hasEmergency: Guard = ({ context }) => emergenciesTold(tree, context.answers).length > 0
  const machine: AnyStateMachine = createMachine({
    id: tree.id,
    context: { answers: {}, outcome: NOTHING_YET, trail: [] },
    initial: ARRIVING,
    on: {
      observe: { target: `.${ARRIVING}`, actions: assign(observed) },
      retell: {
        target: `.${ARRIVING}`,
        actions: assign(({ event }: { event: AnswerEvent }) =>
          event.type === 'retell' ? { answers: event.answers } : {}
        )
      },
      withdraw: { target: `.${ARRIVING}`, actions: assign(withdrawn) }
    },
    states: {
      [ARRIVING]: {
        always: [
          {
            guard: hasEmergency,
            target: EMERGENCY_STATE,
            actions: assign(({ context }: { context: Context }) => emergency(tree, context.answers))
          },
          { target: tree.start, actions: assign({ outcome: NOTHING_YET, trail: [] }) }
        ]
      },
      ...states,
      ...Object.fromEntries(ends),
      [EMERGENCY_STATE]: {}
    }
  } as never)
  // The states are made at run time: their names are data, which the library's types cannot follow.
  return machine
}

function stateOf(tree: Tree, question: Question) {
  return {
    always: exitsOf(tree, question).map(({ guard, branch }) => ({
      guard,
      target: 'end' in branch.leads ? endState(branch.leads.end) : branch.leads.to,
      actions: assign(({ context }: { context: Context }) =>
        passed(tree, question, branch, context)
      )
    }))
  }
}

/** Joins what the question raises under these answers; its guard has already chosen the way. */
function passed(
  tree: Tree,
  question: Question,
  branch: Branch,
  { answers, outcome, trail }: Context
): Pick<Context, 'outcome' | 'trail'> {
  const decision = decide(tree, question, answers)
  const effect = decision?.branch ?? branch
  const end = 'end' in branch.leads ? branch.leads.end : undefined
  const raised = end === undefined ? effect.raise : [...effect.raise, end]
  return {
    outcome: join(tree, outcome, effect, end),
    trail: [...trail, stepOf(question, answers, raised, trail, decision?.settledBy)]
  }
}

/** The ways out of a question, in order, each with the answers that open it. */
function exitsOf(tree: Tree, question: Question): readonly { guard: Guard; branch: Branch }[] {
  switch (question.kind) {
    case 'choice':
      return Object.entries(question.answers).map(([answer, branch]) => ({
        branch,
        guard: ({ context }) => {
          const observation = tree.observations[question.asks]
          if (observation?.kind !== 'choice') return false
          const effective = effectiveChoice(tree, observation, context.answers)?.answer
          return observation.settles === undefined ? effective === answer : effective !== undefined
        }
      }))
    case 'signs': {
      const answered: Guard = ({ context }) => decide(tree, question, context.answers) !== undefined
      const turns = question.turns.map(branch => ({
        branch,
        guard: (args: { context: Context }) => {
          const signs = signsOf(args.context.answers, question.asks)
          return (
            answered(args) && branch.signs.some(sign => takesTurn(signs[sign], branch.orUnsure))
          )
        }
      }))
      return [...turns, { branch: question.otherwise, guard: answered }]
    }
    case 'measure': {
      const readingOf = ({ context }: { context: Context }) =>
        measureOf(context.answers, question.asks)
      return [
        {
          branch: question.unsure,
          // What is only heard and was not told is not waited for.
          guard: args => (readingOf(args) ?? (question.volunteered ? 'unsure' : null)) === 'unsure'
        },
        ...question.ranges.map(branch => ({
          branch,
          guard: (args: { context: Context }) => {
            const interval = readingOf(args)
            return typeof interval === 'object' && holdsAll(branch.range, interval)
          }
        })),
        { branch: question.borderline, guard: args => readingOf(args) !== undefined }
      ]
    }
  }
}

function observed({ context, event }: Heard): Partial<Context> {
  if (event.type !== 'observe') return {}
  const { observation, answer } = event
  const before = signsOf(context.answers, observation)
  const isSigns = typeof answer === 'object' && !('reading' in answer)
  return {
    answers: { ...context.answers, [observation]: isSigns ? { ...before, ...answer } : answer }
  }
}

function withdrawn({ context, event }: Heard): Partial<Context> {
  if (event.type !== 'withdraw') return {}
  const { observation } = event
  const { [observation]: _, ...rest } = context.answers
  return { answers: rest }
}

function emergency(tree: Tree, answers: Answers): Pick<Context, 'outcome' | 'trail'> {
  const emergencies = emergenciesTold(tree, answers)
  const joined = emergencies.reduce(
    (outcome, { effect }) => join(tree, outcome, effect),
    NOTHING_YET
  )
  const asked = [...new Set(emergencies.map(({ question }) => question))]
  return {
    outcome: { ...joined, container: null, batch: null },
    trail: asked.map(id => stepOf(must(tree.questions[id], 'question'), answers, [EMERGENCY], []))
  }
}

/** The walk as the machine's snapshot tells it: what is asked, or that the end is reached. */
export function walkOf(tree: Tree, snapshot: { value: unknown; context: Context }): Walk {
  const state = String(snapshot.value)
  const { outcome, trail } = snapshot.context
  const question = Object.hasOwn(tree.questions, state) ? tree.questions[state] : undefined
  return {
    finished: question === undefined,
    asks: question ? { question: question.id, observation: question.asks } : null,
    trail,
    outcome
  }
}

/** Every batch verdict that some way out of the tree ends with. */
function endsOf(tree: Tree): readonly string[] {
  const branches = Object.values(tree.questions).flatMap(question =>
    exitsOf(tree, question).map(({ branch }) => branch.leads)
  )
  return [...new Set(branches.flatMap(leads => ('end' in leads ? [leads.end] : [])))]
}

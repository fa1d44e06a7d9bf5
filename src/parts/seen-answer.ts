import { isDiscarded } from '../evaluate/advice.ts'
import type { Step } from '../evaluate/walk.ts'
import type { Report, WalkReport } from '../report/report.ts'
import { signsOf } from '../tree/answers.ts'
import { verdict, verdictsOf } from '../tree/caution.ts'
import { type LookAlike, lookAlikesFor } from '../tree/look-alikes.ts'
import { must, observationOf } from '../tree/must.ts'
import type { Track } from '../tree/observation.ts'
import type { ChoiceQuestion, Effect, Tree } from '../tree/tree.ts'
import { reasonFor } from '../words/reason.ts'
import type { Setting } from './setting.tsx'

/** An answer whose drawing stands beside a verdict. */
export interface SeenAnswer {
  /** The verdict that it stands beside. */
  readonly verdict: string
  readonly observation: string
  readonly answer: string
  /** The drawing's id. */
  readonly picture: string
  /** What it is mixed up with; null where no pair is authored. */
  readonly compare: Compared | null
  /** Nobody told it: a drawing of such jars in general. */
  readonly general: boolean
}

/** A pair of look-alikes with the side that was seen, and the drawing of the other one, seen the same way. */
export interface Compared {
  readonly pair: LookAlike
  readonly seen: 'one' | 'other'
  readonly picture: string
}

type Drawn = Pick<Setting, 'pictures' | 'lookAlikes'>
type Shown = Pick<SeenAnswer, 'observation' | 'answer' | 'picture'>

/** Drawings of a mark, of a way of looking and of what went in: no jar is seen in them. */
const NOT_SEEN = /^(mark|look|ingredient)-/

/**
 * Which answer is shown beside an outcome: the one that gives a jar's verdict its reason, else one that
 * brings the verdict, else the look that was told, where it is no gentler than what is said. Null where the
 * outcome is about a person alone, and where no such answer has a drawing.
 */
export function seenAnswer(report: Report | WalkReport, drawn: Drawn): SeenAnswer | null {
  const { tree, advice, outcome, emergency } = report
  if (advice === null || emergency) return null
  const said = [advice.verdict, ...advice.also].filter(id => id !== null)
  for (const id of said) {
    const { track } = verdict(tree, id)
    // Of a batch that nobody goes back to its verdict alone is said.
    if (track === 'person' || (track === 'batch' && advice.manner === 'leave-it')) continue
    const shown =
      'evaluation' in report
        ? toldOf(report, id, drawn)
        : said.length === 1
          ? inGeneral(tree, id, drawn)
          : null
    if (shown !== null) {
      const compare = comparedTo(shown, drawn.lookAlikes)
      return { verdict: id, ...shown, compare, general: !('evaluation' in report) }
    }
  }
  return null

  function toldOf({ evaluation }: WalkReport, id: string, drawn: Drawn): Shown | null {
    const { track } = verdict(tree, id)
    const reason = reasonFor(tree, id, advice?.notes ?? [])
    // Of two things told of one observation nobody knows which was seen.
    const doubted = new Set(evaluation.either.map(({ observation }) => observation))
    const steps = evaluation.walk.trail.filter(
      ({ observation, settledBy }) =>
        !doubted.has(observation) && !doubted.has(settledBy?.observation ?? '')
    )
    const brings = steps.filter(({ raised }) => raised.includes(id))
    const forReason = (effect: Effect) => reason !== null && effect.notes.includes(reason)
    return (
      firstShown(brings, step => shownOf(tree, step, drawn, id, forReason)) ??
      firstShown(brings, step => shownOf(tree, step, drawn, id)) ??
      firstShown(steps, step => worryingLook(tree, step, drawn, track)) ??
      // An ordinary look would contradict a verdict that throws out, and say little beside an ill person.
      (track === 'batch' &&
      !isDiscarded(tree, outcome) &&
      outcome.container === null &&
      outcome.person === null
        ? usualLook(tree, steps, drawn)
        : null)
    )
  }
}

function firstShown(steps: readonly Step[], of: (step: Step) => Shown | null): Shown | null {
  for (const step of steps) {
    const shown = of(step)
    if (shown !== null) return shown
  }
  return null
}

/** The answer of a step that brings a verdict, where it has a drawing; `fits`: only one whose effect fits. */
function shownOf(
  tree: Tree,
  step: Step,
  drawn: Drawn,
  id: string,
  fits: (effect: Effect) => boolean = () => true
): Shown | null {
  const question = must(tree.questions[step.question], `question ${step.question}`)
  if (question.kind === 'choice') {
    // It brings this verdict by what was told besides: alone it would contradict it.
    if (verdict(tree, id).ceiling === 'never' && isUsual(tree, step)) return null
    return fits(effectOfChoice(tree, question, step)) ? choiceShown(step, drawn) : null
  }
  if (question.kind !== 'signs') return null
  const signs = signsOf({ [step.observation]: step.answer ?? {} }, step.observation)
  for (const [sign, { yes }] of Object.entries(question.signs)) {
    if (signs[sign] === 'yes' && yes.raise.includes(id) && fits(yes)) {
      const shown = drawnOf(drawn, step.observation, sign)
      if (shown !== null) return shown
    }
  }
  return null
}

/** The answer that counted at a choice, its own or that of the observation which settled it. */
function choiceShown({ observation, answer, settledBy }: Step, drawn: Drawn): Shown | null {
  const counted = settledBy ?? { observation, answer }
  return typeof counted.answer === 'string'
    ? drawnOf(drawn, counted.observation, counted.answer)
    : null
}

/** What an answer to a choice does. */
function effectOfChoice(tree: Tree, { answers }: ChoiceQuestion, step: Step): Effect {
  const { observation, answer, settledBy } = step
  const settler = settledBy && tree.observations[settledBy.observation]
  const stands =
    settler?.kind === 'choice'
      ? settler.answers.find(({ id }) => id === settledBy?.answer)?.standsFor
      : undefined
  const id = stands ?? (typeof answer === 'string' ? answer : 'unsure')
  return must(answers[id] ?? answers.unsure, `answer ${id} to ${observation}`)
}

/** A look that brought some verdict of that track, though not the one that is said. */
function worryingLook(tree: Tree, step: Step, drawn: Drawn, track: Track): Shown | null {
  const worries = step.raised.some(id => verdict(tree, id).track === track)
  return worries && isLook(tree, step.observation, drawn) && !endsGently(tree, step)
    ? choiceShown(step, drawn)
    : null
}

/** The first look that was told, where it is an ordinary one. */
function usualLook(tree: Tree, steps: readonly Step[], drawn: Drawn): Shown | null {
  const first = steps.find(step => isLook(tree, step.observation, drawn))
  return first !== undefined && first.settledBy === undefined && isUsual(tree, first)
    ? choiceShown(first, drawn)
    : null
}

function isUsual(tree: Tree, { observation: id, answer }: Step): boolean {
  const { answers } = observationOf(tree.observations, id, 'choice')
  return answers.some(each => each.usual && each.id === answer)
}

const endsGently = (tree: Tree, { raised }: Step): boolean =>
  raised.every(id => verdict(tree, id).ceiling === 'as-directed')

/** Whether a step asks for a look at the batch: a choice at which callers mix things up. */
const isLook = (tree: Tree, id: string, { lookAlikes }: Drawn): boolean =>
  tree.observations[id]?.kind === 'choice' && lookAlikesFor(lookAlikes, id).length > 0

function drawnOf({ pictures }: Drawn, observation: string, answer: string): Shown | null {
  const picture = pictures[observation]?.answers[answer]
  return picture === undefined || NOT_SEEN.test(picture) ? null : { observation, answer, picture }
}

/**
 * What such jars look like where nobody told of one: of a verdict that names what was seen, or withholds
 * nothing, the first look that brings it; of the gentlest verdict the usual look. Any other has too many looks.
 */
function inGeneral(tree: Tree, id: string, drawn: Drawn): Shown | null {
  const { track, ceiling } = verdict(tree, id)
  if (!tree.advice.verdicts[id]?.tellsWhy && ceiling !== 'as-directed') return null
  const gentlest = verdictsOf(tree, track)[0] === id
  const asked = new Set<string>()
  for (const question of Object.values(tree.questions)) {
    // What is read again depends on what came between.
    if (question.kind !== 'choice' || asked.has(question.asks)) continue
    asked.add(question.asks)
    const observation = observationOf(tree.observations, question.asks, 'choice')
    if (observation.settles !== undefined || !isLook(tree, question.asks, drawn)) continue
    const looks = gentlest
      ? observation.answers.filter(({ usual }) => usual).reverse()
      : observation.answers.filter(each => question.answers[each.id]?.raise.includes(id))
    for (const { id: answer } of looks) {
      const shown = drawnOf(drawn, question.asks, answer)
      if (shown !== null) return shown
    }
  }
  return null
}

/** The pair of look-alikes that an answer's drawing belongs to, those of its own question first. */
function comparedTo({ observation, picture }: Shown, pairs: readonly LookAlike[]): Compared | null {
  const here = lookAlikesFor(pairs, observation)
  for (const pair of [...here, ...pairs.filter(each => !here.includes(each))]) {
    for (const seen of ['one', 'other'] as const) {
      const other = pair[seen === 'one' ? 'other' : 'one']
      if (pair[seen].above === picture) return { pair, seen, picture: other.above }
      if (pair[seen].side === picture) return { pair, seen, picture: other.side ?? other.above }
    }
  }
  return null
}

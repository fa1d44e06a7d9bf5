import { type Evaluation, evaluate } from '../evaluate/evaluate.ts'
import type { Walk } from '../evaluate/walk.ts'
import { withDerived } from '../machine/derived/derive.ts'
import { reportOn } from '../report/report.ts'
import type { Answers } from '../tree/answers.ts'
import { isAskedFromMemory } from '../tree/caution.ts'
import type { Observation } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import { alarmLines } from './alarm-lines.ts'
import { askAfter } from './ask-after.ts'
import { footText } from './call-text.ts'
import { changed, completed, type Sofar, type Talk, takenBack, told } from './conversation.ts'
import { outcomeText } from './outcome-text.ts'
import { PROMPTS } from './prompts.ts'
import { questionText } from './question-text.ts'
import { print } from './terminal.ts'
import { readTyped } from './typed-line.ts'

/** Asks a person one question at a time; gives the answers told, once the walk or the input has ended. */
export async function walkInteractively(tree: Tree, start: Answers, talk: Talk): Promise<Answers> {
  let sofar: Sofar | null = { answers: start, order: Object.keys(start) }
  let answers = start
  while (sofar) {
    answers = sofar.answers
    const evaluation = evaluate(tree, withDerived(tree, answers))
    sofar = evaluation.walk.asks
      ? await askOne(evaluation, sofar, talk)
      : await showOutcome(tree, sofar, talk)
  }
  print(talk.terminal, PROMPTS.stopped)
  return answers
}

/** One question, until it is answered or left; null to stop. */
async function askOne(evaluation: Evaluation, sofar: Sofar, talk: Talk): Promise<Sofar | null> {
  const { tree, walk: walked } = evaluation
  const { terminal, lines, making } = talk
  const observation = observationOf(tree, walked.asks?.observation ?? '')
  show(evaluation, observation, sofar, talk)
  for (;;) {
    const line = await lines.next()
    if (line === null) return null
    const typed = readTyped(line, observation, sofar.answers, making.words)
    if (typed.kind === 'unclear') {
      print(terminal, typed.say)
      continue
    }
    if (typed.kind !== 'move') {
      const answer = await completed(talk, typed, observation)
      return answer === null ? null : told(sofar, observation.id, answer)
    }
    const last = sofar.order.at(-1)
    if (typed.move === 'quit') return null
    if (typed.move === 'change') return changed(talk, tree.observations, sofar)
    if (typed.move === 'back' && last !== undefined) return takenBack(sofar, last)
    print(terminal, typed.move === 'why' ? whyText(tree, walked, observation, talk) : PROMPTS.first)
  }
}

function show(
  { tree, walk: walked, progress: counted, possible }: Evaluation,
  observation: Observation,
  { answers }: Sofar,
  { terminal, making }: Talk
): void {
  const { words, paint } = making
  const { question, atMostMore } = counted
  const progress = [
    words.t('ui:question', { number: question }),
    atMostMore > 0 ? words.t('ui:at-most-more', { count: atMostMore }) : PROMPTS.last,
    ...(tree.review.state === 'draft' ? [words.t('ui:draft')] : [])
  ]
  const partly = observation.kind === 'signs' && Object.hasOwn(answers, observation.id)
  print(
    terminal,
    '',
    paint.faint(progress.join(' · ')),
    ...alarmLines(tree, possible.atLeast, making),
    ...(partly ? [PROMPTS.others] : []),
    // A jar under pressure nobody handles, not even to answer.
    ...questionText(
      observation,
      answers,
      making,
      observation.about !== 'person' && isAskedFromMemory(tree, walked.outcome.container)
    ),
    '',
    words.t(`ui:prompts.${observation.kind}`),
    ...(observation.kind === 'signs' ? [PROMPTS.signs] : []),
    paint.faint(PROMPTS.moves),
    paint.faint(footText(making))
  )
}

function whyText(tree: Tree, { asks }: Walk, observation: Observation, { making }: Talk): string {
  const cited = (tree.questions[asks?.question ?? '']?.because ?? []).flatMap(id => {
    const source = making.sources[id]
    return source ? [`- ${source.title}`] : []
  })
  return [making.words.t(`observations:${observation.id}.why`), ...cited].join('\n')
}

/** The outcome, and what can be done after it; null to finish. */
async function showOutcome(tree: Tree, sofar: Sofar, talk: Talk): Promise<Sofar | null> {
  const { terminal, lines, making } = talk
  const report = reportOn(
    evaluate(tree, withDerived(tree, sofar.answers)),
    making.office,
    terminal.today
  )
  if (!report.advice) throw new Error(`the walk of ${tree.id} neither asks nor ends`)
  print(terminal, ...outcomeText(report, making))
  const offer = report.emergency ? PROMPTS.emergency : PROMPTS.finished
  print(terminal, '', making.paint.faint(offer))
  for (;;) {
    const line = (await lines.next())?.toLowerCase()
    if (line === undefined || line === 'q' || line === '') return null
    const last = sofar.order.at(-1)
    if (line === 'b' && last !== undefined) return takenBack(sofar, last)
    if (line === 'c') return changed(talk, tree.observations, sofar)
    if (line === 'a' && !report.emergency) {
      const more = await askAfter(tree, sofar, talk)
      if (!more) return null
      sofar = more
    }
    print(terminal, making.paint.faint(offer))
  }
}

function observationOf(tree: Tree, id: string): Observation {
  const observation = tree.observations[id]
  if (!observation) throw new Error(`${tree.id} asks ${id}, which it does not hold`)
  return observation
}

import { shownOrder } from '../../parts/choice-answers.tsx'
import { understoodText } from '../../parts/emergency.tsx'
import type { EmergencyTold } from '../../parts/emergency-told.ts'
import type { WalkInHand } from '../../parts/use-walk.ts'
import { signsOf } from '../../tree/answers.ts'
import { isLeft } from '../../tree/caution.ts'
import { isOnlyWorkedOut } from '../../tree/derived.ts'
import type { Observation } from '../../tree/observation.ts'
import { alarmsOf } from '../../words/alarms.ts'
import { askKey, howKey } from '../../words/ask-key.ts'
import type { Said, SaidVerdict, SectionId } from '../../words/say.ts'
import { digitByDigit } from '../../words/spoken-text.ts'
import type { TextKey } from '../../words/text-key.ts'
import { answerLabel } from '../../words/tree-texts.ts'
import type { Words } from '../../words/words.ts'

/** Of a walk what its questions show. */
export type AskedWalk = Pick<
  WalkInHand,
  'question' | 'walked' | 'answers' | 'recalled' | 'sweptWith' | 'listed' | 'evaluation'
>

/** Signs marked on the screen and not told yet: the buttons under them say something else then. */
export interface Marked {
  readonly some: boolean
  readonly seen: boolean
}

/** The choice of a ferment, as it is read: the question, then each name. */
export const chooseTexts = (trees: readonly { readonly id: string }[], words: Words) => [
  words.t('ui:choose'),
  words.t('ui:choose-how'),
  ...trees.map(({ id }) => words.t(`${id}:title`)),
  words.t('ui:something-else'),
  words.t('ui:something-else-how')
]

/** What stands in place of a ferment that was withdrawn. */
export const withdrawnTexts = (tree: string, words: Words) => [
  words.t('ui:withdrawn.heading'),
  words.t(`${tree}:title`),
  words.t('ui:withdrawn.say')
]

/** A question as it is read: what cannot wait, what is asked, how to look, and every answer in sight. */
export function questionTexts(walk: AskedWalk, words: Words, marked: Marked): readonly string[] {
  const { question, walked, recalled, evaluation } = walk
  if (question === null) return []
  const { tree } = evaluation
  const alarms = alarmsOf(tree, walked.outcome, words)
  const how = howKey(words, question, recalled)
  const isSaid = how === 'ui:hands-off' && isLeft(tree, walked.outcome.container)
  const swept = sweptTexts(walk, words)
  return [
    ...alarms.flatMap(({ signalWord, message, meanwhile }) => [signalWord, message, meanwhile]),
    words.t(askKey(words, question.id, recalled)),
    ...(isSaid ? [] : [words.t(how)]),
    ...(swept ?? answerTexts(question, words, marked))
  ].filter(text => text !== '')
}

/** One line over all signs of a screen, or of two; null where the signs are listed. */
function sweptTexts(walk: AskedWalk, words: Words): readonly string[] | null {
  const { question, answers, recalled, sweptWith, listed } = walk
  if (question?.kind !== 'signs' || listed) return null
  const line = (id: string): TextKey => `observations:${id}.sweep`
  if (!words.has(line(question.id)) || Object.keys(signsOf(answers, question.id)).length > 0) {
    return null
  }
  const along = !recalled && sweptWith !== null && words.has(line(sweptWith.id)) ? sweptWith : null
  return [
    words.t(line(question.id)),
    ...(along === null
      ? []
      : [
          words.t(`observations:${along.id}.ask`),
          words.t(`observations:${along.id}.how`),
          words.t(line(along.id))
        ]),
    words.t('ui:kiosk.answers'),
    words.t(along === null ? 'ui:sweep.no' : 'ui:sweep.no-to-both'),
    words.t('ui:sweep.yes'),
    words.t('ui:not-sure')
  ]
}

function answerTexts(
  question: Observation,
  words: Words,
  { some, seen }: Marked
): readonly string[] {
  const label = (answer: string) => answerLabel(words, question.id, answer)
  switch (question.kind) {
    case 'choice':
      return [words.t('ui:kiosk.answers'), ...[...shownOrder(question), 'unsure'].map(label)]
    case 'signs':
      return [
        ...question.signs.filter(({ volunteered }) => !volunteered).map(({ id }) => label(id)),
        words.t('ui:kiosk.answers'),
        some ? words.t('ui:that-is-all') : label('none'),
        seen ? words.t('ui:not-sure-of-the-rest') : label('unsure')
      ]
    case 'measure': {
      if (isOnlyWorkedOut(question)) return []
      const { id, unit, instruments } = question
      const named = instruments.map(one => words.t(`observations:${id}.instruments.${one.id}`))
      return [
        ...(named.length > 1
          ? [words.t('ui:prompts.instrument'), ...named, words.t('ui:prompts.instrument-unknown')]
          : []),
        words.t(`ui:prompts.number-${unit}`),
        words.t('ui:kiosk.answers'),
        words.t('ui:go-on'),
        label('unsure')
      ]
    }
  }
}

/** What of the sections stands in sight. */
const IN_SIGHT: readonly SectionId[] = ['who-must-not', 'medical-help', 'what-to-change']

/**
 * An outcome as it is read, in the order of the screen: signal and verdict, why, what may be drunk, all
 * steps, whom to call, who must not have any, and how far it is reviewed. What else is folded is left out.
 */
export function outcomeTexts(said: Said, words: Words): readonly string[] {
  const [first, ...others] = said.verdicts
  if (first === undefined) return []
  const steps = [...said.doNow, ...said.later].map((step, index) => `${index + 1}. ${step}`)
  const sections = IN_SIGHT.flatMap(id => said.sections.filter(section => section.id === id))
  return [
    ...verdictTexts(first),
    said.use,
    words.t('ui:do-now'),
    ...steps.slice(0, said.doNow.length),
    said.recheck,
    ...steps.slice(said.doNow.length),
    ...(said.calls.length > 0 ? [words.t('ui:who-to-call')] : []),
    ...said.calls.flatMap(({ name, phone, say }) => [callText(name, phone), say]),
    said.officeDoubt,
    ...others.flatMap(verdictTexts),
    ...sections.flatMap(({ title, lines, brief }) => [
      title,
      ...(brief === undefined ? lines : [brief])
    ]),
    said.standing.draft,
    said.standing.overdue
  ].filter(text => text !== null)
}

const verdictTexts = ({ signalWord, name, message, why }: SaidVerdict) =>
  [signalWord, name, message, why].filter(text => text !== null)

/** An emergency as it is read: its card, numbers and all, and nothing beside it. */
export function emergencyTexts(
  said: Said,
  understood: readonly EmergencyTold[],
  words: Words
): readonly string[] {
  const [verdict] = said.verdicts
  const [first, ...others] = said.calls
  if (verdict === undefined || first === undefined) return []
  const heading = verdict.message ?? verdict.name
  return [
    ...(understood.length > 0 ? [understoodText(words, understood)] : []),
    ...(verdict.signalWord === null ? [] : [verdict.signalWord]),
    heading,
    ...(first.phone === null ? [] : [digitByDigit(first.phone)]),
    ...said.doNow.filter(step => step !== heading).map((step, index) => `${index + 1}. ${step}`),
    ...others.map(({ name, phone }) => callText(name, phone))
  ]
}

/** A name and its number; a name that says the number already says it once. */
const callText = (name: string, phone: string | null): string =>
  phone === null || name.includes(phone) ? name : `${name}: ${digitByDigit(phone)}`

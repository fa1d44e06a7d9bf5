import { isLeft } from '../tree/caution.ts'
import { noneOf } from '../tree/tell.ts'
import { alarmsOf } from '../words/alarms.ts'
import { howKey } from '../words/ask-key.ts'
import { Alarms } from './alarms.tsx'
import { Answers } from './answers.tsx'
import { LookAlikesHere } from './look-alikes-here.tsx'
import { progressText } from './progress-text.ts'
import { QuestionFrame } from './question-frame.tsx'
import { SettingProvider, useSetting } from './setting.tsx'
import type { WalkInHand } from './use-walk.ts'

/** The question that a walk has come to, under whatever cannot wait for its end. */
export function QuestionInHand({
  walk,
  quiet,
  alarmed = true,
  left = isLeft(walk.evaluation.tree, walk.walked.outcome.container)
}: {
  walk: WalkInHand
  quiet: boolean
  /** Whether what cannot wait is said here; a place may say it before all else. */
  alarmed?: boolean
  /** Nobody goes back to the jar, and that is said already. */
  left?: boolean
}) {
  const setting = useSetting()
  const { tree, words, second } = setting
  const { question, walked, answers, changing, progress, recalled, sweptWith, listed } = walk
  if (question === null) return null
  const key = howKey(words, question, recalled)
  const how = key === 'ui:hands-off' && left ? null : key
  const alarms = (of: typeof words) => alarmsOf(tree, walked.outcome, of)
  return (
    <SettingProvider value={recalled ? { ...setting, fromMemory: true } : setting}>
      {alarmed && <Alarms alarms={alarms(words)} beside={second && alarms(second.words)} />}
      <QuestionFrame
        observation={question.id}
        question={questionOf(walk)}
        quiet={quiet}
        recalled={recalled}
        how={how}
        progress={changing ? words.t('ui:changing') : progressText(words.t, progress)}
      >
        <Answers
          observation={question}
          told={answers}
          together={{
            along: !recalled && words.has(`observations:${sweptWith?.id}.sweep`) ? sweptWith : null,
            listed,
            onNone: () => {
              const asked = [question, sweptWith].filter(each => each?.kind === 'signs')
              walk.answerTogether(asked.reduce(noneOf, {}))
            },
            onList: walk.listTogether
          }}
          onAnswer={answer => walk.answer(question.id, answer)}
          onInputs={inputs => walk.workOut(question.id, inputs)}
        />
        {!recalled && <LookAlikesHere observation={question.id} />}
      </QuestionFrame>
    </SettingProvider>
  )
}

/** The question of the tree that stands behind what is asked: the next one, or one asked before. */
function questionOf({ question, walked }: WalkInHand): string | null {
  if (question === null || walked.asks?.observation === question.id) {
    return walked.asks?.question ?? null
  }
  return walked.trail.find(({ observation }) => observation === question.id)?.question ?? null
}

import { answerLabel } from '../words/tree-texts.ts'
import { useSpeech } from './setting.tsx'
import { Both } from './text.tsx'

/** The label of an answer or sign, with the second language under it where everything has one. */
export function AnswerName({ observation, answer }: { observation: string; answer: string }) {
  const { words, second } = useSpeech()
  return (
    <Both
      text={answerLabel(words, observation, answer)}
      second={
        second?.shows === 'everything' ? answerLabel(second.words, observation, answer) : null
      }
    />
  )
}

import { Answers } from '../../parts/answers.tsx'
import { Picture } from '../../parts/picture.tsx'
import { QuestionFrame } from '../../parts/question-frame.tsx'
import type { Setting } from '../../parts/setting.tsx'
import { Strip } from '../../parts/strip.tsx'
import type { Answer, Interval } from '../../tree/answers.ts'
import type { Observation } from '../../tree/observation.ts'
import { measured } from '../../tree/reading.ts'
import { unsureOf } from '../../tree/tell.ts'
import { alone, type Sheet, type State, together } from './sheet.ts'

const nothing = () => undefined

/** Every kind of answer in its states, and the frame of a question. */
export function questionSheets(setting: Setting): readonly Sheet[] {
  const { drawings } = setting
  const answers = (name: string, observation: Observation, answer?: Answer): State => ({
    name,
    show: (
      <Answers
        observation={observation}
        told={answer === undefined ? {} : { [observation.id]: answer }}
        onAnswer={nothing}
        onInputs={nothing}
      />
    )
  })
  const of = (id: string) => observationOf(setting, id)
  const container = of('container-signs')
  return [
    ...together(
      ['choice-answers', 'answers', 'hint'],
      [
        answers('with pictures', of('surface-texture')),
        answers('with pictures and one told', of('spots-and-color'), 'even-tint'),
        answers('without pictures', of('starter-kind')),
        answers('not sure told', of('looked-before'), 'unsure'),
        { ...answers('drawings not here yet', of('side-light')), setting: { drawings: {} } }
      ]
    ),
    ...together(
      ['signs-answers', 'sweep'],
      [
        answers('one line over all signs', of('people-signs')),
        {
          ...answers('nothing marked', of('people-signs')),
          stage: specimen => specimen.querySelector<HTMLElement>('[data-answer="some"]')?.click()
        },
        answers('seen and not sure', of('jar-signs'), {
          'insects-inside': 'yes',
          'cleaner-got-in': 'unsure'
        }),
        answers(
          'not sure of all',
          container,
          container && unsureOf({}, container)['container-signs']
        ),
        answers('told without being asked', of('smell-and-liquid'), { 'still-sweet': 'yes' })
      ]
    ),
    ...alone(
      [
        ...['measure-answers', 'plain-answers', 'work-out', 'input-field'],
        ...['number-field', 'unit-select']
      ],
      measures(setting)
    ),
    ...together(
      ['strip'],
      [
        { name: 'narrow', show: <Strip wide={false} value={null} onPick={nothing} /> },
        {
          name: 'narrow with one pressed',
          show: <Strip wide={false} value={3.4} onPick={nothing} />
        },
        { name: 'wide with one pressed', show: <Strip wide={true} value={4} onPick={nothing} /> }
      ]
    ),
    ...alone(['question-frame', 'step-heading'], frames(setting)),
    ...together(
      ['picture'],
      [
        ...Object.keys(drawings).map(id => ({ name: id, show: <Picture id={id} /> })),
        { name: 'not here yet', show: <Picture id="jar-mouth" />, setting: { drawings: {} } }
      ]
    )
  ]
}

function measures(setting: Setting): readonly State[] {
  const measure = (name: string, id: string, reading?: Told, typed?: string): State => {
    const observation = observationOf(setting, id)
    const interval =
      reading && observation.kind === 'measure' ? measured(observation, ...reading) : undefined
    return {
      name,
      show: (
        <Answers
          observation={observation}
          told={interval === undefined ? {} : { [id]: interval satisfies Interval }}
          onAnswer={nothing}
          onInputs={nothing}
        />
      ),
      ...(typed !== undefined && { stage: specimen => typeAndSend(specimen, typed) })
    }
  }
  return [
    measure('acidity empty', 'jar-ph'),
    measure('acidity by meter', 'jar-ph', [3.4, 'meter']),
    measure('acidity by narrow strip', 'jar-ph', [3.7, 'narrow-strip']),
    measure('acidity by wide strip', 'jar-ph', [4, 'wide-strip']),
    measure('acidity out of span', 'jar-ph', undefined, '15'),
    measure('acidity in letters', 'jar-ph', undefined, 'sour'),
    measure('days empty', 'day'),
    measure('days not whole', 'day', undefined, '3.5'),
    measure('temperature empty', 'room-temperature'),
    measure('fresh mix, read or worked out', 'mix-acidity'),
    measure('acid so far, worked out alone', 'acid-progress')
  ]
}

type Told = readonly [reading: number, instrument: string]

/** Types into the field and sends it, as a hand would. */
function typeAndSend(specimen: HTMLElement, typed: string): void {
  const field = specimen.querySelector<HTMLInputElement>('.measure-field input[inputmode]')
  if (field === null) throw new Error('there is no field to type in')
  field.value = typed
  field.dispatchEvent(new Event('input', { bubbles: true }))
  // What was typed is drawn before it is sent.
  requestAnimationFrame(() => field.form?.requestSubmit())
}

function frames(setting: Setting): readonly State[] {
  const { tree } = setting
  const question = Object.values(tree.questions).find(({ asks }) => asks === 'looked-before')
  const frame = (name: string, stage?: State['stage']): State => ({
    name,
    show: (
      <QuestionFrame
        observation="looked-before"
        question={question?.id ?? null}
        progress={setting.words.t('ui:question', { number: 5 })}
        quiet={true}
      >
        <Answers
          observation={observationOf(setting, 'looked-before')}
          told={{}}
          onAnswer={nothing}
          onInputs={nothing}
        />
      </QuestionFrame>
    ),
    ...(stage && { stage })
  })
  return [
    frame('why closed'),
    frame('why open', specimen => specimen.querySelector('summary')?.click())
  ]
}

/** @throws Error when the tree asks no such thing: the gallery is to be changed with the tree. */
function observationOf({ tree }: Setting, id: string): Observation {
  const found = tree.observations[id]
  if (found === undefined) throw new Error(`${tree.id} asks no ${id}`)
  return found
}

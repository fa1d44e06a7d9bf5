import { useEffect, useRef, useState } from 'preact/hooks'
import type { Signs, SignValue } from '../tree/answers.ts'
import type { SignsObservation } from '../tree/observation.ts'
import type { TextKey } from '../words/text-key.ts'
import { answerLabel } from '../words/tree-texts.ts'
import { AnswerName } from './answer-name.tsx'
import { HintButton, HintText, useAnswerHint } from './hint.tsx'
import { KEY_NONE, KEY_UNSURE, Key, KeyedAnswer, keyOf } from './key.tsx'
import { useSetting } from './setting.tsx'
import { Sweep } from './sweep.tsx'
import { Text } from './text.tsx'

/** Signs asked under one answer with those of another screen, and how both are answered. */
export interface Together {
  /** The other screen of signs; null where there is none. */
  readonly along: SignsObservation | null
  /** One line over these signs was answered with more than a no. */
  readonly listed: boolean
  onNone(): void
  onList(): void
}

/**
 * A screen of independent signs: mark each that fits, or is unsure, then rule the others out or leave them
 * unsure. Where one line sweeps over all of them it is asked first, and the list opens on yes or not sure.
 */
export function SignsAnswers({
  observation,
  told,
  together,
  onAnswer
}: {
  observation: SignsObservation
  told: Signs
  together?: Together | undefined
  onAnswer: (signs: Signs) => void
}) {
  const { words } = useSetting()
  const [marked, setMarked] = useState<Signs>(() => marksOf(told))
  // What is told elsewhere while this screen stands (in the desk's field) is marked here too: "none of
  // these" must never rule out what was told.
  const marks = useRef(marksOf(told))
  useEffect(() => {
    const [before, now] = [marks.current, marksOf(told)]
    marks.current = now
    setMarked(marks => followed(marks, before, now))
  }, [JSON.stringify(told)])
  const asked = observation.signs
  const mark = (sign: string, value: SignValue | null) =>
    setMarked(before => {
      const { [sign]: _, ...rest } = before
      return value === null ? rest : { ...rest, [sign]: value }
    })
  const rest = (value: SignValue) => {
    // A volunteered sign that was not marked stays untold: nobody was asked for it.
    const open = asked.filter(({ id, volunteered }) => !volunteered && !Object.hasOwn(marked, id))
    onAnswer({ ...marked, ...Object.fromEntries(open.map(({ id }) => [id, value])) })
  }
  const sweep: TextKey = `observations:${observation.id}.sweep`
  const [opened, setOpened] = useState(false)
  const open = opened || together?.listed === true
  const list = useRef<HTMLUListElement>(null)
  // The list takes the focus that the button had which opened it.
  useEffect(() => {
    if (opened) list.current?.querySelector('input')?.focus()
  }, [opened])
  if (words.has(sweep) && !open && Object.keys(told).length === 0) {
    const along = together?.along ?? null
    return (
      <Sweep
        observation={observation.id}
        along={along?.id ?? null}
        onNone={() => (along === null ? rest('no') : together?.onNone())}
        onOpen={() => {
          setOpened(true)
          together?.onList()
        }}
      />
    )
  }
  const some = Object.keys(marked).length > 0
  const seen = Object.values(marked).includes('yes')
  // Heard when told, never asked: they stand folded away.
  const noticed = asked.filter(({ volunteered }) => volunteered)
  const inSight = asked.filter(({ volunteered }) => !volunteered)
  const row = ({ id }: { readonly id: string }) => (
    <SignRow
      key={id}
      shortcut={keyOf([...inSight, ...noticed].findIndex(sign => sign.id === id))}
      observation={observation.id}
      sign={id}
      value={marked[id]}
      onMark={value => mark(id, value)}
    />
  )
  return (
    <div class="signs">
      <ul class="signs-list" ref={list}>
        {inSight.map(row)}
      </ul>
      {noticed.length > 0 && (
        <details class="signs-noticed" open={noticed.some(({ id }) => Object.hasOwn(told, id))}>
          <summary>{words.t('ui:also-noticed')}</summary>
          <ul class="signs-list">{noticed.map(row)}</ul>
        </details>
      )}
      <div class="actions">
        <KeyedAnswer look="primary" answer="none" shortcut={KEY_NONE} onPress={() => rest('no')}>
          <Text k={some ? 'ui:that-is-all' : `observations:${observation.id}.none`} />
        </KeyedAnswer>
        <KeyedAnswer
          look="secondary"
          answer="unsure"
          shortcut={KEY_UNSURE}
          onPress={() => rest('unsure')}
        >
          <Text k={seen ? 'ui:not-sure-of-the-rest' : `observations:${observation.id}.unsure`} />
        </KeyedAnswer>
      </div>
    </div>
  )
}

const marksOf = (signs: Signs): Signs =>
  Object.fromEntries(Object.entries(signs).filter(([, value]) => value !== 'no'))

/** The marks with what was newly told, and without what was taken back. */
function followed(marks: Signs, before: Signs, now: Signs): Signs {
  const kept = Object.entries(marks).filter(
    ([sign]) => !Object.hasOwn(before, sign) || Object.hasOwn(now, sign)
  )
  const changes = Object.entries(now).filter(([sign, value]) => before[sign] !== value)
  return Object.fromEntries([...kept, ...changes])
}

function SignRow({
  observation,
  sign,
  shortcut,
  value,
  onMark
}: {
  observation: string
  sign: string
  shortcut: string | undefined
  value: SignValue | undefined
  onMark: (value: SignValue | null) => void
}) {
  const { words } = useSetting()
  const label = answerLabel(words, observation, sign)
  const hint = useAnswerHint(observation, sign)
  const id = `${observation}-${sign}`
  return (
    <li class="sign" data-value={value}>
      <input
        type="checkbox"
        id={id}
        data-sign={sign}
        data-key={shortcut}
        checked={value === 'yes'}
        aria-describedby={hint.id}
        onChange={event => onMark(event.currentTarget.checked ? 'yes' : null)}
      />
      <label class="sign-label" for={id}>
        <span class="sign-name">
          <Key of={shortcut} />
          <AnswerName observation={observation} answer={sign} />
        </span>
        <HintText hint={hint} look="sign-hint" />
      </label>
      <HintButton about={label} hint={hint} />
      <label class="sign-unsure">
        <input
          type="checkbox"
          aria-label={`${words.t('ui:not-sure')}: ${label}`}
          checked={value === 'unsure'}
          onChange={event => onMark(event.currentTarget.checked ? 'unsure' : null)}
        />
        <span aria-hidden="true">{words.t('ui:not-sure')}</span>
      </label>
    </li>
  )
}

import { useEffect, useRef, useState } from 'preact/hooks'
import {
  type ContactFacts,
  type ContactMethod,
  LOGGED_REFERRALS,
  type LogEntry,
  type LoggedReferral,
  METHODS,
  OTHER_TOPICS,
  type OtherTopic,
  type WhatWasTold
} from '../../contacts/contact.ts'
import { newContact } from '../../contacts/stamped.ts'
import { NOTHING_TOLD, REFERRED } from '../../contacts/what-to-record.ts'
import {
  AreaField,
  LanguageField,
  LogBox,
  LogNumber,
  LogSelect,
  wholeNumber
} from '../../parts/log-fields.tsx'
import { useSetting } from '../../parts/setting.tsx'
import type { CallToRecord } from './record-panel.tsx'

/** A call to a tree stands for this in the list of topics. */
const THIS_TREE = 'this-tree'
const NOBODY = 'none'
/** What a desk does in a call of its own; an event is recorded by its head count, in the log. */
const DESK_METHODS = METHODS.filter(method => method !== 'event')

/** The record of one call, filled in from the call as far as it is known. */
export function RecordForm({
  call,
  volunteer,
  onVolunteer,
  onRecord
}: {
  call: CallToRecord
  volunteer: string
  onVolunteer: (typed: string) => void
  onRecord: (entry: LogEntry) => void
}) {
  const { words, tree } = useSetting()
  const [topic, setTopic] = useState<OtherTopic | typeof THIS_TREE>(THIS_TREE)
  const [method, setMethod] = useState<ContactMethod>('phone')
  const [minutes, setMinutes] = useState(() => String(call.minutes()))
  const [area, setArea] = useState<string | null>(call.counties[0]?.code ?? null)
  const [language, setLanguage] = useState(call.language)
  const [referral, setReferral] = useState<LoggedReferral | null>(call.told.referral)
  const [sheet, setSheet] = useState(false)
  const [pending, setPending] = useState(false)
  const [review, setReview] = useState(false)
  const [indirect, setIndirect] = useState(false)
  const [sentOn, setSentOn] = useState(false)
  const form = useRef<HTMLFormElement>(null)
  useEffect(() => {
    // Where an outcome was told all is filled in; else the first thing to say is what it was about.
    const first = call.decided ? '[type="submit"]' : 'select'
    form.current?.querySelector<HTMLElement>(first)?.focus()
  }, [])
  const isTree = topic === THIS_TREE
  const referred = isTree ? call.told.referred : sentOn
  const standing = (): WhatWasTold => {
    if (referred) return REFERRED
    const { batch, container } = isTree ? call.told : NOTHING_TOLD
    return { referred: false, batch, container, sheet, referral }
  }
  const facts = (): ContactFacts => {
    const common = {
      date: call.today,
      volunteer: wholeNumber(volunteer, 1, 9999),
      ...standing(),
      method,
      direct: !indirect,
      count: 1,
      minutes: wholeNumber(minutes, 0, 1440) ?? call.minutes(),
      language,
      area,
      knowHow: null,
      state: pending ? 'pending' : 'resolved',
      review
    } as const
    return isTree
      ? { ...common, ...call.subject }
      : {
          ...common,
          batch: null,
          container: null,
          tree: null,
          edition: null,
          fingerprint: null,
          topic
        }
  }
  const key = (id: OtherTopic | ContactMethod | LoggedReferral) => words.t(`ui:contacts.keys.${id}`)
  if (call.practice) return <p class="notice">{words.t('ui:contacts.record.practice')}</p>
  return (
    <form
      class="record-form"
      ref={form}
      onSubmit={event => {
        event.preventDefault()
        const entry = newContact(facts(), call.practice)
        if (entry !== null) onRecord(entry)
      }}
      onKeyDown={event => {
        // On the card of an emergency this key takes the answer back.
        if (event.key === 'Backspace') event.stopPropagation()
        if (event.key !== 'Enter' || !(event.target instanceof HTMLSelectElement)) return
        event.preventDefault()
        form.current?.requestSubmit()
      }}
    >
      <LogSelect
        label={words.t('ui:contacts.record.topic')}
        name="topic"
        value={topic}
        options={[
          {
            id: THIS_TREE,
            text: words.t('ui:contacts.record.about-tree', { tree: words.t(`${tree.id}:title`) })
          },
          ...OTHER_TOPICS.map(id => ({ id, text: key(id) }))
        ]}
        onChange={setTopic}
      />
      <LogSelect
        label={words.t('ui:contacts.record.method')}
        name="method"
        value={method}
        options={DESK_METHODS.map(id => ({ id, text: key(id) }))}
        onChange={setMethod}
      />
      <LogNumber
        label={words.t('ui:contacts.record.minutes')}
        name="minutes"
        value={minutes}
        from={0}
        to={1440}
        required
        onChange={setMinutes}
      />
      <AreaField counties={call.counties} area={area} onChange={setArea} />
      <LanguageField language={language} onChange={setLanguage} />
      {!referred && (
        <LogSelect
          label={words.t('ui:contacts.record.referral')}
          name="referral"
          value={referral ?? NOBODY}
          options={[
            { id: NOBODY, text: words.t('ui:contacts.keys.none') },
            ...LOGGED_REFERRALS.map(id => ({ id, text: key(id) }))
          ]}
          onChange={id => setReferral(id === NOBODY ? null : id)}
        />
      )}
      <LogNumber
        label={words.t('ui:contacts.record.volunteer')}
        name="volunteer"
        value={volunteer}
        from={1}
        to={9999}
        onChange={onVolunteer}
      />
      <div class="record-boxes">
        {!referred && (
          <LogBox
            label={words.t('ui:contacts.record.sheet')}
            name="sheet"
            checked={sheet}
            onChange={setSheet}
          />
        )}
        <LogBox
          label={words.t('ui:contacts.record.pending')}
          name="pending"
          checked={pending}
          onChange={setPending}
        />
        <LogBox
          label={words.t('ui:contacts.record.review')}
          name="review"
          checked={review}
          onChange={setReview}
        />
        <LogBox
          label={words.t('ui:contacts.record.indirect')}
          name="indirect"
          checked={indirect}
          onChange={setIndirect}
        />
        {!isTree && (
          <LogBox
            label={words.t('ui:contacts.record.referred')}
            name="referred"
            checked={sentOn}
            onChange={setSentOn}
          />
        )}
      </div>
      <div class="record-save">
        <button type="submit" class="primary" data-action="record">
          {words.t('ui:contacts.record.save')}
        </button>
        <p>{words.t('ui:contacts.record.only-codes')}</p>
      </div>
    </form>
  )
}

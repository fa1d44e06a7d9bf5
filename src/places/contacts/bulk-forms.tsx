import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'
import { type LogEntry, OTHER_TOPICS, type OtherTopic } from '../../contacts/contact.ts'
import { newContact, newHours } from '../../contacts/stamped.ts'
import { LogField, LogNumber, LogSelect, wholeNumber } from '../../parts/log-fields.tsx'
import { useSpeech } from '../../parts/setting.tsx'

type Save = (entry: LogEntry | null) => Promise<boolean>

/** All who came to an event, as one record with a head count. */
export function EventForm({
  today,
  area,
  onSave
}: {
  today: string
  area: string | null
  onSave: Save
}) {
  const { words } = useSpeech()
  const [topic, setTopic] = useState<OtherTopic>('other-topic')
  const [on, setOn] = useState(today)
  const [heads, setHeads] = useState('')
  const [minutes, setMinutes] = useState('')
  const [said, setSaid] = useState('')
  const save = async () => {
    const count = wholeNumber(heads, 1, 100_000)
    const length = wholeNumber(minutes, 0, 1440)
    if (count === null || length === null) return
    const event = newContact(
      {
        date: on,
        volunteer: null,
        tree: null,
        edition: null,
        fingerprint: null,
        topic,
        referred: false,
        batch: null,
        container: null,
        sheet: false,
        referral: null,
        method: 'event',
        direct: true,
        count,
        minutes: length,
        language: words.tag,
        area,
        knowHow: null,
        state: 'resolved',
        review: false
      },
      false
    )
    if (!(await onSave(event))) return
    setSaid(words.t('ui:contacts.event.saved', { count }))
    setHeads('')
    setMinutes('')
  }
  return (
    <BulkForm
      look="event-form"
      title={words.t('ui:contacts.event.title')}
      save={words.t('ui:contacts.event.save')}
      said={said}
      onSave={save}
    >
      <DayField label={words.t('ui:contacts.event.on')} today={today} on={on} onDay={setOn} />
      <LogNumber
        label={words.t('ui:contacts.event.heads')}
        name="heads"
        value={heads}
        from={1}
        to={100_000}
        required
        onChange={setHeads}
      />
      <LogNumber
        label={words.t('ui:contacts.event.minutes')}
        name="event-minutes"
        value={minutes}
        from={0}
        to={1440}
        required
        onChange={setMinutes}
      />
      <LogSelect
        label={words.t('ui:contacts.event.topic')}
        name="event-topic"
        value={topic}
        options={OTHER_TOPICS.map(id => ({ id, text: words.t(`ui:contacts.keys.${id}`) }))}
        onChange={setTopic}
      />
    </BulkForm>
  )
}

/** The time that a volunteer gave on a day, by the volunteer's number. */
export function HoursForm({ today, onSave }: { today: string; onSave: Save }) {
  const { words } = useSpeech()
  const [on, setOn] = useState(today)
  const [code, setCode] = useState('')
  const [hours, setHours] = useState('')
  const [said, setSaid] = useState('')
  const save = async () => {
    const volunteer = wholeNumber(code, 1, 9999)
    const minutes = Math.round(Number(hours) * 60)
    if (volunteer === null || !(minutes >= 1 && minutes <= 1440)) return
    if (!(await onSave(newHours({ date: on, volunteer, minutes, state: 'resolved' })))) return
    setSaid(words.t('ui:contacts.hours.saved'))
    setHours('')
  }
  return (
    <BulkForm
      look="hours-form"
      title={words.t('ui:contacts.hours.title')}
      save={words.t('ui:contacts.hours.save')}
      said={said}
      onSave={save}
    >
      <DayField label={words.t('ui:contacts.hours.on')} today={today} on={on} onDay={setOn} />
      <LogNumber
        label={words.t('ui:contacts.hours.code')}
        name="code"
        value={code}
        from={1}
        to={9999}
        required
        onChange={setCode}
      />
      <LogField label={words.t('ui:contacts.hours.time')}>
        <input
          name="hours"
          type="number"
          min={0.25}
          max={24}
          step={0.25}
          required
          value={hours}
          onInput={event => setHours(event.currentTarget.value)}
        />
      </LogField>
    </BulkForm>
  )
}

function DayField({
  label,
  today,
  on,
  onDay
}: {
  label: string
  today: string
  on: string
  onDay: (day: string) => void
}) {
  return (
    <LogField label={label}>
      <input
        type="date"
        max={today}
        required
        value={on}
        onInput={event => onDay(event.currentTarget.value)}
      />
    </LogField>
  )
}

function BulkForm({
  look,
  title,
  save,
  said,
  onSave,
  children
}: {
  look: string
  title: string
  save: string
  said: string
  onSave: () => void
  children: ComponentChildren
}) {
  return (
    <form
      class={`bulk-form ${look}`}
      onSubmit={event => {
        event.preventDefault()
        onSave()
      }}
    >
      <h2>{title}</h2>
      <div class="record-form">{children}</div>
      <div class="record-save">
        <button type="submit" class="secondary">
          {save}
        </button>
        <p role="status">{said}</p>
      </div>
    </form>
  )
}

import { useEffect, useRef, useState } from 'preact/hooks'
import type { LogEntry, Subject, WhatWasTold } from '../../contacts/contact.ts'
import { edited } from '../../contacts/stamped.ts'
import type { OfficeCounty } from '../../office/office-pack.ts'
import { NotSavedNotice } from '../../parts/not-saved-notice.tsx'
import { useSetting } from '../../parts/setting.tsx'
import type { LogInHand } from '../../parts/use-contact-log.ts'
import { entryLine } from '../../words/contact-words.ts'
import { dropCall } from './kept-call.ts'
import { RecordForm } from './record-form.tsx'
import { SlipForm, type SlipsInHand } from './slips.tsx'

/** What the desk knows of a call when it is recorded. */
export interface CallToRecord {
  readonly subject: Subject
  readonly told: WhatWasTold
  /** Whether an outcome was told: else the topic is asked first. */
  readonly decided: boolean
  /** YYYY-MM-DD in the office's time zone. */
  readonly today: string
  /** From the call's start until now, at least 1. */
  readonly minutes: () => number
  readonly language: string
  readonly counties: readonly OfficeCounty[]
  /** In how many days the caller looks again; null where nothing says so. */
  readonly recheckInDays: number | null
  /** An invented caller: nothing is recorded. */
  readonly practice: boolean
}

const KEY = 'F2'

/** Under the call: few keys to a record that holds nobody, and a slip to call back. */
export function RecordPanel({
  call,
  log,
  slips,
  volunteer,
  onVolunteer,
  onNextCall
}: {
  call: CallToRecord
  log: LogInHand
  slips: SlipsInHand
  volunteer: string
  onVolunteer: (typed: string) => void
  onNextCall: () => void
}) {
  const { words } = useSetting()
  const [open, setOpen] = useState(false)
  const [saved, setSaved] = useState<LogEntry | null>(null)
  const [undone, setUndone] = useState(false)
  const undo = useRef<HTMLButtonElement>(null)
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.key !== KEY || event.repeat || saved !== null) return
      event.preventDefault()
      setOpen(true)
    }
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  }, [saved])
  useEffect(() => {
    if (saved !== null && !undone) undo.current?.focus()
  }, [saved, undone])
  const save = async (entry: LogEntry) => {
    setUndone(false)
    if (!(await log.save(entry))) return
    // A recorded call is finished: nothing of it waits to be taken up.
    dropCall()
    setSaved(entry)
    setOpen(false)
  }
  const takeBack = async () => {
    if (saved === null || !(await log.save(edited(saved, { state: 'void' })))) return
    setSaved(null)
    setUndone(true)
  }
  return (
    <section class="record" aria-label={words.t('ui:contacts.record.title')}>
      {saved === null && (
        <button
          type="button"
          class="secondary record-open"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {words.t('ui:contacts.record.title')}{' '}
          <span class="record-key">{words.t('ui:contacts.record.press')}</span>
        </button>
      )}
      <div class="record-done" role="status">
        {saved !== null && (
          <p>
            {words.t('ui:contacts.record.saved', { what: entryLine(words, call.counties, saved) })}
          </p>
        )}
        {undone && saved === null && <p>{words.t('ui:contacts.record.undone')}</p>}
      </div>
      {saved !== null && (
        <>
          <button type="button" class="quiet" data-action="undo" ref={undo} onClick={takeBack}>
            {words.t('ui:contacts.record.undo')}
          </button>
          <button type="button" class="secondary" data-action="next-call" onClick={onNextCall}>
            {words.t('ui:desk.new-call')}
          </button>
        </>
      )}
      <NotSavedNotice log={log} counties={call.counties} />
      {open && saved === null && (
        <RecordForm call={call} volunteer={volunteer} onVolunteer={onVolunteer} onRecord={save} />
      )}
      <SlipForm slips={slips} call={call} />
    </section>
  )
}

import { useEffect, useState } from 'preact/hooks'
import { dayAfter } from '../../contacts/day-span.ts'
import { notSaved } from '../../contacts/not-saved.ts'
import {
  type CallBackSlip,
  dueOn,
  newSlip,
  PARTS_OF_DAY,
  type PartOfDay,
  type SlipFacts,
  slipFaults
} from '../../contacts/slip.ts'
import { LogField, LogSelect } from '../../parts/log-fields.tsx'
import { Phone } from '../../parts/phone.tsx'
import { useSetting } from '../../parts/setting.tsx'
import { dayText } from '../../words/contact-words.ts'
import type { CallToRecord } from './record-panel.tsx'

/** The slips of this desk. */
export interface SlipsInHand {
  readonly due: readonly CallBackSlip[]
  /** Whether it is on the disk. */
  add(slip: CallBackSlip): Promise<boolean>
  close(id: string): Promise<void>
  /** Why the last one was not kept; null where it was. */
  readonly fault: 'full' | 'blocked' | 'failed' | null
}

/** Opens the slips, deletes those that are over, and keeps in sight those of a day. */
export function useSlips(today: string): SlipsInHand {
  const [left, setLeft] = useState<readonly CallBackSlip[]>([])
  const [fault, setFault] = useState<SlipsInHand['fault']>(null)
  const box = async () => await (await import('../../contacts/slip-store.ts')).openSlips()
  const doing = async (work: () => Promise<unknown>) => {
    try {
      await work()
      setLeft(await (await box()).left(today))
      setFault(null)
      return true
    } catch (error) {
      setFault(notSaved(error).why)
      return false
    }
  }
  useEffect(() => {
    // A browser that keeps nothing has no slips; that is said when one is written.
    doing(async () => undefined).then(done => done || setFault(null))
  }, [today])
  return {
    due: dueOn(left, today),
    add: slip => doing(async () => (await box()).add(slip)),
    close: async id => {
      await doing(async () => (await box()).close(id))
    },
    fault
  }
}

/** Whom to call back today. */
export function DueToday({ slips: { due, close } }: { slips: SlipsInHand }) {
  const { words } = useSetting()
  if (due.length === 0) return null
  return (
    <section class="slips" id="calls-to-make">
      <h2>{words.t('ui:contacts.slips.title')}</h2>
      <ul>
        {due.map(({ id, firstName, phone, part, on }) => (
          <li key={id} data-slip={id}>
            <strong>{firstName}</strong> <Phone number={phone} />{' '}
            <span class="slips-when">
              {words.t(`ui:contacts.slips.parts.${part}`)}, {dayText(words, on)}
            </span>{' '}
            <button type="button" class="quiet" data-action="slip-done" onClick={() => close(id)}>
              {words.t('ui:contacts.slips.done')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}

const FIELD_NAMES = {
  firstName: 'ui:contacts.slips.first-name',
  phone: 'ui:contacts.slips.phone',
  on: 'ui:contacts.slips.on',
  recheckOn: 'ui:contacts.slips.recheck',
  part: 'ui:contacts.slips.part'
} as const

/** A slip to call back: the only place where a name and a number are typed, apart from every record. */
export function SlipForm({ slips, call }: { slips: SlipsInHand; call: CallToRecord }) {
  const { words } = useSetting()
  const blank = (): SlipFacts => ({
    firstName: '',
    phone: '',
    on: dayAfter(call.today, call.recheckInDays ?? 1),
    part: 'any-time',
    recheckOn: call.recheckInDays === null ? null : dayAfter(call.today, call.recheckInDays)
  })
  // The days follow the call until somebody types others: it has no recheck before it has an outcome.
  const [typed, setTyped] = useState<Partial<SlipFacts>>({})
  const slip = { ...blank(), ...typed }
  const [said, setSaid] = useState('')
  const put = (changed: Partial<SlipFacts>) => setTyped({ ...typed, ...changed })
  const save = async () => {
    const faults = slipFaults(slip).map(field => words.t(FIELD_NAMES[field]))
    if (faults.length > 0) {
      setSaid(words.t('ui:contacts.slips.wrong', { fields: faults.join(', ') }))
      return
    }
    if (!(await slips.add(newSlip(slip)))) return
    setTyped({})
    setSaid(words.t('ui:contacts.slips.saved'))
  }
  const day = (name: 'on' | 'recheckOn', value: string, put: (day: string) => void) => (
    <LogField label={words.t(FIELD_NAMES[name])}>
      <input
        type="date"
        name={name}
        value={value}
        onInput={event => put(event.currentTarget.value)}
      />
    </LogField>
  )
  return (
    <details class="slip">
      <summary>{words.t('ui:contacts.slips.write')}</summary>
      {/* Backspace in its fields takes no emergency back. */}
      <form
        class="record-form"
        onKeyDown={event => event.key === 'Backspace' && event.stopPropagation()}
        onSubmit={event => {
          event.preventDefault()
          save()
        }}
      >
        <LogField label={words.t('ui:contacts.slips.first-name')}>
          <input
            name="firstName"
            autocomplete="off"
            maxLength={40}
            value={slip.firstName}
            onInput={event => put({ firstName: event.currentTarget.value })}
          />
        </LogField>
        <LogField label={words.t('ui:contacts.slips.phone')}>
          <input
            name="phone"
            type="tel"
            autocomplete="off"
            value={slip.phone}
            onInput={event => put({ phone: event.currentTarget.value })}
          />
        </LogField>
        {day('on', slip.on, on => put({ on }))}
        <LogSelect<PartOfDay>
          label={words.t('ui:contacts.slips.part')}
          name="part"
          value={slip.part}
          options={PARTS_OF_DAY.map(id => ({ id, text: words.t(`ui:contacts.slips.parts.${id}`) }))}
          onChange={part => put({ part })}
        />
        {day('recheckOn', slip.recheckOn ?? '', typed => put({ recheckOn: typed || null }))}
        <div class="record-save">
          <button type="submit" class="secondary" data-action="save-slip">
            {words.t('ui:contacts.slips.save')}
          </button>
          <p role="status">{said}</p>
        </div>
      </form>
      {slips.fault && (
        <p class="notice" role="alert">
          {words.t(`ui:contacts.not-saved.${slips.fault}`, {
            what: words.t('ui:contacts.slips.write')
          })}
        </p>
      )}
    </details>
  )
}

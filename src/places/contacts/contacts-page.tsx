import { useEffect, useState } from 'preact/hooks'
import type { LogEntry } from '../../contacts/contact.ts'
import { hideSmall, LEAST_SHOWN, showAll } from '../../contacts/hide-small.ts'
import { edited } from '../../contacts/stamped.ts'
import { localTime } from '../../office/hours.ts'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import { useLinked, useLinkedPage } from '../../opening/use-linked-page.ts'
import { NotSavedNotice } from '../../parts/not-saved-notice.tsx'
import { Screen } from '../../parts/screen.tsx'
import { SpeechProvider } from '../../parts/setting.tsx'
import { useContactLog } from '../../parts/use-contact-log.ts'
import { dayText } from '../../words/contact-words.ts'
import { SOURCE_TAG } from '../../words/words.ts'
import { EventForm, HoursForm } from './bulk-forms.tsx'
import { KioskCounted } from './kiosk-counted.tsx'
import { Edits, OpenCalls } from './open-calls.tsx'
import { Figures, ReportTables } from './report-tables.tsx'
import { SpanPicker, spanOf, startChoice } from './span-picker.tsx'
import { TakeIn } from './take-in.tsx'
import { TakeOut } from './take-out.tsx'
import { useLogView } from './use-log-view.ts'

/** The log of this browser: what a span of days came to, what is pending, and its way in and out. */
export function ContactsPage({ catalogue, openers }: { catalogue: Catalogue; openers: Openers }) {
  const linked = useLinked()
  const [choice, setChoice] = useState(() =>
    startChoice(linked, localTime(new Date(), undefined).date)
  )
  const { speech, frame } = useLinkedPage(
    { catalogue, openers },
    () => linked.get('lang') ?? SOURCE_TAG,
    choice
  )
  const { words } = speech
  const { office } = frame
  const today = localTime(frame.today, office?.hours?.zone).date
  const log = useContactLog()
  const [changes, setChanges] = useState(0)
  const [hide, setHide] = useState(true)
  const span = spanOf(choice)
  const counties = office?.log?.counties ?? []
  const { view, fault } = useLogView(log, span, today, office?.log?.keepMonths ?? null, changes)
  const title = words.t('ui:contacts.title')
  useEffect(() => {
    document.title = `${title} · Jarside`
  }, [title])
  const changed = () => setChanges(count => count + 1)
  const save = async (entry: LogEntry | null) => {
    const done = entry !== null && (await log.save(entry))
    if (done) changed()
    return done
  }
  const shown = view && (hide ? hideSmall(view.report) : showAll(view.report))
  return (
    <SpeechProvider value={speech}>
      <Screen
        {...frame}
        look="contacts"
        title={title}
        draft={false}
        onBack={null}
        onStartOver={null}
      >
        <h1>{title}</h1>
        <p class="contacts-intro">
          {words.t('ui:contacts.intro')} <a href="./desk.html">{words.t('ui:contacts.to-desk')}</a>
        </p>
        <NotSavedNotice log={log} counties={counties} />
        {fault && (
          <p class="notice" role="alert">
            {words.t(`ui:contacts.not-saved.${fault}`, { what: title })}
          </p>
        )}
        <SpanPicker choice={choice} today={today} onChange={setChoice} />
        {view && shown && (
          <>
            {view.keptFrom !== null && view.keptFrom > span.from && (
              <p>
                {words.t('ui:contacts.span.whole-months', { day: dayText(words, view.keptFrom) })}
              </p>
            )}
            <div
              class="contacts-report"
              data-from={view.span.from}
              data-contacts={view.report.contacts}
            >
              <div class="screen-alone">
                <Figures report={showAll(view.report)} />
                <ReportTables report={showAll(view.report)} counties={counties} />
              </div>
              {/* Paper may leave the office. */}
              <div class="print-alone" aria-hidden="true">
                <Figures report={shown} />
                <ReportTables report={shown} counties={counties} />
              </div>
            </div>
            <div class="contacts-work">
              <OpenCalls
                entries={view.entries}
                counties={counties}
                onResolve={entry => save(edited(entry, { state: 'resolved' }))}
              />
              <Edits
                edits={view.edits}
                counties={counties}
                onSeen={async id => {
                  await (await log.open()).markSeen(id)
                  changed()
                }}
              />
              <TakeOut
                shown={shown}
                entries={view.entries}
                counties={counties}
                least={LEAST_SHOWN}
                hide={hide}
                onHide={setHide}
              />
              <TakeIn log={log} keptFrom={view.keptFrom} onTaken={changed} />
              <KioskCounted area={counties[0]?.code ?? null} log={log} onTaken={changed} />
              <EventForm today={today} area={counties[0]?.code ?? null} onSave={save} />
              <HoursForm today={today} onSave={save} />
            </div>
          </>
        )}
      </Screen>
    </SpeechProvider>
  )
}

import { useState } from 'preact/hooks'
import type { LogEntry } from '../../contacts/contact.ts'
import type { Taken } from '../../contacts/log-store.ts'
import { notSaved, type WhyNotSaved } from '../../contacts/not-saved.ts'
import { readLine } from '../../contacts/read-entry.ts'
import { LogField } from '../../parts/log-fields.tsx'
import { useSpeech } from '../../parts/setting.tsx'
import type { LogInHand } from '../../parts/use-contact-log.ts'

/** How many lines that cannot be read are shown. */
const SHOWN = 5

interface FileTaken extends Taken {
  readonly file: string
  readonly lines: number
  readonly bad: readonly { readonly line: number; readonly why: string }[]
}

/** Takes in the records of another desk: whatever the order and however often, it is a union. */
export function TakeIn({
  log,
  keptFrom,
  onTaken
}: {
  log: LogInHand
  keptFrom: string | null
  onTaken: () => void
}) {
  const { words } = useSpeech()
  const [reply, setTold] = useState<FileTaken | null>(null)
  const [fault, setFault] = useState<{ file: string; why: WhyNotSaved } | null>(null)
  const take = async (file: File) => {
    const { entries, bad, lines } = readLines(await file.text())
    try {
      const taken = await (await log.open()).take(entries, keptFrom)
      setTold({ ...taken, file: file.name, lines, bad })
      setFault(null)
      onTaken()
    } catch (error) {
      setTold(null)
      setFault({ file: file.name, why: notSaved(error).why })
    }
  }
  return (
    <section class="take-in">
      <h2>{words.t('ui:contacts.import.title')}</h2>
      <LogField label={words.t('ui:contacts.import.choose')}>
        <input
          type="file"
          name="import"
          accept=".jsonl,application/jsonl"
          onChange={event => {
            const [file] = event.currentTarget.files ?? []
            if (file !== undefined) take(file)
          }}
        />
      </LogField>
      <div role="status" class="take-in-told">
        {reply && (
          <>
            <p>
              {words.t('ui:contacts.import.taken', {
                ...reply,
                old: reply.tooOld,
                bad: reply.bad.length
              })}
            </p>
            {reply.bad.length > 0 && reply.bad.length === reply.lines && (
              <p>{words.t('ui:contacts.import.nothing-taken')}</p>
            )}
            <ul>
              {reply.bad.slice(0, SHOWN).map(bad => (
                <li key={bad.line}>{words.t('ui:contacts.import.line', { ...bad })}</li>
              ))}
            </ul>
          </>
        )}
        {fault && <p>{words.t(`ui:contacts.not-saved.${fault.why}`, { what: fault.file })}</p>}
      </div>
    </section>
  )
}

function readLines(text: string) {
  const entries: LogEntry[] = []
  const bad: { line: number; why: string }[] = []
  let lines = 0
  text.split('\n').forEach((line, index) => {
    if (line.trim() === '') return
    lines += 1
    const read = readLine(line)
    if ('entry' in read) entries.push(read.entry)
    else bad.push({ line: index + 1, why: read.fault })
  })
  return { entries, bad, lines }
}

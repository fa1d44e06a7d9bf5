import { useRef, useState } from 'preact/hooks'
import { type LogEntry, lineOf } from '../contacts/contact.ts'
import type { ContactLog } from '../contacts/log-store.ts'
import { notSaved, type WhyNotSaved } from '../contacts/not-saved.ts'

/** The contact log, asked for when it is first needed, and what it could not keep. */
export interface LogInHand {
  /** @throws NotSaved where this browser keeps nothing. */
  open(): Promise<ContactLog>
  /** Whether it is on the disk; where not, it is among `unsaved`. */
  save(entry: LogEntry): Promise<boolean>
  /** Saves what was not saved once more. */
  again(): Promise<boolean>
  /** In memory alone, until it is saved or taken out as a file. */
  readonly unsaved: readonly LogEntry[]
  readonly why: WhyNotSaved | null
  letGo(): void
}

export function useContactLog(): LogInHand {
  const opening = useRef<Promise<ContactLog> | null>(null)
  const [unsaved, setUnsaved] = useState<readonly LogEntry[]>([])
  const [why, setWhy] = useState<WhyNotSaved | null>(null)
  const open = async () => {
    opening.current ??= import('../contacts/log-store.ts').then(({ openLog }) => openLog())
    try {
      return await opening.current
    } catch (error) {
      // The next one asks anew: somebody may have made room.
      opening.current = null
      throw notSaved(error)
    }
  }
  const saveAll = async (entries: readonly LogEntry[]) => {
    try {
      const log = await open()
      for (const entry of entries) await log.add(entry)
      setUnsaved([])
      setWhy(null)
      return true
    } catch (error) {
      setUnsaved(entries)
      setWhy(notSaved(error).why)
      return false
    }
  }
  return {
    open,
    save: entry => saveAll([...unsaved, entry]),
    again: () => saveAll(unsaved),
    unsaved,
    why,
    letGo: () => {
      setUnsaved([])
      setWhy(null)
    }
  }
}

/** Entries as a file of JSON Lines. */
export const linesOf = (entries: readonly LogEntry[]): string =>
  entries.map(entry => `${lineOf(entry)}\n`).join('')

/** Hands a text to whoever looks at the page as a file. */
export function handOver(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // The browser has taken it by the next turn.
  setTimeout(() => URL.revokeObjectURL(address))
}

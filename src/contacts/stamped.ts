import type { Contact, ContactFacts, HoursFacts, LogEntry, VolunteerHours } from './contact.ts'
import { readEntry } from './read-entry.ts'

/** Eight random hexadecimal digits. */
const newMark = (): string =>
  [...crypto.getRandomValues(new Uint8Array(4))]
    .map(byte => byte.toString(16).padStart(2, '0'))
    .join('')

const newStamp = () => ({ id: crypto.randomUUID(), edit: 0, mark: newMark() })

/**
 * A contact for the log, with a new random id; null of a call that was practice, which never counts.
 *
 * @throws RangeError where a field holds what no log takes: our own mistake.
 */
export function newContact(facts: ContactFacts, practice: boolean): Contact | null {
  if (practice) return null
  const entry = checkedEntry({ kind: 'contact', ...newStamp(), ...facts })
  return entry.kind === 'contact' ? entry : null
}

/** Hours for the log. @throws RangeError as `newContact` does. */
export function newHours(facts: HoursFacts): VolunteerHours | null {
  const entry = checkedEntry({ kind: 'hours', ...newStamp(), ...facts })
  return entry.kind === 'hours' ? entry : null
}

/** What may be changed of an entry afterwards. */
export type Changes = Partial<
  Pick<Contact, 'method' | 'direct' | 'minutes' | 'area' | 'state' | 'review' | 'language'>
>

/** A later version of an entry. @throws RangeError where it would not be one. */
export const edited = (entry: LogEntry, changes: Changes): LogEntry =>
  checkedEntry({ ...entry, ...changes, edit: entry.edit + 1, mark: newMark() })

function checkedEntry(given: object): LogEntry {
  const read = readEntry(given)
  if ('entry' in read) return read.entry
  throw new RangeError(`This is no entry of the log: ${read.fault}.`)
}

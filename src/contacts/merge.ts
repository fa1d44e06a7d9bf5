import { type LogEntry, lineOf } from './contact.ts'

/** Every version of every entry, by its id; of each the one that counts comes first. */
export type MergedLog = ReadonlyMap<string, readonly LogEntry[]>

/**
 * The union of several logs. Whatever order they come in, and however often, it is the same: of the versions of an entry
 * the one that was edited most counts, of two edits made apart the one with the greater mark. None is
 * dropped here: whoever looks after the log sees both.
 */
export function mergeLogs(...logs: readonly Iterable<LogEntry>[]): MergedLog {
  const merged = new Map<string, LogEntry[]>()
  for (const log of logs) {
    for (const entry of log) {
      const versions = merged.get(entry.id)
      if (versions === undefined) merged.set(entry.id, [entry])
      else if (!versions.some(each => lineOf(each) === lineOf(entry))) versions.push(entry)
    }
  }
  for (const versions of merged.values()) versions.sort(latestFirst)
  return merged
}

/** The version of each entry that counts. */
export const latestOf = (log: MergedLog): readonly LogEntry[] =>
  [...log.values()].flatMap(([latest]) => latest ?? [])

/** The order of versions: those edited more first, then the greater mark, then the greater text. */
export function latestFirst(a: LogEntry, b: LogEntry): number {
  if (a.edit !== b.edit) return b.edit - a.edit
  const [one, other] = a.mark === b.mark ? [lineOf(a), lineOf(b)] : [a.mark, b.mark]
  if (one === other) return 0
  return one > other ? -1 : 1
}

import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { LogEntry } from './contact.ts'
import type { DaySpan } from './day-span.ts'
import { latestFirst } from './merge.ts'
import { notSaved } from './not-saved.ts'
import { foldAway, type MonthSum } from './retention.ts'

/** The name of the log's own database in this browser. */
export const LOG_DATABASE = 'jarside-contacts'

interface Schema extends DBSchema {
  /** Of each entry the version that counts, by its day. */
  readonly entries: { key: [string, string]; value: LogEntry; indexes: { id: string } }
  /** The versions that gave way and were not seen yet. */
  readonly earlier: { key: [string, number, string]; value: LogEntry }
  /** The marks of the versions whose earlier ones were seen, by the id of their entry. */
  readonly seen: { key: string; value: string }
  readonly sums: { key: string; value: MonthSum }
}

/** What came of taking in other entries. */
export interface Taken {
  readonly added: number
  /** Known already in another version: the later one counts, both are kept. */
  readonly edited: number
  /** Known already to the letter. */
  readonly known: number
  /** Older than this office keeps records. */
  readonly tooOld: number
}

/** An entry of which there is more than one version. */
export interface Versions {
  readonly latest: LogEntry
  readonly earlier: readonly LogEntry[]
}

/** The contact log of this browser. Every promise that writes waits until it is on the disk. */
export interface ContactLog {
  /** Writes one entry, new or edited. @throws NotSaved */
  add(entry: LogEntry): Promise<void>
  /** Takes in entries of another desk, all or none. @throws NotSaved */
  take(entries: readonly LogEntry[], keptFrom: string | null): Promise<Taken>
  entriesIn(span: DaySpan): Promise<readonly LogEntry[]>
  sums(): Promise<readonly MonthSum[]>
  /** Every entry that has earlier versions nobody has seen. */
  edits(): Promise<readonly Versions[]>
  /** Lets the earlier versions of an entry go. @throws NotSaved */
  markSeen(id: string): Promise<void>
  /** Folds entries of before a day into the sums of their months; gives how many. @throws NotSaved */
  foldBefore(day: string): Promise<number>
  close(): void
}

const STRICT = { durability: 'strict' } as const

/** Opens the log. @throws NotSaved where this browser keeps nothing. */
export async function openLog(): Promise<ContactLog> {
  const db = await opened()
  // Best effort: a browser short of room then asks before it throws the log away.
  await navigator.storage?.persist?.().catch(() => false)
  const write = () => db.transaction(['entries', 'earlier', 'seen', 'sums'], 'readwrite', STRICT)
  type Writing = ReturnType<typeof write>

  const merge = async (tx: Writing, entry: LogEntry): Promise<'added' | 'edited' | 'known'> => {
    const entries = tx.objectStore('entries')
    const kept = await entries.index('id').get(entry.id)
    if (kept === undefined) {
      await entries.put(entry)
      return 'added'
    }
    const order = latestFirst(kept, entry)
    if (order === 0) return 'known'
    const [winner, loser] = order < 0 ? [kept, entry] : [entry, kept]
    if (order > 0) {
      await entries.delete([kept.date, kept.id])
      await entries.put(winner)
    }
    const seen = await tx.objectStore('seen').get(entry.id)
    if (seen === winner.mark) return 'known'
    const earlier = tx.objectStore('earlier')
    const before = await earlier.getKey([loser.id, loser.edit, loser.mark])
    await earlier.put(loser)
    return before === undefined ? 'edited' : 'known'
  }

  return {
    async add(entry) {
      await saved(async () => {
        const tx = write()
        await merge(tx, entry)
        await tx.done
      })
    },
    async take(entries, keptFrom) {
      const count = { added: 0, edited: 0, known: 0, tooOld: 0 }
      await saved(async () => {
        const tx = write()
        for (const entry of entries) {
          if (keptFrom !== null && entry.date < keptFrom) count.tooOld += 1
          else count[await merge(tx, entry)] += 1
        }
        await tx.done
      })
      return count
    },
    entriesIn: ({ from, until }) =>
      db.getAll('entries', IDBKeyRange.bound([from, ''], [until, '\uffff'])),
    sums: () => db.getAll('sums'),
    async edits() {
      const all = await db.getAll('earlier')
      const ids = [...new Set(all.map(({ id }) => id))]
      const latest = await Promise.all(ids.map(id => db.getFromIndex('entries', 'id', id)))
      return latest.flatMap(entry =>
        entry === undefined
          ? []
          : [{ latest: entry, earlier: all.filter(({ id }) => id === entry.id).sort(latestFirst) }]
      )
    },
    async markSeen(id) {
      await saved(async () => {
        const tx = write()
        const latest = await tx.objectStore('entries').index('id').get(id)
        if (latest !== undefined) await tx.objectStore('seen').put(latest.mark, id)
        await tx.objectStore('earlier').delete(versionsOf(id))
        await tx.done
      })
    },
    async foldBefore(day) {
      let gone = 0
      const before = IDBKeyRange.upperBound([day, ''], true)
      // A page that is opened folds hardly ever: it waits for no disk then.
      if ((await db.getKey('entries', before)) === undefined) return gone
      await saved(async () => {
        const tx = write()
        const entries = tx.objectStore('entries')
        const old = await entries.getAll(before)
        const standing = await tx.objectStore('sums').getAll()
        const folded = foldAway(new Map(old.map(entry => [entry.id, [entry]])), day, standing)
        for (const sum of folded.sums) await tx.objectStore('sums').put(sum)
        for (const { date, id } of old) {
          await entries.delete([date, id])
          await tx.objectStore('earlier').delete(versionsOf(id))
          await tx.objectStore('seen').delete(id)
        }
        await tx.done
        gone = old.length
      })
      return gone
    },
    close: () => db.close()
  }
}

const versionsOf = (id: string): IDBKeyRange =>
  IDBKeyRange.bound([id, 0, ''], [id, Number.MAX_SAFE_INTEGER, '\uffff'])

async function opened(): Promise<IDBPDatabase<Schema>> {
  return await saved(
    () =>
      new Promise((resolve, reject) => {
        openDB<Schema>(LOG_DATABASE, 1, {
          upgrade(db) {
            db.createObjectStore('entries', { keyPath: ['date', 'id'] }).createIndex('id', 'id', {
              unique: true
            })
            db.createObjectStore('earlier', { keyPath: ['id', 'edit', 'mark'] })
            db.createObjectStore('seen')
            db.createObjectStore('sums', { keyPath: 'month' })
          },
          blocked: () => reject(new Error('another window keeps the log')),
          blocking: (_, __, event) => {
            if (event.target instanceof IDBDatabase) event.target.close()
          }
        }).then(resolve, reject)
      })
  )
}

/** Does what writes, and says in our words why it could not. */
async function saved<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work()
  } catch (error) {
    throw notSaved(error)
  }
}

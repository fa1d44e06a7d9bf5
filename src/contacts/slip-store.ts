import { type DBSchema, openDB } from 'idb'
import { notSaved } from './not-saved.ts'
import { type CallBackSlip, isOver } from './slip.ts'

/** The name of the slips' own database: no export of the log can come near it. */
export const SLIP_DATABASE = 'jarside-call-backs'

interface Schema extends DBSchema {
  readonly slips: { key: string; value: CallBackSlip }
}

/** The slips of this browser. */
export interface SlipBox {
  /** @throws NotSaved */
  add(slip: CallBackSlip): Promise<void>
  /** Deletes a slip whose call was made. @throws NotSaved */
  close(id: string): Promise<void>
  /** Those that are left, once every slip that is over by a day is deleted. @throws NotSaved */
  left(today: string): Promise<readonly CallBackSlip[]>
}

const STRICT = { durability: 'strict' } as const

/** Opens the slips. @throws NotSaved where this browser keeps nothing. */
export async function openSlips(): Promise<SlipBox> {
  const write = async <T>(work: (store: Store) => Promise<T>): Promise<T> => {
    try {
      const db = await opened()
      const tx = db.transaction('slips', 'readwrite', STRICT)
      const done = await work(tx.store)
      await tx.done
      db.close()
      return done
    } catch (error) {
      throw notSaved(error)
    }
  }
  return {
    add: async slip => {
      await write(store => store.put(slip))
    },
    close: id => write(store => store.delete(id)),
    left: today =>
      write(async store => {
        const all = await store.getAll()
        for (const slip of all) if (isOver(slip, today)) await store.delete(slip.id)
        return all.filter(slip => !isOver(slip, today))
      })
  }
}

const opened = () =>
  openDB<Schema>(SLIP_DATABASE, 1, {
    upgrade: db => {
      db.createObjectStore('slips', { keyPath: 'id' })
    }
  })

type Opened = Awaited<ReturnType<typeof opened>>
type Store = ReturnType<typeof storeOf>
const storeOf = (db: Opened) => db.transaction('slips', 'readwrite', STRICT).store

import type { LogEntry } from './contact.ts'
import type { DaySpan } from './day-span.ts'
import { keysOf, LOG_TABLES, type LogReport, LogTally } from './log-report.ts'

/** Where in a row its numbers stand; each key of a table is a number after them. */
const EDIT = 4
const MARK = 5
const DAY = 6
const COUNT = 7
const MINUTES = 8
const KIND = 9
const KEYS = 10
const WIDTH = KEYS + LOG_TABLES.length
/** Rows to a page: pages are added, never copied. */
const PAGE_BITS = 15
const PAGE = 1 << PAGE_BITS

const VOID = 0
const CONTACT = 1
const HOURS = 2

/**
 * A log of a million entries in little room: of each entry only the version that counts, as numbers. It
 * counts what `mergeLogs` and `reportOnLog` count.
 */
export class PackedLog {
  #rows = 0
  readonly #pages: Uint32Array[] = []
  /** Open addressing by the id: the number of a row and one, or 0 for a free place. */
  #slots = new Uint32Array(1 << 12)
  readonly #names: readonly Names[] = LOG_TABLES.map(() => new Names())
  readonly #row = new Uint32Array(WIDTH)
  #edited = 0

  /** How many entries there are. */
  get entries(): number {
    return this.#rows
  }

  /** How often a version gave way to a later one, or came after it. */
  get edited(): number {
    return this.#edited
  }

  add(entry: LogEntry): void {
    this.#pack(entry)
    const row = this.#row
    const slot = this.#slotOf(row)
    const taken = this.#slots[slot] ?? 0
    if (taken === 0) {
      this.#slots[slot] = this.#append(row)
      if (this.#rows * 2 > this.#slots.length) this.#grow()
      return
    }
    const page = this.#pageOf(taken - 1)
    const start = startOf(taken - 1)
    const order = compare(page, start + EDIT, row, EDIT, WIDTH - EDIT)
    if (order !== 0) this.#edited += 1
    if (order < 0) page.set(row, start)
  }

  report(span: DaySpan): LogReport {
    const tally = new LogTally()
    const [from, until] = [dayNumber(span.from), dayNumber(span.until)]
    const keys: string[] = []
    for (let row = 0; row < this.#rows; row++) {
      const page = this.#pageOf(row)
      const start = startOf(row)
      const day = page[start + DAY] ?? 0
      const kind = page[start + KIND]
      if (day < from || day > until || kind === VOID) continue
      const minutes = page[start + MINUTES] ?? 0
      if (kind === HOURS) {
        tally.addHours(String(page[start + KEYS] ?? 0), minutes)
        continue
      }
      this.#names.forEach((names, table) => {
        keys[table] = names.nameOf(page[start + KEYS + table] ?? 0)
      })
      tally.addKeys(keys, page[start + COUNT] ?? 0, minutes)
    }
    return tally.report(span)
  }

  #pack(entry: LogEntry): void {
    const row = this.#row.fill(0)
    const { id } = entry
    row[0] = Number.parseInt(id.slice(0, 8), 16)
    row[1] = Number.parseInt(id.slice(9, 13) + id.slice(14, 18), 16)
    row[2] = Number.parseInt(id.slice(19, 23) + id.slice(24, 28), 16)
    row[3] = Number.parseInt(id.slice(28), 16)
    row[EDIT] = entry.edit
    row[MARK] = Number.parseInt(entry.mark, 16)
    row[DAY] = dayNumber(entry.date)
    row[MINUTES] = entry.minutes
    if (entry.kind === 'hours') {
      row[KIND] = entry.state === 'void' ? VOID : HOURS
      row[KEYS] = entry.volunteer
      return
    }
    row[KIND] = entry.state === 'void' ? VOID : CONTACT
    row[COUNT] = entry.count
    keysOf(entry).forEach((key, table) => {
      row[KEYS + table] = this.#names[table]?.numberOf(key) ?? 0
    })
  }

  #pageOf(row: number): Uint32Array {
    const page = this.#pages[row >>> PAGE_BITS]
    if (page === undefined) throw new RangeError(`There is no row ${row}.`)
    return page
  }

  /** Gives the number of the new row and one. */
  #append(row: Uint32Array): number {
    if (this.#rows % PAGE === 0) this.#pages.push(new Uint32Array(PAGE * WIDTH))
    this.#pageOf(this.#rows).set(row, startOf(this.#rows))
    this.#rows += 1
    return this.#rows
  }

  /** Where the id of a row stands, or the free place for it. The ids are random, so their own digits are the hash. */
  #slotOf(row: Uint32Array): number {
    const mask = this.#slots.length - 1
    let slot = ((row[0] ?? 0) ^ (row[3] ?? 0)) & mask
    for (;;) {
      const taken = this.#slots[slot] ?? 0
      if (taken === 0) return slot
      const page = this.#pageOf(taken - 1)
      const start = startOf(taken - 1)
      if (compare(page, start, row, 0, EDIT) === 0) return slot
      slot = (slot + 1) & mask
    }
  }

  #grow(): void {
    this.#slots = new Uint32Array(this.#slots.length * 2)
    for (let row = 0; row < this.#rows; row++) {
      const page = this.#pageOf(row)
      const start = startOf(row)
      this.#slots[this.#slotOf(page.subarray(start, start + WIDTH))] = row + 1
    }
  }
}

/** Where in its page a row begins. */
const startOf = (row: number): number => (row & (PAGE - 1)) * WIDTH

/** The order of two runs of numbers, the first that differs deciding. */
function compare(
  a: Uint32Array,
  index: number,
  b: Uint32Array,
  from: number,
  length: number
): number {
  for (let n = 0; n < length; n++) {
    const order = (a[index + n] ?? 0) - (b[from + n] ?? 0)
    if (order !== 0) return order
  }
  return 0
}

const numbers = new Map<string, number>()

/** 20261002 for 2026-10-02; a log has few days and asks for each thousands of times. */
function dayNumber(day: string): number {
  const before = numbers.get(day)
  if (before !== undefined) return before
  const number = Number(day.replaceAll('-', ''))
  numbers.set(day, number)
  return number
}

/** Names by number, so that a row holds numbers alone. */
class Names {
  readonly #numbers = new Map<string, number>()
  readonly #names: string[] = []

  numberOf(name: string): number {
    const before = this.#numbers.get(name)
    if (before !== undefined) return before
    const number = this.#names.length
    this.#names.push(name)
    this.#numbers.set(name, number)
    return number
  }

  nameOf = (number: number): string => this.#names[number] ?? ''
}

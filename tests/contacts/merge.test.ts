import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ALL_DAYS } from '../../src/contacts/day-span.ts'
import { reportOnLog } from '../../src/contacts/log-report.ts'
import { latestOf, mergeLogs } from '../../src/contacts/merge.ts'
import { PackedLog } from '../../src/contacts/packed-log.ts'
import { CALL, contacts } from './sample.ts'

const log = fc.array(contacts, { maxLength: 25 })
const flat = (merged: ReturnType<typeof mergeLogs>) =>
  Object.fromEntries([...merged].sort(([a], [b]) => (a < b ? -1 : 1)))

describe('merging is a union', () => {
  test('in any order, grouping and number it comes to the same', () => {
    fc.assert(
      fc.property(log, log, log, (a, b, c) => {
        const all = flat(mergeLogs(a, b, c))
        expect(flat(mergeLogs(c, a, b))).toEqual(all)
        expect(flat(mergeLogs(a, [...mergeLogs(b, c).values()].flat()))).toEqual(all)
        expect(flat(mergeLogs(a, b, c, b, a))).toEqual(all)
      })
    )
  })

  test('the latest edit counts, and the one before is kept', () => {
    const later = { ...CALL, edit: 1, mark: '00000001', minutes: 9 }
    const [versions] = mergeLogs([later], [CALL]).values()
    expect(versions).toEqual([later, CALL])
  })

  test('of two edits made apart the greater mark counts, at every desk', () => {
    const one = { ...CALL, edit: 1, mark: '00000001', minutes: 9 }
    const other = { ...CALL, edit: 1, mark: '00000002', minutes: 5 }
    expect(latestOf(mergeLogs([CALL, one], [other]))).toEqual([other])
    expect(latestOf(mergeLogs([other], [one, CALL]))).toEqual([other])
  })

  test('the packed log counts what the merged one counts, in any order', () => {
    fc.assert(
      fc.property(
        log.chain(entries =>
          fc.tuple(
            fc.constant(entries),
            fc.shuffledSubarray(entries, { minLength: entries.length })
          )
        ),
        ([entries, shuffled]) => {
          const packed = new PackedLog()
          for (const entry of shuffled) packed.add(entry)
          expect(packed.report(ALL_DAYS)).toEqual(
            reportOnLog(latestOf(mergeLogs(entries)), ALL_DAYS)
          )
        }
      )
    )
  })
})

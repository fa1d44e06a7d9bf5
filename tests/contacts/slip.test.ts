import { expect, test } from 'vitest'
import { type CallBackSlip, dueOn, isOver, newSlip, slipFaults } from '../../src/contacts/slip.ts'

const SLIP: CallBackSlip = {
  id: '0b0a5d1e-7c1f-4f2a-9d7e-2a61c0a6f00a',
  firstName: 'Robin',
  phone: '555-0142',
  on: '2026-11-02',
  part: 'any-time',
  recheckOn: '2026-11-05'
}

test('a slip is over three days after its recheck, or after its own day where that is later', () => {
  expect(isOver(SLIP, '2026-11-08')).toBe(false)
  expect(isOver(SLIP, '2026-11-09')).toBe(true)
  expect(isOver({ ...SLIP, recheckOn: null }, '2026-11-06')).toBe(true)
  expect(isOver({ ...SLIP, on: '2026-11-07' }, '2026-11-10')).toBe(false)
  // Over the night on which the clocks go back.
  expect(isOver({ ...SLIP, on: '2026-10-30', recheckOn: null }, '2026-11-02')).toBe(false)
  expect(isOver({ ...SLIP, on: '2026-10-30', recheckOn: null }, '2026-11-03')).toBe(true)
})

test('due today is what is for today or was not done before, mornings first', () => {
  const late = { ...SLIP, id: 'late', on: '2026-10-31' }
  const morning = { ...SLIP, id: 'morning', part: 'morning' as const }
  const tomorrow = { ...SLIP, id: 'tomorrow', on: '2026-11-03' }
  const due = dueOn([tomorrow, morning, SLIP, late], '2026-11-02')
  expect(due.map(({ id }) => id)).toEqual(['late', SLIP.id, 'morning'])
  expect(dueOn([late], '2026-11-20')).toEqual([])
})

test('a slip needs a name and a number that can be dialed', () => {
  expect(slipFaults(SLIP)).toEqual([])
  expect(slipFaults({ ...SLIP, firstName: ' ', phone: 'later' })).toEqual(['firstName', 'phone'])
  expect(slipFaults({ ...SLIP, on: '', recheckOn: '2026-13-01' })).toEqual(['on', 'recheckOn'])
  expect(newSlip({ ...SLIP, firstName: ' Robin ' })).toMatchObject({ firstName: 'Robin' })
})

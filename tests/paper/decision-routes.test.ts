import { expect, test } from 'vitest'
import { type Hop, routeHops } from '../../src/paper/decision/routes.ts'

const heightsOf = (...hops: readonly Hop[]) => {
  const { trackOf } = routeHops(hops, [40, 40])
  return hops.map(trackOf)
}
const hop = (from: number, to: number, group: string): Hop => ({ layer: 0, from, to, group })

test('steps that would run on one another have lines of their own, between their layers', () => {
  const { tops } = routeHops([hop(0, 100, 'one'), hop(50, 150, 'other')], [40, 40])
  const [one, other] = heightsOf(hop(0, 100, 'one'), hop(50, 150, 'other'))
  expect(one).not.toBe(other)
  for (const y of [one, other]) {
    expect(y).toBeGreaterThan(40)
    expect(y).toBeLessThan(tops[1] ?? 0)
  }
})

test('steps of one box, and steps that do not meet, share a line', () => {
  const [one, other] = heightsOf(hop(50, 0, 'one'), hop(50, 100, 'one'))
  expect(one).toBe(other)
  const [left, right] = heightsOf(hop(0, 40, 'left'), hop(60, 100, 'right'))
  expect(left).toBe(right)
})

test('one that comes down where another goes on down turns off above it', () => {
  const [coming, going] = heightsOf(hop(100, 0, 'coming'), hop(200, 100, 'going'))
  expect(coming).toBeLessThan(going ?? 0)
})

test('one that goes straight down takes no line', () => {
  expect(heightsOf(hop(30, 30, 'straight'))).toEqual([null])
})

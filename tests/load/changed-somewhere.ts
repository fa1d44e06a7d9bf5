import fc from 'fast-check'

type Way = readonly (string | number)[]

/** A value with one part changed, and the way to that part. */
export interface Changed {
  readonly value: unknown
  readonly at: Way
}

const NAMES = ['unsure', 'a-name', 'Not A Name', 'message', 'use', 'x'.repeat(81)]
const PARTS = [null, true, 0, -1, 1.5, 60, '', ' ', 'a-name', 'Not A Name', 'unsure', '2027-02-30']
const GROUPS = [[], {}, ['a-name'], [1], { 'a-name': 1 }, { 'a-name': {} }, { to: 'a-name' }]

/** One part of a value, anywhere in it, taken away, given another name, or exchanged for another. */
export function changedSomewhere(value: unknown): fc.Arbitrary<Changed> {
  return fc
    .record({
      at: fc.constantFrom(...waysInto(value)),
      change: fc.oneof(
        fc.constant(null),
        fc.record({ name: fc.constantFrom(...NAMES) }),
        fc.record({ by: fc.constantFrom<unknown>(...PARTS, ...GROUPS) })
      )
    })
    .map(({ at, change }) => ({ at, value: changed(value, at, change) }))
}

function waysInto(value: unknown): Way[] {
  if (typeof value !== 'object' || value === null) return []
  return entriesOf(value).flatMap(([key, inner]) => [
    [key],
    ...waysInto(inner).map(way => [key, ...way])
  ])
}

const entriesOf = (value: object): readonly (readonly [string | number, unknown])[] =>
  Array.isArray(value) ? value.map((inner, index) => [index, inner]) : Object.entries(value)

type Change = null | { readonly name: string } | { readonly by: unknown }

function changed(value: unknown, [key, ...rest]: Way, change: Change): unknown {
  const entries = entriesOf(Object(value)).flatMap(([own, inner]): [string | number, unknown][] => {
    if (own !== key) return [[own, inner]]
    if (rest.length > 0) return [[own, changed(inner, rest, change)]]
    if (change === null) return []
    return 'by' in change ? [[own, change.by]] : [[change.name, inner]]
  })
  return Array.isArray(value) ? entries.map(([, inner]) => inner) : Object.fromEntries(entries)
}

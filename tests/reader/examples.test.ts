import { describe, expect, test } from 'vitest'
import { shippedReader, TREES } from './shipped-reader.ts'

describe.each(TREES)('the examples beside the field for %s', id => {
  const { words, reader } = shippedReader(id)

  // Of other languages callers' own words are not known yet.
  const spoken = words.filter(({ tag }) => ['en', 'es'].includes(tag))
  test.each(spoken.map(one => [one.tag, one] as const))('are all taken, in %s', (_, of) => {
    const parts = reader.read(of.t(`${id}:examples`))
    expect(parts.length).toBeGreaterThanOrEqual(3)
    for (const { text, candidates, problem } of parts) {
      expect(problem, text).toBeUndefined()
      expect(
        candidates.map(({ sure }) => sure),
        text
      ).toEqual([true])
    }
  })
})

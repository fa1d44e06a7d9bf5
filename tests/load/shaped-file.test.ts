import { expect, test } from 'vitest'
import { z } from 'zod'
import { openReport } from '../../src/load/report.ts'
import { shapedFile } from '../../src/load/shaped-file.ts'

const path = 'trees/jar/words.json'
const format = z.strictObject({ name: z.string(), use: z.record(z.string(), z.string()) })
const otherFormat = z.strictObject({ name: z.number() })
const read = (text: string, to = openReport()) => shapedFile({ path, text }, format, true, to)

const WORDS = '{ "name": "Jar", "use": { "never": "Throw it out" } }'
const OTHER = '{ "name": "Bottle", "use": { "never": "Throw it out" } }'

test('what has not changed is read once', () => {
  const first = read(WORDS)
  expect(first?.value).toEqual(JSON.parse(WORDS))
  expect(read(WORDS)).toBe(first)
})

test('what has changed is read anew, and so is what was there before', () => {
  const first = read(WORDS)
  expect(read(OTHER)?.value).toEqual(JSON.parse(OTHER))
  const again = read(WORDS)
  expect(again?.value).toEqual(first?.value)
  expect(again?.doc.place(['use', 'never'])).toEqual(first?.doc.place(['use', 'never']))
})

test('the same text is another thing in another format', () => {
  expect(read(WORDS)).not.toBeNull()
  const report = openReport()
  expect(shapedFile({ path, text: WORDS }, otherFormat, true, report)).toBeNull()
  expect(report.findings.length).toBeGreaterThan(0)
})

test('what is wrong is told each time', () => {
  const tell = () => {
    const report = openReport()
    expect(read('{ "name": 7 }', report)).toBeNull()
    return report.findings
  }
  const first = tell()
  expect(first.length).toBeGreaterThan(0)
  expect(tell()).toEqual(first)
})

test('a schema that the file names for editors is not of what it says', () => {
  expect(read(`{ "$schema": "x", ${WORDS.slice(1)}`)?.value).toEqual(JSON.parse(WORDS))
})

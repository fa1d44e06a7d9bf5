import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { describe, expect, test } from 'vitest'
import { authoredFiles } from '../helpers/shipped.ts'
import { FILES } from './rooms.ts'

const MOST_LINES = 300

const linesOf = (file: string) => readFileSync(file, 'utf8').split('\n').length - 1

describe('source files stay small enough to read', () => {
  test(`none has more than ${MOST_LINES} lines`, () => {
    const long = FILES.map(file => ({ file, lines: linesOf(file) }))
    const told = long.filter(({ lines }) => lines > MOST_LINES)
    expect(told.map(({ file, lines }) => `${file}: ${lines}`)).toEqual([])
  })

  test('each is named in kebab-case', () => {
    const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.d)?\.tsx?$/
    expect(FILES.filter(file => !kebab.test(basename(file)))).toEqual([])
  })
})

describe('authored files stay readable in a difference', () => {
  // A list that is longer stands one entry a line, so that one change is one line.
  test('no line of theirs has more than 145 characters', () => {
    const long = authoredFiles()
      .filter(({ path }) => path.endsWith('.yaml'))
      .flatMap(({ path, text }) =>
        text
          .split('\n')
          .flatMap((line, at) => (line.length > 145 ? [`${path}:${at + 1}: ${line.length}`] : []))
      )
    expect(long).toEqual([])
  })
})

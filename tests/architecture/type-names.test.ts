import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { FILES } from './rooms.ts'

const TYPE = /^export (?:abstract )?(?:interface|type|class) (\w+)/gm

test('a type that src exports has a name of its own', () => {
  const files = new Map<string, string[]>()
  for (const file of FILES) {
    for (const [, name = ''] of readFileSync(file, 'utf8').matchAll(TYPE)) {
      files.set(name, [...(files.get(name) ?? []), file])
    }
  }
  expect(files.size).toBeGreaterThan(300)
  expect([...files].filter(([, among]) => among.length > 1)).toEqual([])
})

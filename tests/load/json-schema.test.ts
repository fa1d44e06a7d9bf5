import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { jsonSchemas } from '../../src/load/json-schema.ts'
import { authoredFiles } from '../helpers/shipped.ts'
import { refusalsOf, schemaOf, schemaProblems, shapeFindings } from './outside-validator.ts'
import { wholeProject } from './project-files.ts'

const FOLDER = 'shared/schemas'
const shipped = authoredFiles().filter(({ path }) => schemaOf(path) !== null)

describe('the schemas for editors are those that loading checks with', () => {
  test('the files are what the project writes, and there are no others', () => {
    const written = readdirSync(FOLDER).map(name => [
      name,
      readFileSync(join(FOLDER, name), 'utf8')
    ])
    const made = jsonSchemas().map(({ name, text }) => [name, text])
    // Stale? npm run -s jarside -- schema
    expect(Object.fromEntries(written)).toEqual(Object.fromEntries(made))
  })

  test.each(jsonSchemas().map(({ name }) => name))('%s is a schema of draft 2020-12', name => {
    expect(schemaProblems(name)).toEqual([])
  })

  test.each(shipped.map(({ path }) => path))('%s keeps to its schema, and names it', path => {
    const text = readFileSync(path, 'utf8')
    expect(refusalsOf({ path, text })).toEqual([])
    const named = path.endsWith('.yaml')
      ? /^# yaml-language-server: \$schema=(\S+)\n/.exec(text)?.[1]
      : parse(text).$schema
    expect(join(dirname(path), named ?? '')).toBe(join(FOLDER, schemaOf(path) ?? ''))
  })

  test.each(wholeProject().map(({ path }) => path))('%s of the small project keeps to it', path => {
    const file = wholeProject().find(each => each.path === path)
    expect(file && refusalsOf(file)).toEqual([])
  })
})

describe('the key that names a schema says nothing of its file', () => {
  const path = 'locales/en/jar.json'
  const codesOf = (own: string) => {
    const text = (wholeProject().find(file => file.path === path)?.text ?? '').replace('{', own)
    return shapeFindings({ path, text }).map(({ code }) => code)
  }

  test('a text is passed over', () => {
    expect(codesOf('{ "$schema": "x.json",')).toEqual([])
  })

  test('anything but a text has no meaning there', () => {
    expect(codesOf('{ "$schema": {},')).toEqual(['unknown-key'])
  })
})

describe('an author is told what each key is for', () => {
  test.each(jsonSchemas().map(({ name }) => name))(
    '%s describes every key of every group',
    name => {
      const schema: unknown = JSON.parse(readFileSync(join(FOLDER, name), 'utf8'))
      expect(undescribed(schema, [])).toEqual([])
    }
  )
})

/** Keys in groups of which no word is said. */
function undescribed(schema: unknown, way: readonly string[]): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return []
  return Object.entries(schema).flatMap(([key, inner]) => {
    const here = [...way, key]
    const silent = way.at(-1) === 'properties' && !Object.hasOwn(Object(inner), 'description')
    return [...(silent ? [here.join('/')] : []), ...undescribed(inner, here)]
  })
}

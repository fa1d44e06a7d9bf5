import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { SHAPE_FINDINGS } from '../../src/findings/catalogue/shape.ts'
import { treeAt } from '../../src/load/kinds-of-file.ts'
import { authoredFiles } from '../helpers/shipped.ts'
import { changedSomewhere } from './changed-somewhere.ts'
import { refusals, refusalsOf, schemaOf, shapeFindings } from './outside-validator.ts'
import { faultyProject, wholeProject } from './project-files.ts'

const shipped = authoredFiles().filter(({ path }) => schemaOf(path) !== null)

// Which keys a question may have hangs on the observation, which stands in another file.
const BEYOND = ['key-not-for-kind']

/** The shipped trees' files, by the names they have. */
const TREES = new RegExp(shipped.flatMap(({ path }) => treeAt(path) ?? []).join('|'))

describe('an editor refuses what has the wrong shape', () => {
  test.each(Object.keys(SHAPE_FINDINGS))('the project in tests/bad/%s.diff', code => {
    const { changed } = faultyProject(code)
    expect(changed.flatMap(refusalsOf).length > 0).toBe(!BEYOND.includes(code))
  })

  test.each(['unsure', 'others', 'none', 'rest'])('an answer or a sign named %s', name => {
    const path = 'shared/observations.yaml'
    const group = { [name]: {} }
    for (const own of [
      { kind: 'choice', answers: group },
      { kind: 'signs', signs: group }
    ]) {
      const value = { growth: { about: 'batch', ...own } }
      expect(refusals('observations.schema.json', value)).not.toEqual([])
      expect(shapeFindings({ path, text: JSON.stringify(value) })).not.toEqual([])
    }
  })

  test('any change to any authored file is refused by both or by neither', () => {
    const files = [...shipped, ...wholeProject()].map(({ path, text }) => ({
      // Words of the shipped trees stand beside the tree that is there.
      path: path.replace(TREES, 'jar'),
      value: parse(text)
    }))
    const any = fc
      .constantFrom(...files)
      .chain(({ path, value }) => changedSomewhere(value).map(changed => ({ path, changed })))
    const seen = { refused: 0, kept: 0 }
    fc.assert(
      fc.property(any, ({ path, changed: { value, at } }) => {
        // The places of time zones are known to the clock alone, not to a schema.
        fc.pre(at.join('/') !== 'hours/zone')
        const found = shapeFindings({ path, text: JSON.stringify(value) })
        // That a rule makes one claim is found later, when its names are linked.
        const refused = refusals(schemaOf(path) ?? '', value).filter(
          ({ instance, keyword }) =>
            !(/^\/rules\/\d+\/then$/.test(instance) && /^m..Properties$/.test(keyword))
        )
        seen[refused.length > 0 ? 'refused' : 'kept']++
        expect(refused.length > 0, `${path} ${at.join('/')}: ${found[0]?.code}`).toBe(
          found.length > 0
        )
      }),
      { numRuns: 400, seed: 20261125 }
    )
    expect(Math.min(seen.refused, seen.kept)).toBeGreaterThan(50)
  })

  test('a day is one that the calendar has, leap years included', () => {
    const days = fc.record({
      year: fc.integer({ min: 1, max: 9999 }),
      month: fc.integer({ min: 0, max: 13 }),
      day: fc.oneof(fc.integer({ min: 0, max: 32 }), fc.integer({ min: 28, max: 31 }))
    })
    const source = { title: 'x', publisher: null, year: null, address: null, kind: 'relayed' }
    const two = (part: number) => String(part).padStart(2, '0')
    fc.assert(
      fc.property(days, ({ year, month, day }) => {
        const on = `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}`
        const value = { guide: { ...source, copy: 'none', checked: { how: 'memory', on } } }
        const text = JSON.stringify(value)
        const found = shapeFindings({ path: 'shared/sources.yaml', text })
        expect(refusals('sources.schema.json', value).length > 0, on).toBe(found.length > 0)
      }),
      {
        numRuns: 3000,
        examples: [[{ year: 1900, month: 2, day: 29 }], [{ year: 2000, month: 2, day: 29 }]]
      }
    )
  })
})

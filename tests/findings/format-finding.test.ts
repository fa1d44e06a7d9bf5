import { describe, expect, test } from 'vitest'
import { type Finding, sortFindings } from '../../src/findings/finding.ts'
import { formatFinding } from '../../src/findings/format-finding.ts'

const at = (line: number, column: number, length = 3, file = 'trees/jar/tree.yaml') => ({
  file,
  line,
  column,
  length
})
const finding = (place: Finding['place'], more: Partial<Finding> = {}): Finding => ({
  code: 'unreachable-question',
  place,
  because: [],
  facts: { question: 'film' },
  ...more
})

describe('a finding is shown with its line and its walk', () => {
  test('the caret stands under what is meant', () => {
    const shown = formatFinding(finding(at(2, 3, 4)), () => 'a: 1\n  film: 2\n')
    expect(shown).toContain('  2 |   film: 2\n    |   ^^^^\n')
  })

  test('a line far too long is shown around the caret', () => {
    const line = `${'x'.repeat(300)}film${'y'.repeat(300)}`
    const shown = formatFinding(finding(at(1, 301, 4)), () => line)
    const [excerpt = '', carets = ''] = shown.split('\n').filter(row => row.includes(' | '))
    expect(excerpt.length).toBeLessThan(120)
    expect(excerpt.slice(carets.indexOf('^'), carets.lastIndexOf('^') + 1)).toBe('film')
  })

  test('an authored line cannot steer the terminal', () => {
    const shown = formatFinding(finding(at(1, 1)), () => 'a\u001b[2J\u202eb')
    expect(shown).not.toContain('\u001b')
    expect(shown).not.toContain('\u202e')
  })

  test('an authored name cannot steer the terminal', () => {
    const facts = { question: 'a\u001b[31m' }
    expect(formatFinding(finding(null, { facts }), () => undefined)).not.toContain('\u001b')
  })

  test('a walk is told on one line', () => {
    const witness = [
      { observation: 'growth', answer: 'fuzzy' },
      { observation: 'smell', answer: 'mild' }
    ]
    const shown = formatFinding(finding(at(1, 1), { witness }), () => 'film:')
    expect(shown).toContain('\n\n  Walk: growth=fuzzy → smell=mild\n\n')
  })
})

describe('findings are told in the order of the files', () => {
  test('by file, then line, then column', () => {
    const places = [at(9, 1), at(2, 7), at(2, 3), at(1, 1, 1, 'shared/observations.yaml')]
    const sorted = sortFindings(places.map(place => finding(place)))
    expect(sorted.map(({ place }) => place)).toEqual([places[3], places[2], places[1], places[0]])
  })

  test('what two trees share is told once', () => {
    const twice = [
      finding(at(1, 1)),
      finding(at(1, 1), { because: [{ label: 'Here', place: at(5, 5) }] })
    ]
    expect(sortFindings(twice)).toHaveLength(1)
  })
})

import { describe, expect, test } from 'vitest'
import english from '../../../locales/en/ui.json' with { type: 'json' }
import spanish from '../../../locales/es/ui.json' with { type: 'json' }
import { CHECKS, judgeSite, mendedPolicies } from '../../../src/places/embed/self-test/judge.ts'
import { lineAllowing, withLines } from '../../../src/places/embed/self-test/policy.ts'
import { sentenceOf } from '../../../src/places/embed/self-test/self-test-texts.ts'
import { answer, GOOD, noScript, refusing, SITES, STRICT, themed } from './broken-sites.ts'

describe('a site', () => {
  test('where all works passes every check', () => {
    expect(judgeSite(GOOD).map(({ standing }) => standing)).toEqual(CHECKS.map(() => 'passes'))
    expect(mendedPolicies(GOOD)).toEqual([])
  })

  test.each(Object.entries(SITES))('with %s is told so, and what to add', (_, site) => {
    const [change, check, found, lines] = site
    const finding = judgeSite({ ...GOOD, ...change }).find(one => one.check === check)
    expect(finding).toMatchObject({ standing: 'broken', found, lines })
  })

  test('whose script does not run is not faulted for what waits for it', () => {
    const findings = judgeSite({ ...GOOD, ...noScript })
    expect(findings.filter(({ standing }) => standing === 'broken').map(one => one.check)).toEqual([
      'script'
    ])
  })

  test('whose reader asks for large text is not faulted', () => {
    const { theme } = themed({ textSize: 54 })
    expect(judgeSite({ ...GOOD, theme }).every(({ standing }) => standing === 'passes')).toBe(true)
  })

  test('without plain pages is told that there are none, not that they are broken', () => {
    const plain = { ...GOOD.plain, answer: answer({ status: 404 }), styled: false }
    expect(judgeSite({ ...GOOD, plain }).at(-1)).toMatchObject({ standing: 'absent' })
  })

  test('under a strict policy gets the whole policy that is enough', () => {
    const violations = refusing(STRICT, 'connect-src', 'frame-src', 'style-src-elem')
    expect(mendedPolicies({ ...GOOD, violations })).toEqual([
      "default-src 'none'; script-src 'self'; connect-src 'self'; frame-src 'self'; style-src 'self'"
    ])
  })
})

describe('a line of a policy', () => {
  test.each([
    ["default-src 'none'", 'connect-src', "connect-src 'self'"],
    // A directive that is written replaces what stood for it: what that allowed goes along.
    ['default-src https://a.example', 'connect-src', "connect-src https://a.example 'self'"],
    ["script-src 'nonce-x'; script-src-elem 'none'", 'script-src-elem', "script-src-elem 'self'"],
    ['SCRIPT-SRC https://a.example', 'script-src-elem', "script-src https://a.example 'self'"],
    [
      "child-src https://b.example; default-src 'none'",
      'frame-src',
      "frame-src https://b.example 'self'"
    ],
    ['', 'font-src', "font-src 'self'"]
  ])('of %j for %s', (policy, refused, line) => {
    expect(lineAllowing(policy, refused, "'self'")).toBe(line)
  })

  test('stands in place of the one that refused', () => {
    expect(withLines("a-src 'none'; b-src x; c-src", ["a-src 'self'"], ['c-src'])).toBe(
      "a-src 'self'; b-src x"
    )
  })
})

test.each([
  ['en', english['self-test']],
  ['es', spanish['self-test']]
])('every finding has its sentence, with no gap left open, in %s', (_, texts) => {
  const sites = [GOOD, ...Object.values(SITES).map(([change]) => ({ ...GOOD, ...change }))]
  const sentences = [...sites, { ...GOOD, ...noScript }]
    .flatMap(judgeSite)
    .map(finding => [finding.found, sentenceOf(texts, finding)] as const)
  expect(sentences.filter(([found, said]) => said === found || said.includes('{{'))).toEqual([])
})

import { describe, expect, test } from 'vitest'
import english from '../../../locales/en/ui.json' with { type: 'json' }
import spanish from '../../../locales/es/ui.json' with { type: 'json' }
import type { ServerAnswer, SiteFacts } from '../../../src/places/embed/self-test/facts.ts'
import {
  CHECKS,
  judgeSite,
  mendedPolicies,
  type SiteCheck
} from '../../../src/places/embed/self-test/judge.ts'
import { lineAllowing, withLines } from '../../../src/places/embed/self-test/policy.ts'
import { sentenceOf } from '../../../src/places/embed/self-test/self-test-texts.ts'

const ORIGIN = 'https://larkspur.example'
const CDN = 'https://files.example'
const NO_HEADERS = { 'x-frame-options': '', 'content-security-policy': '' }
const answer = (change: Partial<ServerAnswer> = {}): ServerAnswer => ({
  status: 200,
  kind: 'text/javascript',
  headers: NO_HEADERS,
  ...change
})
const sent = (headers: Partial<ServerAnswer['headers']>) =>
  answer({ headers: { ...NO_HEADERS, ...headers } })

/** A site where everything works. */
const GOOD: SiteFacts = {
  origin: ORIGIN,
  filesOrigin: ORIGIN,
  violations: [],
  script: {
    answer: answer(),
    line: 'fits',
    byLine: true,
    ran: true,
    address: '/j/jarside-walk.js'
  },
  integrity: null,
  element: { defined: true, ableBrowser: true, shows: 'question', styled: true, waited: 15 },
  office: { answer: answer(), isPack: true },
  frame: { answer: answer(), inside: 'question' },
  plain: { answer: answer(), styled: true, address: `${ORIGIN}/j/plain/index.html` },
  theme: { hiddenBy: null, scaledBy: null, width: 640, height: 900, textSize: 18 },
  trustedTypes: false
}
const refusing = (policy: string, ...directives: readonly string[]) =>
  directives.map(directive => ({ directive, blocked: `${ORIGIN}/j/x`, policy }))
const unread = { office: { answer: null, isPack: false }, plain: { ...GOOD.plain, answer: null } }
const noScript: Partial<SiteFacts> = {
  script: { ...GOOD.script, ran: false, byLine: false },
  element: { ...GOOD.element, defined: false, shows: 'nothing', styled: false },
  theme: null
}
const byLine = (line: SiteFacts['script']['line']) => ({
  script: { ...GOOD.script, line, byLine: false }
})
const themed = (change: Partial<NonNullable<SiteFacts['theme']>>) => ({
  theme: { hiddenBy: null, scaledBy: null, width: 640, height: 900, textSize: 18, ...change }
})
const HEADER = "default-src 'self'"
const STRICT = "default-src 'none'; script-src 'self'"

/** What is wrong with a site, and what is found of it: check, sentence, lines to add. */
const SITES: Readonly<
  Record<string, readonly [Partial<SiteFacts>, SiteCheck, string, readonly string[]]>
> = {
  'a policy without scripts': [
    {
      ...noScript,
      violations: refusing("default-src 'self'; script-src 'none'", 'script-src-elem')
    },
    'script',
    'policy',
    ["script-src 'self'"]
  ],
  'files on a server that the policy does not name': [
    { ...noScript, filesOrigin: CDN, violations: refusing(HEADER, 'script-src-elem') },
    'script',
    'policy',
    [`script-src 'self' ${CDN}`]
  ],
  'files on a server that lets nobody read them': [
    {
      ...noScript,
      filesOrigin: CDN,
      script: { ...GOOD.script, ran: false, byLine: false, answer: null }
    },
    'script',
    'other-site',
    [`Access-Control-Allow-Origin: ${ORIGIN}`]
  ],
  'a script sent as text': [
    {
      ...noScript,
      script: { ...GOOD.script, ran: false, byLine: false, answer: answer({ kind: 'text/plain' }) }
    },
    'script',
    'kind',
    ['Content-Type: text/javascript']
  ],
  'a script that is not there': [
    {
      ...noScript,
      script: { ...GOOD.script, ran: false, byLine: false, answer: answer({ status: 404 }) }
    },
    'script',
    'status',
    []
  ],
  'a line without its kind': [
    byLine('no-module'),

    'script',
    'no-module',
    ['<script type="module" src="/j/jarside-walk.js"></script>']
  ],
  'a line that loads nothing': [
    byLine('fits'),
    'script',
    'line',
    ['<script type="module" nonce="…" src="/j/jarside-walk.js"></script>']
  ],
  'a line whose integrity value is of another build': [
    { ...byLine('fits'), integrity: { written: 'sha384-old', right: 'sha384-new' } },
    'script',
    'line-integrity',
    []
  ],
  'an integrity value of another build': [
    { integrity: { written: 'sha384-old', right: 'sha384-new' } },
    'integrity',
    'wrong',
    ['integrity="sha384-new"']
  ],
  'another script of the same name': [
    { element: { ...GOOD.element, defined: false, shows: 'nothing' } },
    'element',
    'undefined',
    []
  ],
  'an old browser': [
    { element: { ...GOOD.element, defined: false, ableBrowser: false, shows: 'nothing' } },
    'element',
    'old',
    []
  ],
  'words that may not be fetched': [
    {
      ...unread,
      element: { ...GOOD.element, shows: 'trouble' },
      violations: refusing(STRICT, 'connect-src')
    },
    'words',
    'policy',
    ["connect-src 'self'"]
  ],
  'a folder that is not whole': [
    { element: { ...GOOD.element, shows: 'trouble' } },
    'words',
    'trouble',
    []
  ],
  'an office on a server that lets nobody read it': [
    { ...unread, filesOrigin: CDN },
    'office',
    'other-site',
    [`Access-Control-Allow-Origin: ${ORIGIN}`]
  ],
  'a sign-in page in place of the office': [
    { office: { answer: answer(), isPack: false } },
    'office',
    'no-pack',
    []
  ],
  'style sheets that do not take hold': [
    { element: { ...GOOD.element, styled: false } },
    'style',
    'none',
    []
  ],
  'a theme that hides the box around it': [
    themed({ hiddenBy: { box: 'div.widget', rule: 'display: none' } }),
    'theme',
    'hidden',
    ['div.widget { display: block !important }']
  ],
  'a narrow column': [
    themed({ width: 180 }),
    'theme',
    'narrow',
    ['jarside-walk { min-width: 280px !important }']
  ],
  'a theme that cuts it off': [
    themed({ height: 0 }),
    'theme',
    'low',
    ['jarside-walk { height: auto !important }']
  ],
  'a theme that blows up its text': [
    themed({ textSize: 90, scaledBy: { box: 'main', rule: 'zoom: 5' } }),
    'theme',
    'text-size',
    ['main { zoom: 1 !important }']
  ],
  'trusted types': [
    {
      trustedTypes: true,
      violations: refusing(
        `${HEADER}; require-trusted-types-for 'script'`,
        'require-trusted-types-for'
      )
    },
    'trusted-types',
    'required',
    [HEADER]
  ],
  'a typeface that is refused': [
    { violations: refusing(STRICT, 'font-src') },
    'rest',
    'policy',
    ["font-src 'self'"]
  ],
  'no frames allowed': [
    { frame: { answer: null, inside: 'empty' }, violations: refusing(STRICT, 'frame-src') },
    'frame',
    'policy',
    ["frame-src 'self'"]
  ],
  'a server that forbids framing by an old header': [
    { frame: { answer: sent({ 'x-frame-options': 'DENY' }), inside: 'empty' } },
    'frame',
    'option',
    ["frame-ancestors 'self'"]
  ],
  'a server that forbids framing by its policy': [
    {
      frame: {
        answer: sent({
          'content-security-policy': "frame-ancestors 'none'",
          'x-frame-options': 'DENY'
        }),
        inside: 'empty'
      }
    },
    'frame',
    'ancestors',
    ["frame-ancestors 'self'"]
  ],
  'a frame whose own policy stops its script': [
    {
      frame: {
        answer: sent({ 'content-security-policy': "default-src 'none'" }),
        inside: 'no-question'
      }
    },
    'frame',
    'no-question',
    ["script-src 'self'", "connect-src 'self'"]
  ],
  'plain pages whose style is refused': [
    { plain: { ...GOOD.plain, styled: false }, violations: refusing(STRICT, 'style-src-elem') },
    'plain',
    'policy',
    ["style-src 'self'"]
  ]
}

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

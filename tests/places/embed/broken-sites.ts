import type { ServerAnswer, SiteFacts } from '../../../src/places/embed/self-test/facts.ts'
import type { SiteCheck } from '../../../src/places/embed/self-test/judge.ts'

const ORIGIN = 'https://larkspur.example'
const CDN = 'https://files.example'
const NO_HEADERS = { 'x-frame-options': '', 'content-security-policy': '' }
export const answer = (change: Partial<ServerAnswer> = {}): ServerAnswer => ({
  status: 200,
  kind: 'text/javascript',
  headers: NO_HEADERS,
  ...change
})
const sent = (headers: Partial<ServerAnswer['headers']>) =>
  answer({ headers: { ...NO_HEADERS, ...headers } })

/** A site where everything works. */
export const GOOD: SiteFacts = {
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
export const refusing = (policy: string, ...directives: readonly string[]) =>
  directives.map(directive => ({ directive, blocked: `${ORIGIN}/j/x`, policy }))
const unread = { office: { answer: null, isPack: false }, plain: { ...GOOD.plain, answer: null } }
export const noScript: Partial<SiteFacts> = {
  script: { ...GOOD.script, ran: false, byLine: false },
  element: { ...GOOD.element, defined: false, shows: 'nothing', styled: false },
  theme: null
}
const byLine = (line: SiteFacts['script']['line']) => ({
  script: { ...GOOD.script, line, byLine: false }
})
export const themed = (change: Partial<NonNullable<SiteFacts['theme']>>) => ({
  theme: { hiddenBy: null, scaledBy: null, width: 640, height: 900, textSize: 18, ...change }
})
const HEADER = "default-src 'self'"
export const STRICT = "default-src 'none'; script-src 'self'"

/** What is wrong with a site, and what is found of it: check, sentence, lines to add. */
export const SITES: Readonly<
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

import type { ServerAnswer, SiteFacts, Violation } from './facts.ts'
import { directivesOf, lineAllowing, withLines } from './policy.ts'

/** What is tried, in the order in which one hides the next. */
export const CHECKS = [
  ...(['script', 'integrity', 'element', 'words', 'office', 'style', 'theme'] as const),
  ...(['trusted-types', 'rest', 'frame', 'plain'] as const)
]
export type SiteCheck = (typeof CHECKS)[number]

/** What came of one check. */
export interface SiteFinding {
  readonly check: SiteCheck
  /** `untested`: something before it is broken; `absent`: it was not put up, and need not be. */
  readonly standing: 'passes' | 'broken' | 'untested' | 'absent'
  /** Which sentence says it, and what stands in its gaps. */
  readonly found: string
  readonly gaps: Readonly<Record<string, string>>
  /** What to add, as it is written. */
  readonly lines: readonly string[]
}

/** An element narrower than this breaks its words, as docs/embedding.md says. */
const LEAST_WIDTH = 280
/** Less height than this holds no question. */
const LEAST_HEIGHT = 120
/** Text that can be read, in CSS pixels; a reader who asks for twice the size gets 36. */
const TEXT_SIZES = { least: 12, most: 40 }
const JAVASCRIPT = /^(?:text|application)\/(?:x-)?(?:java|ecma)script$/
const TRUSTED_TYPES = 'require-trusted-types-for'

/** Judges what was measured: one finding for each check, in their order. */
export function judgeSite(facts: SiteFacts): readonly SiteFinding[] {
  return CHECKS.map(check => {
    const [standing, found, gaps = {}, lines = []] = JUDGES[check](facts)
    return { check, standing, found, gaps, lines }
  })
}

/** Every policy that refused something, whole, with what the findings add to it. */
export function mendedPolicies(facts: SiteFacts): readonly string[] {
  const policies = [...new Set(facts.violations.map(({ policy }) => policy))]
  return policies.map(policy => {
    const own = facts.violations.filter(one => one.policy === policy)
    return withLines(policy, linesFor(facts, own), facts.trustedTypes ? [TRUSTED_TYPES] : [])
  })
}

type Judged = readonly [
  standing: SiteFinding['standing'],
  found: string,
  gaps?: Readonly<Record<string, string>>,
  lines?: readonly string[]
]

const JUDGES: Readonly<Record<SiteCheck, (facts: SiteFacts) => Judged>> = {
  script(facts) {
    const { ran, byLine, line, answer, address } = facts.script
    const lineOf = (more: string) => `<script type="module"${more} src="${address}"></script>`
    if (ran && (byLine || line === 'none')) return ['passes', 'ok']
    if (line === 'no-module') return ['broken', 'no-module', {}, [lineOf('')]]
    if (ran) {
      return isOfAnotherBuild(facts)
        ? ['broken', 'line-integrity']
        : ['broken', 'line', {}, [lineOf(' nonce="…"')]]
    }
    return (
      refused(facts, ['script-src']) ??
      unanswered(facts, answer) ??
      (answer !== null && !JAVASCRIPT.test(answer.kind)
        ? ['broken', 'kind', { kind: answer.kind || '?' }, ['Content-Type: text/javascript']]
        : ['broken', 'failed'])
    )
  },
  integrity(facts) {
    if (facts.integrity === null) return ['passes', 'none']
    const { right } = facts.integrity
    if (right === null) return ['untested', 'unknown']
    return isOfAnotherBuild(facts)
      ? ['broken', 'wrong', {}, [`integrity="${right}"`]]
      : ['passes', 'ok']
  },
  element({ element, script }) {
    if (element.defined) return ['passes', 'ok']
    if (!script.ran) return ['untested', 'waits']
    return element.ableBrowser ? ['broken', 'undefined'] : ['broken', 'old']
  },
  words(facts) {
    const { defined, shows, waited } = facts.element
    if (!defined) return ['untested', 'waits']
    if (shows === 'question') return ['passes', 'ok']
    return (
      refused(facts, ['connect-src']) ??
      (shows === 'trouble'
        ? ['broken', 'trouble']
        : ['broken', 'nothing', { seconds: String(waited) }])
    )
  },
  office(facts) {
    const { answer, isPack } = facts.office
    if (isPack) return ['passes', 'ok']
    if (answer !== null && answer.status === 404) return ['broken', 'missing']
    return refused(facts, ['connect-src']) ?? unanswered(facts, answer) ?? ['broken', 'no-pack']
  },
  style({ element }) {
    if (element.shows === 'nothing') return ['untested', 'waits']
    return element.styled ? ['passes', 'ok'] : ['broken', 'none']
  },
  theme({ theme }) {
    if (theme === null) return ['untested', 'waits']
    const { hiddenBy, scaledBy } = theme
    if (hiddenBy !== null) {
      const { box, rule } = hiddenBy
      return ['broken', 'hidden', { box, rule }, [`${box} { ${SHOWN[rule] ?? rule} }`]]
    }
    const { width, height, textSize } = theme
    const gaps = { width: round(width), height: round(height), size: round(textSize) }
    if (width < LEAST_WIDTH) {
      return ['broken', 'narrow', gaps, [`jarside-walk { min-width: ${LEAST_WIDTH}px !important }`]]
    }
    if (height < LEAST_HEIGHT) {
      return ['broken', 'low', gaps, ['jarside-walk { height: auto !important }']]
    }
    // A reader may ask for any size; a page may not.
    if (scaledBy !== null && (textSize < TEXT_SIZES.least || textSize > TEXT_SIZES.most)) {
      const [name = ''] = scaledBy.rule.split(':')
      const line = `${scaledBy.box} { ${name}: ${name === 'zoom' ? 1 : 'none'} !important }`
      return ['broken', 'text-size', { ...gaps, ...scaledBy }, [line]]
    }
    return ['passes', 'ok', gaps]
  },
  'trusted-types'({ trustedTypes, violations }) {
    if (!trustedTypes) return ['passes', 'none']
    const policy = violations.find(({ directive }) => directive === TRUSTED_TYPES)?.policy
    const mended = policy === undefined ? [] : [withLines(policy, [], [TRUSTED_TYPES])]
    return [
      'broken',
      'required',
      { directive: `${TRUSTED_TYPES} 'script'` },
      mended.filter(Boolean)
    ]
  },
  rest: facts =>
    refused(
      facts,
      facts.violations.map(({ directive }) => base(directive)).filter(isOfTheRest)
    ) ?? ['passes', 'ok'],
  frame(facts) {
    const { inside, answer } = facts.frame
    if (inside === 'question') return ['passes', 'ok']
    const byPolicy = refused(facts, ['frame-src', 'child-src'])
    if (byPolicy !== undefined) return byPolicy
    const { 'x-frame-options': option = '', 'content-security-policy': policy = '' } =
      answer?.headers ?? {}
    // A server that names ancestors in its policy is not asked for the older header.
    const ancestors = directivesOf(policy).get('frame-ancestors')
    const allowing = [lineAllowing(policy, 'frame-ancestors', source(facts, 'site'))]
    if (inside === 'empty' && ancestors !== undefined) {
      const now = `frame-ancestors ${ancestors.join(' ')}`
      return ['broken', 'ancestors', { directive: now }, allowing]
    }
    if (inside === 'empty' && option !== '')
      return ['broken', 'option', { header: `X-Frame-Options: ${option}` }, allowing]
    const none = unanswered(facts, answer)
    if (none !== undefined && inside !== 'unseen') return none
    if (inside === 'unseen') return ['untested', 'unseen']
    if (inside === 'empty') return ['broken', 'empty', { header: 'X-Frame-Options' }]
    if (!facts.script.ran) return ['untested', 'waits']
    const own = ['script-src', 'connect-src'].map(one => lineAllowing(policy, one, "'self'"))
    return ['broken', 'no-question', {}, own]
  },
  plain(facts) {
    const { answer, styled, address } = facts.plain
    if (answer !== null && answer.status === 404) return ['absent', 'missing', { address }]
    if (answer !== null && answer.status < 400 && styled) return ['passes', 'ok']
    return (
      refused(facts, ['style-src']) ??
      (answer === null ? refused(facts, ['connect-src']) : undefined) ??
      unanswered(facts, answer) ?? ['broken', 'unstyled']
    )
  }
}

/** What shows again a box that a theme hides. */
const SHOWN: Readonly<Record<string, string>> = {
  'display: none': 'display: block !important',
  'visibility: hidden': 'visibility: visible !important',
  'opacity: 0': 'opacity: 1 !important',
  'overflow: hidden': 'height: auto !important; overflow: visible !important'
}

const isOfAnotherBuild = ({ integrity }: SiteFacts) =>
  integrity !== null &&
  integrity.right !== null &&
  !integrity.written.split(/\s+/).includes(integrity.right)

const round = (pixels: number) => String(Math.round(pixels))
const base = (directive: string) => directive.replace(/-(elem|attr)$/, '')

/** Directives that no other check speaks of. */
const isOfTheRest = (directive: string) =>
  !['script-src', 'connect-src', 'style-src', 'frame-src', 'child-src', TRUSTED_TYPES].includes(
    directive
  )

/** As a policy names where the files come from, or for the files' own server where the site is. */
const source = ({ origin, filesOrigin }: SiteFacts, of: 'files' | 'site') =>
  origin === filesOrigin ? "'self'" : of === 'files' ? filesOrigin : origin

function refused(facts: SiteFacts, directives: readonly string[]): Judged | undefined {
  const own = facts.violations.filter(({ directive }) => directives.includes(base(directive)))
  if (own.length === 0) return undefined
  const named = [...new Set(own.map(({ directive }) => base(directive)))].join(', ')
  return ['broken', 'policy', { directive: named }, linesFor(facts, own)]
}

const linesFor = (facts: SiteFacts, violations: readonly Violation[]) => [
  ...new Set(
    violations
      .filter(({ directive }) => directive !== TRUSTED_TYPES)
      .map(({ policy, directive }) => lineAllowing(policy, directive, source(facts, 'files')))
  )
]

function unanswered(facts: SiteFacts, answer: ServerAnswer | null): Judged | undefined {
  if (answer !== null) {
    return answer.status >= 400
      ? ['broken', 'status', { status: String(answer.status) }]
      : undefined
  }
  if (facts.origin === facts.filesOrigin) return ['broken', 'no-answer']
  return ['broken', 'other-site', {}, [`Access-Control-Allow-Origin: ${facts.origin}`]]
}

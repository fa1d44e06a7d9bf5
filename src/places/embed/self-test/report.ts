import type { SiteFacts } from './facts.ts'
import { judgeSite, mendedPolicies, type SiteFinding } from './judge.ts'
import { type SelfTestTexts, sentenceOf, textAt } from './self-test-texts.ts'

const MARKS: Readonly<Record<SiteFinding['standing'], string>> = {
  passes: '✓',
  broken: '✗',
  untested: '?',
  absent: '–'
}

/** An element with what is in it; text is never read as HTML. */
function part(name: string, named: string, ...inside: readonly (Element | string)[]): Element {
  const element = document.createElement(name)
  if (named !== '') element.className = named
  element.append(...inside)
  return element
}

/** What is written word for word: a press selects it whole, so that it can be copied. */
const toCopy = (line: string) => part('pre', 'line', part('code', '', line))

/** The report of what was measured, in one language. */
export function reportOf(facts: SiteFacts, texts: SelfTestTexts): Element {
  const findings = judgeSite(facts)
  const text = (...keys: readonly string[]) => textAt(texts, keys) ?? ''
  const rows = findings.map(finding => {
    const { check, standing, lines } = finding
    const mark = part('span', 'mark', MARKS[standing])
    mark.setAttribute('aria-hidden', 'true')
    const row = part(
      'li',
      standing,
      mark,
      part('h2', '', text('tried', check)),
      part(
        'p',
        '',
        part('strong', '', text('standing', standing)),
        ` ${sentenceOf(texts, finding)}`
      ),
      ...lines.map(toCopy)
    )
    row.setAttribute('data-check', check)
    row.setAttribute('data-standing', standing)
    return row
  })
  const policies = mendedPolicies(facts).filter(policy => policy !== '')
  return part(
    'div',
    'report',
    part('ol', 'checks', ...rows),
    ...(policies.length === 0
      ? []
      : [part('section', 'whole', part('h2', '', text('whole')), ...policies.map(headerOf))])
  )
}

const headerOf = (policy: string) => toCopy(`Content-Security-Policy: ${policy}`)

/** What stands above the report: what came of it all, or that it is not there yet. */
export function headOf(facts: SiteFacts | null, texts: SelfTestTexts): Element {
  const text = (key: string) => textAt(texts, [key]) ?? ''
  const broken = facts === null ? 0 : judgeSite(facts).filter(isBroken).length
  const sum =
    facts === null
      ? text('testing')
      : broken === 0
        ? text('all-pass')
        : (textAt(texts, ['broken'], { count: String(broken) }) ?? '')
  const status = part('p', broken > 0 ? 'sum broken' : 'sum', sum)
  status.setAttribute('role', 'status')
  return part('header', '', part('h1', '', text('title')), part('p', '', text('intro')), status)
}

const isBroken = ({ standing }: SiteFinding) => standing === 'broken'

import { texts, tree } from 'virtual:jarside/self-test'
import sheet from '../../../style/self-test.css?inline'
import type { SiteFacts } from './facts.ts'
import { measureSite, violationsFrom } from './measure.ts'
import { headOf, reportOf } from './report.ts'
import { type SelfTestTexts, textAt } from './self-test-texts.ts'

/*
 * Tried out on whatever page this script is put into: its policy, its theme. It imports nothing that the
 * element is made of, so that what breaks that one is still told of.
 */

const ENGLISH = 'en'
const violations = violationsFrom(document)
const asked = new URLSearchParams(location.search).get('lang')
const spoken = [asked ?? '', ...navigator.languages].map(tag => tag.split('-')[0] ?? '')
const isGroup = (part: unknown): part is SelfTestTexts => typeof part === 'object' && part !== null
let tag = spoken.find(one => Object.hasOwn(texts, one)) ?? ENGLISH
let facts: SiteFacts | null = null

document.getElementById('self-test')?.remove()
const host = document.createElement('jarside-self-test')
const inPage = document.createElement('div')
const shadow = host.attachShadow({ mode: 'open' })
const style = new CSSStyleSheet()
style.replaceSync(sheet)
shadow.adoptedStyleSheets = [style]
// A page has one main part; where it is somebody else's, this is none.
const whole = document.createElement(
  document.querySelector('main, [role="main"]') ? 'section' : 'main'
)
whole.className = 'self-test'
const page = document.createElement('div')
const apart = document.createElement('div')
apart.className = 'trial'
const heading = document.createElement('h2')
whole.append(page, apart)
shadow.append(whole)
document.body.append(host, inPage)
show()

const measured = async () => {
  // The page's own lines first: what they load counts.
  if (document.readyState !== 'complete') {
    await new Promise(go => addEventListener('load', go, { once: true }))
  }
  facts = await measureSite({ inPage, apart }, tree, violations)
  show()
}
void measured()

function show() {
  const own = texts[tag]
  const words = isGroup(own) ? own : {}
  whole.lang = tag
  whole.ariaLabel = textAt(words, ['title'])
  page.replaceChildren(
    languages(),
    headOf(facts, words),
    ...(facts === null ? [] : [reportOf(facts, words)])
  )
  whole.toggleAttribute('data-done', facts !== null)
  heading.textContent = textAt(words, ['trial'])
  if (facts === null) apart.prepend(heading)
  // An empty frame tells nobody anything.
  else apart.hidden = facts.frame.inside === 'empty'
}

/** The languages that there are words of, by their own names. */
function languages(): Element {
  const nav = document.createElement('nav')
  for (const one of Object.keys(texts)) {
    const button = document.createElement('button')
    button.type = 'button'
    button.lang = one
    button.textContent = new Intl.DisplayNames([one], { type: 'language' }).of(one) ?? one
    button.setAttribute('aria-pressed', String(one === tag))
    button.addEventListener('click', () => {
      tag = one
      show()
    })
    nav.append(button)
  }
  return nav
}

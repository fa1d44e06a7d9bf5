import type { OfficePack } from '../office/office-pack.ts'
import { referralFor } from '../office/referral.ts'
import type { PlainWalk } from '../plain/stop.ts'
import type { Tree } from '../tree/tree.ts'
import { directionOf } from '../words/direction.ts'
import { footNumbers } from '../words/foot-numbers.ts'
import { saidCall } from '../words/said-call.ts'
import type { SourceLedger } from '../words/sources.ts'
import type { Words } from '../words/words.ts'

/** What the pages of one tree in one language are written from. */
export interface PlainTree {
  readonly tree: Tree
  readonly walk: PlainWalk
  readonly words: Words
  /** Beside a draft translation the English of what people are told to do; else null. */
  readonly english: Words | null
  readonly sources: SourceLedger
  readonly office: OfficePack | null
  readonly today: Date
}

/** A whole page: what is the same on each of them stands here. */
export interface PlainPage {
  readonly words: Words
  readonly office: OfficePack | null
  readonly today: Date
  readonly title: string
  readonly main: string
  /** The way from this page to the folder that holds the style sheet. */
  readonly up: string
  /** Links above everything, as HTML. */
  readonly nav: string
  /** Of pages in the middle a search engine keeps none. */
  readonly indexed: boolean
}

export const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, sign => `&#${sign.charCodeAt(0)};`)

const dial = (phone: string): string =>
  `<a href="tel:${phone.replace(/[^\d+]/g, '')}" dir="ltr">${escaped(phone)}</a>`

/** A text, and beneath it the English where a translation is a draft. */
export function both(text: string, english: string | null): string {
  return english === null || english === text
    ? escaped(text)
    : `${escaped(text)} <span class="second" lang="en">${escaped(english)}</span>`
}

export function call(name: string, phone: string | null): string {
  return phone === null ? escaped(name) : `${escaped(name)}: ${dial(phone)}`
}

/** A page with the numbers to call. It needs one other file, its style sheet. */
export function plainPage(page: PlainPage): string {
  const { words, office, today, title, main, up, nav, indexed } = page
  const desk = saidCall(referralFor(office, 'office', today), words)
  const numbers = [
    ...footNumbers(words, office?.country).map(({ name, phone }) => call(name, phone)),
    ...(desk.phone === null ? [] : [call(desk.name, desk.phone)])
  ]
  return `<!doctype html>
<html lang="${words.tag}" dir="${directionOf(words.tag)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
${indexed ? '' : '<meta name="robots" content="noindex">\n'}<title>${escaped(title)}</title>
<link rel="stylesheet" href="${up}plain.css">
</head>
<body>
<header><nav>${nav}</nav></header>
<main>
${main}
</main>
<footer>
<h2>${escaped(words.t('ui:who-to-call'))}</h2>
<ul class="numbers">${numbers.map(number => `<li>${number}</li>`).join('')}</ul>
<p>${escaped(words.t('ui:education'))}</p>
</footer>
</body>
</html>
`
}

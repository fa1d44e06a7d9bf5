import type { Page, Route } from 'playwright-core'
import { PSEUDO, PSEUDO_RTL, pseudo, textsIn } from '../helpers/pseudo.ts'

type Swap = (text: string) => string

/** A name of a thing in the code, which stands in the same files as the texts. */
const NAME = /^[a-z0-9-]*$/

/** The texts that are left as they are, because a name in the code may be written alike. */
export const LEFT_ALONE = [...textsIn('en').values()].filter(text => NAME.test(text))

/** The English turned into the made language, wherever it is served. */
export function accentedEnglish(): Swap {
  const known = new Set([...textsIn('en').values()].filter(text => !NAME.test(text)))
  return text => (known.has(text) ? pseudo(text, PSEUDO) : text)
}

/** Each Arabic text replaced by the English of the same key, written from the right. */
export function turnedEnglish(): Swap {
  const english = textsIn('en')
  const made = new Map(
    [...textsIn('ar')]
      .filter(([, text]) => /\p{Script=Arabic}/u.test(text))
      .map(([key, text]) => [plainly(text), pseudo(english.get(key) ?? text, PSEUDO_RTL)])
  )
  return text => made.get(plainly(text)) ?? text
}

/** Without the isolates that loading puts around what runs from the left. */
const plainly = (text: string): string => text.replace(/[\u2066-\u2069]/g, '')

function swapped(value: unknown, swap: Swap): unknown {
  if (typeof value === 'string') return swap(value)
  if (Array.isArray(value)) return value.map(each => swapped(each, swap))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, swapped(each, swap)]))
}

/** Texts stand in scripts as data in one long literal, or each as a literal of its own. */
function inScript(script: string, swap: Swap): string {
  const data = script.replace(/JSON\.parse\(`((?:\\.|[^`\\])*)`\)/gs, (_, literal: string) => {
    const json = literal.replace(/\\([\\`$])/g, '$1')
    const texts = JSON.stringify(swapped(JSON.parse(json), swap))
    return `JSON.parse(\`${texts.replace(/[\\`$]/g, '\\$&')}\`)`
  })
  return data.replace(/(["`])((?:\\.|(?!\1)[^\\\n])*)\1/g, (whole, quote: string, text: string) => {
    if (text.length > 600 || text.includes('${')) return whole
    const plain = text.replace(/\\(["`'\\$])/g, '$1')
    const other = swap(plain)
    return other === plain
      ? whole
      : `${quote}${other.replace(/[\\$]|["`]/g, sign => (sign === quote || sign === '\\' || sign === '$' ? `\\${sign}` : sign))}${quote}`
  })
}

/** By address and made language: the same file is asked for by every page of a test. */
const changedBefore = new Map<Swap, Map<string, string>>()

/** Has a page get its words in a made language: whatever it asks for is changed on the way. */
export async function speakPseudo(page: Page, swap: Swap): Promise<void> {
  await page.route(/\.(?:js|json)(?:\?|$)/, async (route: Route) => {
    const response = await route.fetch()
    const body = await response.text()
    if (!response.ok() || /office\.json/.test(route.request().url())) {
      return route.fulfill({ response })
    }
    const { pathname } = new URL(route.request().url())
    const before = changedBefore.get(swap)?.get(pathname)
    const changed =
      before ??
      (pathname.endsWith('.json')
        ? JSON.stringify(swapped(JSON.parse(body), swap))
        : inScript(body, swap))
    changedBefore.set(swap, (changedBefore.get(swap) ?? new Map()).set(pathname, changed))
    return route.fulfill({ response, body: changed })
  })
}

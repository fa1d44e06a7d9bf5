import { type Language, preferred } from '../../words/languages.ts'

/** The language of an element: its own, else the closest in the page around it, else the reader's. */
export function languageOf(element: Element, languages: readonly Language[]): string {
  const said = saidAround(element)
  return preferred(languages, said === null ? navigator.languages : [said])
}

/** The closest `lang`, out of every shadow root; an empty one says that nobody knows. */
function saidAround(element: Element): string | null {
  for (let at: globalThis.Node | null = element; at !== null; at = above(at)) {
    const lang = at instanceof Element ? at.getAttribute('lang')?.trim() : undefined
    if (lang) return lang
  }
  return null
}

const above = (at: globalThis.Node) => (at instanceof ShadowRoot ? at.host : at.parentNode)

import { type TextFault, type TextPair, unlike } from './pair.ts'

/** Marks that a translation has as often as the English. */
const COUNTED = /[“”]|\*\*|·/g

/** The English words of a quote, in brackets after it. */
const IN_ENGLISH = /\([^()]*“[^”]*”[^()]*\)/g

const times = (text: string, mark: RegExp) => text.match(mark)?.length ?? 0

/** Quotes, brackets, question marks and what ends a text, as the language writes them. */
export function markFaults({ english, target }: TextPair, tag: string): readonly TextFault[] {
  const adds: string[] = []
  const lacks: string[] = []
  if (/["'`]|\s{2,}|^\s|\s$|\s[,.;:!?](?!\d)|,,|\.\.(?!\.)/.test(target)) adds.push('a stray mark')
  if (times(target, /\(/g) !== times(target, /\)/g)) lacks.push('a bracket')
  if (tag === 'es') {
    if (times(target, /¿/g) !== times(target, /\?/g)) lacks.push('¿ or ?')
    if (times(target, /¡/g) !== times(target, /!/g)) lacks.push('¡ or !')
    if (times(target, /\?/g) !== times(english, /\?/g)) lacks.push('a question')
  }
  const close = (text: string) => /[.?!:…](?=[”)]*$)/.exec(text)?.[0] ?? ''
  if (tag === 'es' && close(english) !== close(target)) lacks.push(`the end “${close(english)}”`)
  const counted = unlike(
    'marks',
    english.match(COUNTED) ?? [],
    target.replace(IN_ENGLISH, '').match(COUNTED) ?? []
  )
  const all = [...lacks, ...(counted?.lacks ?? [])]
  const more = [...adds, ...(counted?.adds ?? [])]
  return all.length + more.length > 0 ? [{ rule: 'marks', lacks: all, adds: more }] : []
}

const LATIN = /\p{Script=Latin}/u
/** By language, the letters that its texts are written in (Unicode script names). */
const SCRIPTS: Readonly<Record<string, RegExp>> = {
  ar: /\p{Script=Arabic}/u,
  es: LATIN,
  fa: /\p{Script=Arabic}/u,
  fil: LATIN,
  fr: LATIN,
  ht: LATIN,
  ko: /\p{Script=Hangul}/u,
  pt: LATIN,
  ru: /\p{Script=Cyrillic}/u,
  vi: LATIN,
  zh: /\p{Script=Han}/u
}
/** What turns the direction of writing, and letters that only look like those of the language. */
const STRAY = /[\u202a-\u202e\u200e\u200f]/u

/** Letters of another script, none of its own, or marks that turn the direction of writing. */
export function scriptFaults({ english, target }: TextPair, tag: string): readonly TextFault[] {
  const own = SCRIPTS[tag.split('-')[0] ?? '']
  if (own === undefined) return []
  const letters = target.replace(/\{\{[^}]*\}\}/g, '').match(/\p{L}/gu) ?? []
  const said = english.replace(/\{\{[^}]*\}\}/g, '').match(/\p{L}{3,}/gu) ?? []
  const adds: string[] = []
  if (STRAY.test(target)) adds.push('a mark that turns the direction')
  const strange = own === LATIN ? letters.filter(letter => !LATIN.test(letter)) : []
  if (strange.length > 0) adds.push(...new Set(strange))
  const lacks =
    said.length > 2 && !letters.some(letter => own.test(letter)) ? ['its own letters'] : []
  return adds.length + lacks.length > 0 ? [{ rule: 'script', lacks, adds }] : []
}

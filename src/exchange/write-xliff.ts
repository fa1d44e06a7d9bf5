import { element, escaped } from '../tables/xml.ts'
import type { ExchangeState, ExchangeText } from './exchange-text.ts'
import { partsOf } from './inline.ts'

/** The namespace of XLIFF 2.0 and 2.1 (OASIS: one for both). */
export const XLIFF = 'urn:oasis:names:tc:xliff:document:2.0'

/** Categories of the notes that a unit carries. */
export const NOTES = { most: 'max-length', from: 'made-from' } as const

/** XLIFF has four states; a stale text is one that has to be translated again. */
const STATES: Readonly<Record<ExchangeState, string>> = {
  missing: 'initial',
  stale: 'initial',
  draft: 'translated',
  reviewed: 'final'
}

/**
 * Texts as an XLIFF 2.1 document, core alone: one `file` for each of ours, one `unit` for each text.
 *
 * Gaps, links and phone numbers are `ph`, which a translator's program lets nobody edit. What XML
 * cannot hold is written as `cp`. `rightToLeft`: how the language is written.
 */
export function xliffOf(
  texts: readonly ExchangeText[],
  { from, to, rightToLeft }: { from: string; to: string; rightToLeft: boolean }
): string {
  const byFile = new Map<string, ExchangeText[]>()
  for (const text of texts) {
    const [file = ''] = text.id.split(':')
    const all = byFile.get(file)
    if (all) all.push(text)
    else byFile.set(file, [text])
  }
  const files = [...byFile].map(([file, all]) =>
    element(
      'file',
      {
        id: file,
        original: `${file}.json`,
        canResegment: 'no',
        'xml:space': 'preserve',
        ...(rightToLeft && { trgDir: 'rtl' })
      },
      ...all.map(text => `\n${unitOf(text)}`),
      '\n'
    )
  )
  const root = { xmlns: XLIFF, version: '2.1', srcLang: from, trgLang: to }
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element('xliff', root, ...files.map(file => `\n${file}`), '\n')}\n`
}

function unitOf(text: ExchangeText): string {
  const codes = new Codes()
  const source = element('source', {}, codes.put(text.english))
  const target = text.target === null ? '' : element('target', {}, codes.put(text.target))
  const note = (category: string, content: string) =>
    element('note', { category, priority: category === 'context' ? '1' : '5' }, escaped(content))
  return element(
    'unit',
    { id: text.id.split(':').slice(1).join(':') },
    element(
      'notes',
      {},
      ...(text.note === null ? [] : [note('context', text.note)]),
      note('kind', text.kind),
      ...(text.most === null ? [] : [note(NOTES.most, mostText(text.most))]),
      note('state', text.state),
      note(NOTES.from, text.from)
    ),
    codes.data(),
    element('segment', { state: STATES[text.state] }, source, target)
  )
}

/** How a limit is told to a translator. */
export const mostText = (most: number): string =>
  most === 1 ? 'At most 1 word.' : `At most ${most} words.`

/** The inline codes of one unit: each text of a code has one id, by which both sides name it. */
class Codes {
  private readonly ids = new Map<string, string>()

  put(text: string): string {
    // An id stands once in a source and once in a target: a code said twice has two.
    const seen = new Map<string, number>()
    return partsOf(text)
      .map(part => {
        if (typeof part === 'string') return signs(part)
        const times = (seen.get(part.text) ?? 0) + 1
        seen.set(part.text, times)
        const data = this.ids.get(part.text) ?? `d${this.ids.size + 1}`
        this.ids.set(part.text, data)
        return element('ph', {
          id: `${data}.${times}`,
          canDelete: 'no',
          canCopy: 'no',
          dataRef: data,
          disp: part.text,
          equiv: part.text
        })
      })
      .join('')
  }

  data(): string {
    if (this.ids.size === 0) return ''
    const all = [...this.ids].map(([text, id]) => element('data', { id }, signs(text)))
    return element('originalData', {}, ...all)
  }
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones that XML has no place for.
const NOT_IN_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udfff]/u

/** Text with what XML 1.0 has no place for as `cp` (XLIFF 2: a character by its hexadecimal number). */
const signs = (text: string): string =>
  [...text]
    .map(sign => {
      if (!NOT_IN_XML.test(sign)) return escaped(sign)
      const hex = (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')
      return element('cp', { hex })
    })
    .join('')

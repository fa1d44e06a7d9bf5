import { verdict } from '../../tree/caution.ts'
import { verdictText } from '../../words/verdict-text.ts'
import { sheetCode, useCode } from '../key-codes.ts'
import { textWidth } from '../text-width.ts'
import type { MarkedLines } from './boxes.ts'
import { boxed, type Column, type DecisionTerms, lineHeight, SWATCH, TYPES } from './items.ts'

/** The marks that lines take: pattern, code, signal word and name, as many on a line as fit. Returns how wide they are. */
function addTakes(
  column: Column,
  { sheets, use }: MarkedLines['takes'],
  x: number,
  width: number,
  terms: DecisionTerms
): number {
  const marks = [
    ...sheets.map(of => ({ of, text: markText(terms, of) })),
    ...(use === 'as-directed' ? [] : [{ of: useCode(use), text: useCode(use) }])
  ]
  const indent = SWATCH.width + 3
  let widest = 0
  let taken = 0
  for (const { of, text } of marks) {
    const wide = indent + textWidth(text, TYPES.mark, terms.words.tag)
    const start = taken > 0 && taken + BETWEEN_MARKS + wide <= width ? taken + BETWEEN_MARKS : 0
    if (start > 0) column.y -= lineHeight(TYPES.mark)
    column.add({ kind: 'swatch', of, x: x + start, y: column.y + 0.5, ...SWATCH })
    const before = column.y
    const set = column.text(text, x + start + indent, width - start - indent, TYPES.mark)
    // Beside one that took two lines there is room only behind the second.
    taken = column.y - before > lineHeight(TYPES.mark) * 1.5 ? width : start + indent + set
    widest = Math.max(widest, start + indent + set)
  }
  return widest
}

const BETWEEN_MARKS = 7

/** Code, signal word and name of a verdict. */
export function markText({ tree, words }: DecisionTerms, id: string): string {
  const { signal } = verdict(tree, id)
  const word = signal === 'none' ? [] : [words.t(`ui:signal.${signal}`)]
  return [sheetCode(tree.verdicts, id), ...word, verdictText(words, tree.id, id, 'name')].join(' ')
}

/** Answers and what they take; returns how wide they are. */
export function addLines(
  column: Column,
  lines: readonly MarkedLines[],
  { x, width, letter }: { x: number; width: number; letter: string | null },
  terms: DecisionTerms
): number {
  let widest = 0
  lines.forEach(({ labels, takes, stops }, index) => {
    if (index > 0) column.y += 2
    const indent = 8
    const { texts, shared } = textsOf(labels, terms)
    for (const [place, label] of texts.entries()) {
      const first = index === 0 && place === 0 && letter !== null
      const sign = first ? letter : '·'
      column.add({
        kind: 'text',
        x,
        y: column.y,
        width: textWidth(sign, TYPES.mark, terms.words.tag),
        ...boxed(sign, TYPES.mark),
        white: false
      })
      const text = column.text(label, x + indent, width - indent, TYPES.label)
      widest = Math.max(widest, indent + text)
    }
    const inner = x + (texts.length > 0 ? indent : 0)
    if (shared !== null) {
      const set = column.text(shared, inner, width - (inner - x), TYPES.small)
      widest = Math.max(widest, inner - x + set)
    }
    const taken = addTakes(column, takes, inner, width - (inner - x), terms)
    widest = Math.max(widest, inner - x + taken)
    if (stops) {
      column.y += 1
      addTag(column, [terms.words.t('ui:key.stop')], 'end', x + width, terms)
    }
  })
  return widest
}

/** Labels with the numbers of their remarks; of remarks that all share, once behind them. */
function textsOf(
  labels: MarkedLines['labels'],
  { words, remarks }: DecisionTerms
): { readonly texts: readonly string[]; readonly shared: string | null } {
  const numbers = labels.map(({ notes }) => notes.map(note => remarks.indexOf(note) + 1).join(', '))
  const [first = ''] = numbers
  const noted = (list: string) => words.t('ui:key.noted', { remarks: list })
  const named = labels.flatMap(({ label }) => (label === null ? [] : [label]))
  const isShared = named.length !== 1 && first !== '' && new Set(numbers).size === 1
  if (isShared) return { texts: named, shared: `(${noted(first)})` }
  const texts = labels.flatMap(({ label }, index) => {
    const own = numbers[index] ?? ''
    if (label === null) return own === '' ? [] : [noted(own)]
    return [own === '' ? label : `${label} (${noted(own)})`]
  })
  return { texts, shared: null }
}

/** A black tag whose right edge is given. */
export function addTag(
  column: Column,
  lines: readonly string[],
  shape: 'on' | 'back' | 'end',
  right: number,
  { words }: DecisionTerms
): void {
  const widths = lines.map(line => textWidth(line, TYPES.mark, words.tag))
  const inner = Math.max(...widths)
  const width = inner + 14
  const height = lines.length * lineHeight(TYPES.mark) + 4
  column.add({ kind: 'tag', shape, x: right - width, y: column.y, width, height })
  lines.forEach((line, index) => {
    column.add({
      kind: 'text',
      x: right - width + 5,
      y: column.y + 2 + index * lineHeight(TYPES.mark),
      width: widths[index] ?? 0,
      ...boxed(line, TYPES.mark),
      white: true
    })
  })
  column.y += height
}

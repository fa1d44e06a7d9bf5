import { Composer, YAMLParseError } from 'yaml'
import type { Place } from '../findings/place.ts'
import { type Authored, type AuthoredFile, authored, type Offsets } from './authored.ts'
import { tokensWithin } from './bounds.ts'
import { plainValue } from './plain-value.ts'
import { type FindingReport, openReport } from './report.ts'
import { syntaxFault } from './syntax-faults.ts'

/**
 * Reads one file of YAML, or of JSON, which YAML 1.2 holds. Null when a finding was reported.
 *
 * A file may come from anybody: its size, its depth and what stands for something else are
 * bounded before anything is built from it.
 */
export function readYaml({ path: file, text }: AuthoredFile, to: FindingReport): Authored | null {
  const placeOf = placesOf(file, text)
  const within = tokensWithin(text)
  if ('breach' in within) {
    const { code, at, facts } = within.breach
    to.add(code, placeOf([at, at + 1]), facts)
    return null
  }
  const report = openReport()
  // Twice the same key is found by `plainValue`: the library compares every key with every other.
  const composer = new Composer({ uniqueKeys: false, version: '1.2', schema: 'core' })
  const [document, second] = composer.compose(within.tokens, true, text.length)
  if (document === undefined) throw new Error('the library composes a document of any text')
  if (second !== undefined) {
    const [from, end] = second.range
    document.errors.push(new YAMLParseError([from, end], 'MULTIPLE_DOCS', 'several documents'))
  }
  for (const error of [...document.errors, ...document.warnings]) {
    report.add('syntax-error', placeOf(error.pos), { ...syntaxFault(error) })
  }
  // After a fault of syntax the rest is a guess: more findings would be about the guess.
  const broken = report.findings.length > 0
  const read = broken ? null : plainValue(document.contents, placeOf, report)
  to.findings.push(...report.findings)
  return read && report.findings.length === 0
    ? authored(file, read.value, read.spot, placeOf)
    : null
}

function placesOf(file: string, text: string): (span: Offsets) => Place {
  const starts = [0]
  for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) starts.push(i + 1)
  return ([from, end]) => {
    const line = lineAt(starts, Math.min(from, text.length))
    const start = starts[line] ?? 0
    const next = starts[line + 1]
    const lineEnd = next === undefined ? text.length : next - 1
    const length = Math.max(1, Math.min(end, lineEnd) - from)
    return { file, line: line + 1, column: from - start + 1, length }
  }
}

function lineAt(starts: readonly number[], offset: number): number {
  let low = 0
  let high = starts.length - 1
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if ((starts[middle] ?? 0) <= offset) low = middle
    else high = middle - 1
  }
  return low
}

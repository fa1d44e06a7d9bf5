import { Lexer, Parser } from 'yaml'
import type { FindingCode } from '../findings/catalogue.ts'
import type { Facts } from '../findings/finding.ts'

const KIB = 512
const SIGNS = 100_000
const DEPTH = 32

interface Breach {
  readonly code: FindingCode
  readonly facts: Facts
  /** Offset in the text. */
  readonly at: number
}

/**
 * Where a text goes beyond what any authored file needs, or null.
 *
 * Building a document goes down its nesting by calling itself, and takes its time over each
 * sign; this only counts, so that a hostile file costs neither the stack nor the minute.
 */
export function breachOf(text: string): Breach | null {
  const kib = Math.ceil(new TextEncoder().encode(text).length / 1024)
  if (kib > KIB) {
    return { code: 'file-too-large', facts: { size: `${kib} KiB`, limit: `${KIB} KiB` }, at: 0 }
  }
  const parser = new Parser()
  let signs = 0
  for (const token of new Lexer().lex(text)) {
    if (++signs > SIGNS) {
      const facts = { size: `over ${SIGNS} words and signs`, limit: `${SIGNS}` }
      return { code: 'file-too-large', facts, at: parser.offset }
    }
    for (const _ of parser.next(token)) {
      // What is complete is dropped: only the depth is wanted.
    }
    if (parser.stack.length > DEPTH && depthOf(parser) > DEPTH) {
      return { code: 'nested-too-deeply', facts: { limit: DEPTH }, at: parser.offset }
    }
  }
  return null
}

const depthOf = (parser: Parser): number =>
  parser.stack.filter(({ type }) => /^(?:block-map|block-seq|flow-collection)$/.test(type)).length

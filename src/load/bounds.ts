import { type CST, Lexer, Parser } from 'yaml'
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
 * The tokens of a text, or where it goes beyond what any authored file needs.
 *
 * Building a document goes down its nesting by calling itself, and takes its time over each
 * sign; this only counts, so that a hostile file costs neither the stack nor the minute.
 */
export function tokensWithin(
  text: string
): { readonly tokens: readonly CST.Token[] } | { readonly breach: Breach } {
  const kib = Math.ceil(new TextEncoder().encode(text).length / 1024)
  if (kib > KIB) {
    const facts = { size: `${kib} KiB`, limit: `${KIB} KiB` }
    return { breach: { code: 'file-too-large', facts, at: 0 } }
  }
  const parser = new Parser()
  const tokens: CST.Token[] = []
  let signs = 0
  for (const sign of new Lexer().lex(text)) {
    if (++signs > SIGNS) {
      const facts = { size: `over ${SIGNS} words and signs`, limit: `${SIGNS}` }
      return { breach: { code: 'file-too-large', facts, at: parser.offset } }
    }
    tokens.push(...parser.next(sign))
    if (parser.stack.length > DEPTH && depthOf(parser) > DEPTH) {
      return { breach: { code: 'nested-too-deeply', facts: { limit: DEPTH }, at: parser.offset } }
    }
  }
  tokens.push(...parser.end())
  return { tokens }
}

const depthOf = (parser: Parser): number =>
  parser.stack.filter(({ type }) => /^(?:block-map|block-seq|flow-collection)$/.test(type)).length

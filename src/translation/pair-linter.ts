import { type Glossary, readyGlossary } from './glossary.ts'
import { lintPair } from './lint.ts'
import type { TextFault, TextPair } from './pair.ts'

/** Holds a translation against its English, in one language under one glossary. */
export type LintsPair = (pair: TextPair) => readonly TextFault[]

interface Linter {
  readonly glossary: string
  readonly lint: LintsPair
}

/** The last one of each language. */
const linters = new Map<string, Linter>()

/**
 * Lints the pairs of a language, each only once as long as its glossary stays as it is: most of the time
 * that a project takes to load goes into this, and one process loads it again after each change.
 */
export function pairLinter(tag: string, glossary: Glossary | null): LintsPair {
  const written = JSON.stringify(glossary)
  const last = linters.get(tag)
  if (last?.glossary === written) return last.lint
  const ready = glossary ? readyGlossary(glossary) : null
  const found = new Map<string, readonly TextFault[]>()
  const lint: LintsPair = pair => {
    const key = JSON.stringify([pair.english, pair.target])
    const before = found.get(key)
    if (before) return before
    const faults = lintPair(pair, tag, ready)
    found.set(key, faults)
    return faults
  }
  linters.set(tag, { glossary: written, lint })
  return lint
}

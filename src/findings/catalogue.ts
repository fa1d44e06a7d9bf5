import { CIRCUIT_FINDINGS } from './catalogue/circuit.ts'
import { EDITION_FINDINGS } from './catalogue/edition.ts'
import { LINK_FINDINGS } from './catalogue/link.ts'
import { PROOF_FINDINGS } from './catalogue/proof.ts'
import { READ_FINDINGS } from './catalogue/read.ts'
import { RULE_FINDINGS } from './catalogue/rule.ts'
import { SHAPE_FINDINGS } from './catalogue/shape.ts'
import { WORD_FINDINGS } from './catalogue/word.ts'
import type { Entry } from './wording.ts'

/** Every finding the project can report. The code is also its heading in trees/README.md. */
export const CATALOGUE = {
  ...READ_FINDINGS,
  ...SHAPE_FINDINGS,
  ...LINK_FINDINGS,
  ...CIRCUIT_FINDINGS,
  ...RULE_FINDINGS,
  ...WORD_FINDINGS,
  ...EDITION_FINDINGS,
  ...PROOF_FINDINGS
} satisfies Record<string, Entry>

/** The name of a finding: kebab-case, the same wherever it is shown. */
export type FindingCode = keyof typeof CATALOGUE

import type { Said, SectionId } from './say.ts'

/** The sections that tell people what to do or what to beware of. */
const NEVER_ALONE: readonly SectionId[] = [
  'clean-up',
  'keep',
  'start-again',
  'who-must-not',
  'medical-help',
  'keep-in-mind'
]

/**
 * Of an outcome in English what stands beside a draft translation: the message, what to do, whom to
 * call and every caution. What only explains is left empty.
 */
export function cautionsOf(said: Said): Said {
  return {
    ...said,
    verdicts: said.verdicts.map(verdict => ({ ...verdict, why: null })),
    sections: said.sections.map(section => ({
      ...section,
      title: '',
      lines: NEVER_ALONE.includes(section.id) ? section.lines : section.lines.map(() => '')
    }))
  }
}

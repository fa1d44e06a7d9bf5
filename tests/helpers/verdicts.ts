import type { Verdict } from '../../src/tree/tree.ts'

/** The verdicts of the three tracks, gentlest first, for trees sketched in tests. */
export const VERDICTS: readonly Verdict[] = [
  { id: 'ask-doctor', track: 'person', ceiling: 'as-directed', signal: 'none' },
  { id: 'poison-help', track: 'person', ceiling: 'as-directed', signal: 'none' },
  { id: 'doctor-today', track: 'person', ceiling: 'as-directed', signal: 'none' },
  { id: 'emergency', track: 'person', ceiling: 'never', signal: 'none' },
  { id: 'pressure-caution', track: 'container', ceiling: 'not-yet', signal: 'none' },
  { id: 'pressure-hazard', track: 'container', ceiling: 'never', signal: 'none' },
  { id: 'normal-growth', track: 'batch', ceiling: 'as-directed', signal: 'none' },
  { id: 'quality-only', track: 'batch', ceiling: 'as-directed', signal: 'none' },
  { id: 'yeast-strands', track: 'batch', ceiling: 'as-directed', signal: 'none' },
  { id: 'wait-and-recheck', track: 'batch', ceiling: 'not-yet', signal: 'none' },
  { id: 'ask-specialist', track: 'batch', ceiling: 'not-yet', signal: 'none' },
  { id: 'discard-and-sanitize', track: 'batch', ceiling: 'never', signal: 'none' },
  { id: 'likely-mold', track: 'batch', ceiling: 'never', signal: 'none' },
  { id: 'possible-toxin', track: 'batch', ceiling: 'never', signal: 'none' }
]

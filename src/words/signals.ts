/** The signal words of ANSI Z535.6 and ISO 3864-2; `none` goes with a gentle verdict. */
export type Signal = 'danger' | 'warning' | 'caution' | 'notice' | 'none'

// INVARIANT: as in shared/verdicts.yaml, which a test holds this to. DANGER is kept for two verdicts.
const SIGNALS: Readonly<Record<string, Signal>> = {
  'ask-doctor': 'notice',
  'poison-help': 'warning',
  'doctor-today': 'warning',
  emergency: 'danger',
  'pressure-caution': 'caution',
  'pressure-hazard': 'danger',
  'normal-growth': 'none',
  'quality-only': 'none',
  'yeast-strands': 'none',
  'wait-and-recheck': 'notice',
  'ask-specialist': 'caution',
  'discard-and-sanitize': 'caution',
  'likely-mold': 'warning',
  'possible-toxin': 'warning'
}

/** The verdicts that have a signal word decided. */
export const SIGNALED: readonly string[] = Object.keys(SIGNALS)

/** The signal word of a verdict. @throws Error for a verdict that has none decided. */
export function signalOf(verdict: string): Signal {
  const signal = Object.hasOwn(SIGNALS, verdict) ? SIGNALS[verdict] : undefined
  if (signal === undefined) throw new Error(`no signal word is decided for the verdict ${verdict}`)
  return signal
}

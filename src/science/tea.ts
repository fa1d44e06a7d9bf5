import { activity, type Buffer, phWhere } from './acid.ts'

/** What kombucha's acid is made of, and what its tea takes up: the parts that nobody measures at home. */
export interface Tea {
  /** Acetic acid's part of the moles of acid; the rest counts as gluconic. 0 to 1. */
  readonly acetic: number
  readonly buffer: Buffer
}

// The ionic strength of a young batch; over 0.005 to 0.05 mol/L it moves the pH by less than 0.03.
const IONIC_STRENGTH = 0.01
const GAMMA = activity(1, IONIC_STRENGTH)
const WATER = 1e-14
const ACETIC = 10 ** -4.756 / GAMMA
const GLUCONIC = 10 ** -3.7 / GAMMA

/** The part of the acid that has given off its proton. */
function ionized({ acetic }: Tea, hydrogen: number): number {
  return (acetic * ACETIC) / (ACETIC + hydrogen) + ((1 - acetic) * GLUCONIC) / (GLUCONIC + hydrogen)
}

/** The charge, eq/L, that the acid has to balance at a pH. */
function owed({ buffer }: Tea, ph: number, hydrogen: number): number {
  const taken = buffer.capacity * Math.max(0, buffer.neutral - ph)
  return taken + hydrogen / GAMMA - WATER / (hydrogen * GAMMA)
}

/** mol/L of acid in a tea that reads a pH. */
export function acidAt(tea: Tea, ph: number): number {
  const hydrogen = 10 ** -ph
  return Math.max(0, owed(tea, ph, hydrogen)) / ionized(tea, hydrogen)
}

/** The pH of a tea with mol/L of acid in it; with none it is that of the tea. */
export function phWith(tea: Tea, molar: number): number {
  const ph = phWhere(trial => {
    const hydrogen = 10 ** -trial
    return owed(tea, trial, hydrogen) - molar * ionized(tea, hydrogen)
  })
  return Math.min(tea.buffer.neutral, ph)
}

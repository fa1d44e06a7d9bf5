import type { ComponentChildren } from 'preact'
import type { Setting } from '../../parts/setting.tsx'

/** One state of a part, made of the real tree by the real functions. */
export interface State {
  readonly name: string
  readonly show: ComponentChildren
  /** What differs here from the setting that all states share. */
  readonly setting?: Partial<Setting>
  /** Brings the part into a state that only pressing and typing can reach. */
  readonly stage?: (specimen: HTMLElement) => void
}

/** What one screen of the gallery shows. */
export interface Sheet {
  readonly id: string
  /** The files of `src/parts` that are to be seen here. */
  readonly parts: readonly string[]
  readonly states: readonly State[]
  /** The state is a whole screen with landmarks of its own. */
  readonly whole?: boolean
}

/** States that can stand side by side, on one sheet named after its first part. */
export function together(parts: readonly string[], states: readonly State[]): readonly Sheet[] {
  return [{ id: parts[0] ?? '', parts, states }]
}

/** States that would share ids or landmarks: each has a sheet of its own. */
export function alone(parts: readonly string[], states: readonly State[]): readonly Sheet[] {
  return states.map(state => ({
    id: `${parts[0] ?? ''}/${state.name.replaceAll(' ', '-')}`,
    parts,
    states: [state]
  }))
}

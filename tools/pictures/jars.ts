import { all, filled, inked, type Layer, stroke } from './layer.ts'
import { TINT } from './tints.ts'

const BODY = 'M42 46C42 58 28 58 28 74V136q0 12 12 12H120q12 0 12-12V74C132 58 118 58 118 46z'
const FULL = 'M28 78H132V136q0 12-12 12H40q-12 0-12-12z'

/** A whole jar from outside with what is in it. */
export const jar =
  (tint: string, ...layers: readonly Layer[]): Layer =>
  chance =>
    filled(BODY, TINT.glass) + filled(FULL, tint) + all(...layers)(chance) + inked(BODY)

/** A cloth over the mouth, held by a band. */
export const cloth: Layer = () =>
  `<path fill="${TINT.cream}" stroke="currentColor" d="M46 40Q46 20 80 20T114 40L124 60q-9 6-15-1t-14 2-15-2-15 2-14-2-15 1z"/>` +
  '<path stroke="#8A4B0F" stroke-width="4.5" d="M44 41Q80 49 116 41"/>'

/** A stoneware crock with a lid, from outside. */
export const crock =
  (...layers: readonly Layer[]): Layer =>
  chance =>
    `<path fill="${TINT.stone}" stroke="currentColor" d="M30 48H130Q136 100 124 140q-2 8-12 8H48q-10 0-12-8Q24 100 30 48z"/>` +
    filled('M31 49H129V62H31z', TINT.stoneDark) +
    all(...layers)(chance) +
    inked('M30 48H130M24 40h112v9H24zM66 40V30h28V40')

/** A canning jar, shut, with what is in it. */
export const canningJar =
  (tint: string, ...layers: readonly Layer[]): Layer =>
  chance =>
    filled(
      'M46 40C46 52 34 50 34 64V136q0 12 12 12H114q12 0 12-12V64C126 50 114 52 114 40z',
      tint
    ) +
    all(...layers)(chance) +
    inked('M46 40C46 52 34 50 34 64V136q0 12 12 12H114q12 0 12-12V64C126 50 114 52 114 40z')

/** The flat lid and ring of a canning jar; `dome` is how far the middle has risen. */
export const canningLid =
  (dome: number): Layer =>
  () =>
    `<path fill="${TINT.metal}" stroke="currentColor" d="M44 24Q80 ${24 - 2 * dome} 116 24V40H44z"/>` +
    '<path stroke="currentColor" d="M44 30H116"/>'

/** A rubber band around a jar, to mark a height. */
export const rubberBand = (y: number): Layer => stroke(`M24 ${y}H136`, TINT.red, 4)

import { all, filled, inked, type Layer, stroked } from './layer.ts'
import { numbers } from './line.ts'
import { TINT } from './tints.ts'

const WALL = 'M24 22V134q0 12 12 12H124q12 0 12-12V22'
const RIM = 'M18 13h124q4.5 0 4.5 4.5t-4.5 4.5H18q-4.5 0-4.5-4.5t4.5-4.5z'

/** What fills a jar below a level. */
export const below =
  (level: number, tint: string): Layer =>
  () =>
    filled(`M24 ${numbers(level)}H136V134q0 12-12 12H36q-12 0-12-12z`, tint)

/** A band between two levels, wall to wall: a film, a layer of liquid. */
export const band =
  (top: number, bottom: number, tint: string, [left, right] = [24, 136]): Layer =>
  () =>
    filled(`M${left} ${numbers(top)}H${right}V${numbers(bottom)}H${left}z`, tint)

/** A jar cut open, as you see it when you crouch. */
export const section =
  (...layers: readonly Layer[]): Layer =>
  chance =>
    filled(`${WALL}z`, TINT.glass) + all(...layers)(chance) + inked(WALL + RIM)

/** The same jar with a lid for its rim. */
export const lidded =
  (lid: Layer, ...layers: readonly Layer[]): Layer =>
  chance =>
    filled(`${WALL}z`, TINT.glass) + all(...layers)(chance) + inked(WALL) + lid(chance)

/** The upper jar, nearer: what is on the surface fills it. The air is in shade, so that pale hair shows. */
export const near =
  (level: number, tint: string, ...layers: readonly Layer[]): Layer =>
  chance =>
    filled(`M14 20H146V${level}H14z`, TINT.air) +
    filled(`M14 ${level}H146V154H14z`, tint) +
    stroked(`M14 ${level}H146`, TINT.brown, 1.6) +
    all(...layers)(chance) +
    inked('M14 20V154M146 20V154M9 10h142q5 0 5 5t-5 5H9q-5 0-5-5t5-5z')

/** Light lying on a wet surface seen from the side, just under its level. */
export const gleam =
  (y: number, from = 34, to = 82, width = 5): Layer =>
  () =>
    filled(
      `M${numbers(from, y)}q${numbers((to - from) * 0.2, width * 1.4, to - from, width * 0.3)}q${numbers((from - to) * 0.3, -width * 0.3, from - to, -width * 0.3)}z`,
      TINT.white
    )

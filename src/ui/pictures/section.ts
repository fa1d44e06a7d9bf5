import { all, filled, inked, type Layer } from './layer.ts'
import { numbers } from './line.ts'
import { TINT } from './tints.ts'

const WALL = 'M24 22V134q0 12 12 12H124q12 0 12-12V22'
const RIM = 'M18 13h124q4.5 0 4.5 4.5t-4.5 4.5H18q-4.5 0-4.5-4.5t4.5-4.5z'

/** What fills a jar below a level. */
export const below =
  (level: number, tint: string): Layer =>
  () =>
    filled(`M24 ${numbers(level)}H136V134q0 12-12 12H36q-12 0-12-12z`, tint)

/** A band between two levels: a film, a layer of liquid. */
export const band =
  (top: number, bottom: number, tint: string): Layer =>
  () =>
    filled(`M24 ${numbers(top)}H136V${numbers(bottom)}H24z`, tint)

/** A jar cut open, as you see it when you crouch: the air above is in shade, so that pale hair shows. */
export const section =
  (...layers: readonly Layer[]): Layer =>
  chance =>
    filled(`${WALL}z`, TINT.air) + all(...layers)(chance) + inked(WALL + RIM)

/** The same jar with something else for its rim: a lid, a dome. */
export const lidded =
  (lid: Layer, ...layers: readonly Layer[]): Layer =>
  chance =>
    filled(`${WALL}z`, TINT.air) + all(...layers)(chance) + inked(WALL) + lid(chance)

/** Light lying on a wet surface seen from the side. */
export const gleam =
  (y: number, from = 36, to = 76, width = 4): Layer =>
  () =>
    filled(
      `M${numbers(from, y)}q${numbers((to - from) / 2, -width)} ${numbers(to - from, 0)}q${numbers((from - to) / 2, width)} ${numbers(from - to, 0)}z`,
      TINT.white
    )

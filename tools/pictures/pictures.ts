import { chanceOf } from './chance.ts'
import type { Layer } from './layer.ts'
import { KINDS } from './table/bottle-kinds.ts'
import { BOTTLES } from './table/bottles.ts'
import { BRINE_SIDES } from './table/brine-sides.ts'
import { BRINES } from './table/brines.ts'
import { COLORS } from './table/colors.ts'
import { CULTURES } from './table/cultures.ts'
import { DOUGHS } from './table/doughs.ts'
import { JARS } from './table/jars.ts'
import { MEASURING } from './table/measuring.ts'
import { MILK } from './table/milk.ts'
import { SIDES } from './table/sides.ts'
import { SURFACE } from './table/surface.ts'
import { VESSELS } from './table/vessels.ts'
import { VINEGARS } from './table/vinegars.ts'

const HEAD =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 160 160" fill="none" stroke-width="2.5" stroke-linecap="round" stroke-linejoin="round">'

/** Every picture that is drawn from parameters, by its id. */
export const PICTURES: Readonly<Record<string, Layer>> = {
  ...SURFACE,
  ...SIDES,
  ...COLORS,
  ...JARS,
  ...BOTTLES,
  ...KINDS,
  ...CULTURES,
  ...BRINES,
  ...BRINE_SIDES,
  ...DOUGHS,
  ...MEASURING,
  ...MILK,
  ...VINEGARS,
  ...VESSELS
}

/** One picture as it is committed. The same id gives the same picture every time. */
export const drawPicture = (id: string, layer: Layer): string =>
  `${HEAD}${layer(chanceOf(id))}</svg>\n`

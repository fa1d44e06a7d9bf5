import { bottle, bottleLine, FORM, swingTop } from '../bottles.ts'
import { canningLid } from '../jars.ts'
import { all, filled, ink, inked, type Layer, shape, stroke } from '../layer.ts'
import { TINT } from '../tints.ts'

const AMBER = '#8A5220'

/** Kinds of bottle: those made to hold gas, and those that are not. */
export const KINDS: Record<string, Layer> = {
  'kind-swing-top': all(bottle(FORM.swing, TINT.tea, 60), swingTop),
  'kind-beer-bottle': all(
    () => filled(`${bottleLine(FORM.beer)}z`, AMBER) + inked(`${bottleLine(FORM.beer)}z`),
    shape('M54 98H106V132H54z', TINT.cream),
    stroke('M54 98H106V132H54z', TINT.black, 2.5),
    () => `<path fill="${TINT.metal}" stroke="currentColor" d="M66 22l2-10h24l2 10z"/>`,
    stroke('M74 22v-4M80 22v-4M86 22v-4', TINT.black, 2.5)
  ),
  'kind-plastic': all(
    bottle(
      FORM.plastic,
      TINT.tea,
      56,
      stroke('M52 84q28 8 56 0M52 92q28 8 56 0M52 114q28 8 56 0M52 122q28 8 56 0', TINT.teaDeep, 2)
    ),
    stroke('M62 148q2-12 8-12t6 12M84 148q0-12 6-12t8 12', TINT.black, 2.5),
    () => `<path fill="${TINT.red}" stroke="currentColor" d="M63 10h34v16H63z"/>`,
    stroke('M71 12v12M80 12v12M89 12v12', TINT.black, 2.5)
  ),
  'kind-sparkling-wine': all(
    () =>
      filled(`${bottleLine(FORM.sparkling)}z`, '#3E5140') + inked(`${bottleLine(FORM.sparkling)}z`),
    shape('M49 112H111V136H49z', TINT.cream),
    stroke('M49 112H111V136H49z', TINT.black, 2.5),
    () =>
      `<path fill="${TINT.stone}" stroke="currentColor" d="M70 30V22Q62 20 64 14q2-8 16-8t16 8q2 6-6 8V30z"/>`,
    stroke('M66 20L92 34M94 20L68 34M66 38h28', TINT.black, 2.5)
  ),
  'kind-square-glass': all(
    bottle(FORM.square, TINT.tea, 62),
    stroke('M58 62V144M102 62V144', TINT.black, 2.5),
    () => `<path fill="${TINT.stone}" stroke="currentColor" d="M66 28l-3-16h34l-3 16z"/>`
  ),
  'kind-canning-jar': all(
    bottle(FORM.canning, TINT.tea, 54),
    stroke('M60 86q20-8 40 0M60 112q20 8 40 0M60 86V112M100 86V112', TINT.black, 2.5),
    () => `<g transform="translate(0 -6)">${canningLid(0)(() => 0)}</g>`
  ),
  'kind-wine-bottle': all(
    () => filled(`${bottleLine(FORM.wine)}z`, '#56633F') + inked(`${bottleLine(FORM.wine)}z`),
    shape('M54 92H106V134H54z', TINT.cream),
    stroke('M54 92H106V134H54zM64 104H96M64 112H88', TINT.black, 2.5),
    () => `<path fill="${TINT.stone}" stroke="currentColor" d="M73 18V8h14V18z"/>`,
    ink('M69 18h22v8H69z')
  )
}

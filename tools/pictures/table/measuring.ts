import { all, filled, ink, inked, type Layer, shape, stroke } from '../layer.ts'
import { TINT } from '../tints.ts'

const WATER = '#A9C6CF'
const SEVEN = '#E8D98A'
const FOUR = '#D98C86'
/** A strip's pad between two colors of its scale. */
const PALE = '#E3A04E'
const BETWEEN = '#CB7A42'
const DEEP = '#B3543A'

/** A pen meter, upright, the tip of its probe at a place; `shows` is drawn on its display. */
const meter =
  (x: number, y: number, shows = ''): Layer =>
  () =>
    `<path fill="${TINT.metal}" stroke="currentColor" d="M${x - 5} ${y - 34}h10V${y - 5}q-5 6-10 0z"/>` +
    `<path fill="${TINT.cream}" stroke="currentColor" d="M${x - 12} ${y - 96}q0-10 12-10t12 10V${y - 34}h-24z"/>` +
    `<path fill="${TINT.white}" stroke="currentColor" d="M${x - 8} ${y - 92}h16v22h-16z"/>` +
    `<path stroke="${TINT.black}" stroke-width="2" d="${shows}"/>`

/** A glass with something in it. */
const glass =
  (x: number, y: number, width: number, height: number, tint: string): Layer =>
  () =>
    filled(`M${x} ${y + height * 0.3}h${width}v${height * 0.7}h${-width}z`, tint) +
    inked(`M${x} ${y}v${height - 6}q0 6 6 6h${width - 12}q6 0 6-6V${y}`)

const seven = (x: number, y: number) => `M${x} ${y}h8l-5 12`
const five = (x: number, y: number) => `M${x + 7} ${y}h-7v5q8-1 7 4t-8 2`
const four = (x: number, y: number) => `M${x + 6} ${y + 12}v-12l-6 8h9`

/** How acidity is measured: what is done, one step a drawing. */
export const MEASURING: Record<string, Layer> = {
  'meter-buffers': all(
    glass(16, 82, 56, 62, SEVEN),
    glass(90, 82, 56, 62, FOUR),
    meter(44, 130, seven(40, 41)),
    stroke(seven(28, 122), TINT.black, 2.5),
    stroke(four(113, 118), TINT.black, 2.5),
    ink('M66 52Q94 34 116 62M116 62l-12-2M116 62l3-12')
  ),
  'meter-measure': all(
    glass(40, 78, 80, 68, TINT.tea),
    meter(80, 128, four(75, 37)),
    stroke('M48 104v26', TINT.white, 4)
  ),
  'meter-rinse': all(
    shape('M74 22h12v94h-12z', WATER),
    ink('M40 14h36q10 0 10 10M40 26h30q4 0 4 4'),
    meter(80, 124),
    stroke('M62 96v20M98 92v24M70 128v10M90 130v8', WATER, 4),
    shape('M30 140h100q-4 12-16 12H46q-12 0-16-12z', WATER),
    ink('M24 138h112q-4 16-18 16H42q-14 0-18-16z')
  ),
  'strip-compare': all(
    shape('M22 76h36v30h-36z', DEEP),
    shape('M102 76h36v30h-36z', PALE),
    ink('M22 76h36v30h-36zM102 76h36v30h-36z'),
    stroke(`${four(35, 85)}${five(116, 85)}`, TINT.black, 2.5),
    () =>
      `<path fill="${TINT.white}" stroke="currentColor" d="M68 70h24v78h-24z"/>` +
      `<path fill="${BETWEEN}" d="M71 76h18v30h-18z"/>`,
    () =>
      `<path fill="#F0D23C" stroke="currentColor" d="M66 26a14 14 0 1 0 28 0a14 14 0 1 0-28 0z"/>`,
    ink('M80 4v3M80 46v6M56 26h-7M104 26h7M62 10l-4-4M98 10l4-4M62 42l-4 4M98 42l4 4'),
    ink('M120 140v-24M120 116l-8 9M120 116l8 9')
  ),
  'strip-dip': all(
    glass(36, 76, 88, 70, TINT.tea),
    () =>
      `<path fill="${TINT.white}" stroke="currentColor" d="M70 14h20v110h-20z"/>` +
      `<path fill="${BETWEEN}" d="M73 98h14v22h-14z"/>`,
    stroke('M46 104v28', TINT.white, 4)
  ),
  'strip-wait': all(
    () =>
      `<path fill="${TINT.white}" stroke="currentColor" d="M18 118h84v20h-84z"/>` +
      `<path fill="${BETWEEN}" d="M76 121h22v14h-22z"/>`,
    () =>
      `<path fill="${TINT.white}" stroke="currentColor" d="M56 58a42 42 0 1 0 84 0a42 42 0 1 0-84 0z"/>`,
    stroke('M98 58V32M98 58l16 10M98 20v4M98 92v4M60 58h4M132 58h4', TINT.black, 2.5),
    stroke('M98 24A34 34 0 0 1 132 58', '#8A4B0F', 4),
    stroke('M84 144v5M92 146v8', TINT.tea, 3)
  )
}

import { bottle, FORM, swingTop } from '../bottles.ts'
import { crystals, cucumber, grains } from '../foods.ts'
import { canningJar, canningLid, cloth, crock, jar, rubberBand } from '../jars.ts'
import { all, ink, type Layer, round, shape, stroke } from '../layer.ts'
import { below, gleam, section } from '../section.ts'
import { TINT } from '../tints.ts'
import { bubbles } from '../wet.ts'

const film = all(shape('M29 76H131V86H29z', TINT.cream), stroke('M29 86H131', TINT.filmEdge, 2))

/** Which ferment it is: the first question. */
export const VESSELS: Record<string, Layer> = {
  'vessel-open-jar': all(jar(TINT.tea, film), cloth),
  'vessel-bottle': all(
    bottle(
      FORM.swing,
      TINT.tea,
      52,
      bubbles(
        [68, 100, 3, 92, 110, 3, 76, 124, 2.5, 90, 136, 2.5, 80, 84, 2.5],
        TINT.teaPale,
        TINT.teaDeep
      )
    ),
    swingTop
  ),
  'vessel-crock': crock(
    shape('M58 104Q56 82 80 76 104 82 102 104 96 120 80 120T58 104z', '#B9C27C'),
    stroke(
      'M58 104Q56 82 80 76 104 82 102 104 96 120 80 120T58 104zM80 120V92M80 104L66 92M80 104l14-12M80 112l-14-6M80 112l14-6',
      '#5D6B2C',
      2.2
    )
  ),
  'vessel-dough': section(
    shape('M24 72Q80 54 136 72V134q0 12-12 12H36q-12 0-12-12z', TINT.dough),
    bubbles(
      [
        42, 88, 5, 70, 80, 6, 100, 86, 5, 120, 100, 4, 54, 108, 4, 88, 110, 6, 112, 126, 4, 64, 130,
        4
      ],
      '#F8EDD4',
      TINT.doughDark
    ),
    rubberBand(110)
  ),
  'vessel-milk': all(
    jar(TINT.milk, grains([56, 90, 15, 84, 96, 13, 108, 88, 14], '#B59F73')),
    cloth
  ),
  'vessel-water-kefir': all(
    jar(
      '#EAD9A8',
      crystals([46, 136, 10, 66, 134, 10, 88, 136, 11, 110, 134, 10, 56, 120, 9, 98, 120, 9]),
      () =>
        `<path fill="#F3DF6A" stroke="#A88A12" stroke-width="2" d="${round([82, 92], 15)}M82 92V78M82 92l12 8M82 92l-12 8"/>`
    ),
    cloth
  ),
  // Pale ginger afloat in cloudy liquid, bubbles under it, and settled yeast.
  'vessel-soda': all(
    jar(
      '#E9CF8E',
      shape('M28 140H132q-2 8-12 8H40q-10 0-12-8z', '#F7EBCB'),
      bubbles(
        [50, 112, 3, 66, 126, 2.5, 80, 108, 3.5, 96, 122, 2.5, 110, 110, 3, 118, 130, 2.5],
        '#FBF3DC',
        '#A9842F'
      ),
      () =>
        '<path fill="#E3B95C" stroke="#8A6420" stroke-width="2" d="M38 84q2-8 12-7 4-6 10-2 8-1 8 6 2 8-7 9-3 6-10 3-12 1-13-9zM76 86q1-9 11-9 8-6 13 1 12-2 11 7 0 8-10 7-4 6-12 2-12 1-13-8z"/>'
    ),
    cloth
  ),
  'vessel-culture': section(
    below(34, TINT.tea),
    gleam(35, 34, 84, 5),
    ...[60, 80, 100, 120].map((y, i) => {
      const edge = `M${30 + i} ${y}q4-9 50-8t50 9-46 9-54-10z`
      return all(shape(edge, i % 2 ? TINT.film : TINT.cream), stroke(edge, TINT.teaDeep, 2))
    }),
    shape('M38 58q6-5 24-5q-14 3-18 6z', TINT.white)
  ),
  'vessel-vinegar': all(
    bottle(
      FORM.wine,
      TINT.vinegar,
      50,
      shape('M54 104q13-8 26 0t25 0v8q-12 8-25 0t-26 0z', '#EBCF9E'),
      stroke('M54 104q13-8 26 0t25 0v8q-12 8-25 0t-26 0z', TINT.teaDeep, 1.8)
    ),
    () =>
      `<path fill="${TINT.stone}" stroke="currentColor" d="M73 18V8h14V18z"/><path fill="#C9553C" stroke="currentColor" d="M126 116q12-8 20 4t-4 28q-6 4-12 2-8 2-14-2-12-14-4-28t14-4z"/>`,
    ink('M127 116q0-8 8-12')
  ),
  'vessel-canned': all(
    canningJar(
      TINT.brineClear,
      cucumber([58, 82], [57, 130], 16),
      cucumber([82, 76], [82, 132], 16),
      cucumber([106, 82], [106, 130], 16)
    ),
    canningLid(0)
  ),
  'vessel-other': all(
    section(below(62, TINT.water), gleam(63)),
    stroke('M64 88q2-14 17-14t16 14q0 8-9 13t-8 14M80 128h.1', TINT.black, 2.5)
  )
}

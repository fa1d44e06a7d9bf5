import type { Answers } from '../../src/tree/answers.ts'
import { days, meter, narrowStrip, type Row, sharing, wideStrip } from './kombucha-jar-rows.ts'

type Reading = ReturnType<typeof meter>

const on = (day: number, ph: Reading | 'unsure'): Answers => ({ 'jar-ph': ph, day: days(day) })
const bare: Answers = { 'surface-texture': 'nothing-yet' }
const film: Answers = { 'surface-texture': 'flat-wrinkled-film' }
const sweet: Answers = { 'smell-and-liquid': { 'still-sweet': 'yes' } }
const waking: Answers = { 'jar-signs': { 'dried-culture': 'yes' } }
const toppedUp: Answers = { 'jar-signs': { 'continuous-vessel': 'yes' } }
const again: Answers = { 'looked-before': 'second-look' }
const noStarter: Answers = { 'starter-kind': 'no-starter' }
const pasteurized: Answers = { 'starter-kind': 'pasteurized' }

const fine = { person: null, container: null, batch: 'normal-growth', use: 'as-directed' }
const drinkable = { use: 'as-directed' }
const growing = { batch: 'normal-growth', use: 'not-yet' }
// A discard is never drunk, so `not-yet` alone shows that nothing was discarded.
const held = { use: 'not-yet' }
const wait = { batch: 'wait-and-recheck', use: 'not-yet' }
const waitUndrunk = { batch: 'wait-and-recheck', use: 'never' }
const discard = { batch: 'discard-and-sanitize', use: 'never' }
const tooSour = { batch: 'quality-only', use: 'never' }

const ceiling = 'Niagara Region Public Health; Food Protection Trends 2025; Nummer 2013 by day 7'
const queensland = 'Queensland Government, fermented foods'
const floor = 'Niagara Region Public Health'
const survival = 'J Food Prot 84(8) 2021, day 7 as our caution'
const practice = 'common practice, no source'
const caution = 'own caution, no source'

/** At most 4.2 by the seventh day, for each instrument, on the pass and on the discard side. */
const SOUR_BY_DAY_SEVEN: readonly Row[] = [
  ...sharing(fine, ceiling, [
    ['1.11', 'meter, wholly at the limit or under', on(7, meter(4.15))],
    ['1.11', 'narrow strip, wholly at the limit or under', on(7, narrowStrip(3.9))],
    ['1.11', 'wide strip, wholly at the limit or under', on(7, wideStrip(3.7))],
    ['1.11', 'continuous vessel, meter at the limit', { ...toppedUp, ...on(7, meter(4.15)) }]
  ]),
  ...sharing(wait, ceiling, [
    ['1.11', 'meter, a hundredth into doubt', on(7, meter(4.16))],
    ['1.11', 'narrow strip, a hundredth into doubt', on(7, narrowStrip(3.91))],
    ['1.11', 'wide strip, a hundredth into doubt', on(7, wideStrip(3.71))],
    ['1.11', 'continuous vessel, into doubt', { ...toppedUp, ...on(7, meter(4.16)) }],
    ['1.14', 'meter, the last doubt', on(7, meter(4.25))],
    ['1.14', 'narrow strip, the last doubt', on(7, narrowStrip(4.5))],
    ['1.14', 'wide strip, the last doubt', on(7, wideStrip(4.7))]
  ]),
  ...sharing(discard, ceiling, [
    ['1.14', 'meter, wholly over', on(7, meter(4.26))],
    ['1.14', 'narrow strip, wholly over', on(7, narrowStrip(4.51))],
    ['1.14', 'wide strip, wholly over', on(7, wideStrip(4.71))],
    ['1.14', 'continuous vessel, wholly over', { ...toppedUp, ...on(7, meter(4.26)) }]
  ]),
  ...sharing(discard, caution, [
    ['1.14', 'first doubt, met twice', { ...on(7, meter(4.16)), ...again }],
    ['1.14', 'last doubt, met twice', { ...on(7, meter(4.25)), ...again }]
  ]),
  ...sharing(fine, ceiling, [
    ['1.11', 'no doubt, looked at twice', { ...on(7, meter(4.15)), ...again }]
  ])
]

/** The sixth day against the seventh. */
const DAY_SEVEN: readonly Row[] = [
  ...sharing(growing, survival, [
    ['1.18', 'six days, sour', on(6, meter(3.4))],
    ['1.18', 'six days since topping up, sour', { ...toppedUp, ...on(6, meter(3.4)) }]
  ]),
  ...sharing(fine, survival, [
    ['1.18', 'seven days, sour', on(7, meter(3.4))],
    ['1.18', 'seven days since topping up, sour', { ...toppedUp, ...on(7, meter(3.4)) }]
  ]),
  ...sharing(held, ceiling, [
    ['1.15', 'six days, not sour yet', on(6, meter(4.4))],
    ['1.15', 'six days, acid in doubt', on(6, meter(4.2))]
  ]),
  ...sharing(discard, ceiling, [['1.14', 'seven days, not sour', on(7, meter(4.4))]]),
  ...sharing(wait, ceiling, [['1.14', 'seven days, acid in doubt', on(7, meter(4.2))]])
]

/** Over 4.6 when mixed is corrected that day; over 4.6 a day later is discarded. */
const MIX: readonly Row[] = [
  ...sharing(growing, queensland, [
    ['1.10', 'just mixed, meter wholly at the limit or under', on(0, meter(4.55))]
  ]),
  ...sharing(wait, queensland, [
    ['1.10', 'just mixed, meter wholly over', on(0, meter(4.66))],
    ['1.10', 'just mixed, narrow strip wholly over', on(0, narrowStrip(4.91))],
    ['1.10', 'just mixed, wide strip wholly over', on(0, wideStrip(5.11))]
  ]),
  ...sharing(held, queensland, [
    ['1.15', 'a day old, meter wholly at the limit or under', on(1, meter(4.55))],
    ['1.15', 'a day old, narrow strip wholly at the limit or under', on(1, narrowStrip(4.3))],
    ['1.15', 'a day old, wide strip wholly at the limit or under', on(1, wideStrip(4.1))]
  ]),
  ...sharing(wait, caution, [
    ['1.15', 'a day old, meter into doubt', on(1, meter(4.56))],
    ['1.15', 'a day old, meter, the last doubt', on(1, meter(4.65))],
    ['1.15', 'a day old, narrow strip into doubt', on(1, narrowStrip(4.31))],
    ['1.15', 'a day old, narrow strip, the last doubt', on(1, narrowStrip(4.9))],
    ['1.15', 'a day old, wide strip into doubt', on(1, wideStrip(4.11))],
    ['1.15', 'a day old, wide strip, the last doubt', on(1, wideStrip(5.1))]
  ]),
  ...sharing(discard, queensland, [
    ['1.15', 'a day old, meter wholly over', on(1, meter(4.66))],
    ['1.15', 'a day old, narrow strip wholly over', on(1, narrowStrip(4.91))],
    ['1.15', 'a day old, wide strip wholly over', on(1, wideStrip(5.11))],
    ['1.15', 'six days old, meter wholly over', on(6, meter(4.66))]
  ])
]

/** The floor of 2.5 is about taste: it looks at the reading, not at its doubt. */
const FLOOR: readonly Row[] = [
  ...sharing(tooSour, floor, [
    ['1.16', 'meter, a hundredth under', on(9, meter(2.49))],
    ['1.16', 'narrow strip, a hundredth under', on(9, narrowStrip(2.49))],
    ['1.16', 'wide strip, a hundredth under', on(9, wideStrip(2.49))]
  ]),
  ...sharing(fine, floor, [
    ['1.16', 'meter, at the floor', on(9, meter(2.5))],
    ['1.16', 'narrow strip, at the floor', on(9, narrowStrip(2.5))],
    ['1.16', 'wide strip, at the floor', on(9, wideStrip(2.5))]
  ])
]

/** No film by the fourteenth day, still sweet on the tenth: only proven acid saves it, and it is tested first. */
const SLOW: readonly Row[] = [
  ...sharing(held, practice, [
    ['2.36', 'thirteen days, no film, no reading', { ...bare, ...on(13, 'unsure') }],
    ['2.36', 'nine days, sweet, no reading', { ...sweet, ...on(9, 'unsure') }]
  ]),
  ...sharing(wait, practice, [
    ['2.36', 'thirteen days, no film, acid in doubt', { ...bare, ...on(13, meter(4.16)) }],
    ['2.36', 'nine days, sweet, acid in doubt', { ...sweet, ...on(9, meter(4.16)) }]
  ]),
  ...sharing(drinkable, ceiling, [
    ['2.36', 'fourteen days, no film, acid proven', { ...bare, ...on(14, meter(4.15)) }],
    ['2.36', 'ten days, sweet, acid proven', { ...sweet, ...on(10, meter(4.15)) }]
  ])
]

/** A dried culture has thirty days to wake. */
const WAKING: readonly Row[] = [
  ...sharing(waitUndrunk, practice, [
    ['2.37', 'thirty days, no reading', { ...waking, ...bare, ...on(30, 'unsure') }],
    ['2.37', 'thirty days, sour', { ...waking, ...on(30, meter(3.4)) }]
  ]),
  ...sharing(discard, practice, [
    ['2.37', 'thirty-one days, no reading', { ...waking, ...bare, ...on(31, 'unsure') }],
    ['2.37', 'thirty-one days, sour', { ...waking, ...on(31, meter(3.4)) }]
  ])
]

/** A wrinkled film waits once, on proven acid alone. */
const FILM_YEAST: readonly Row[] = [
  ...sharing(wait, caution, [['8.1', 'acid proven', { ...film, ...on(8, meter(4.15)) }]]),
  ...sharing(discard, caution, [
    ['8.1', 'acid in doubt', { ...film, ...on(8, meter(4.16)) }],
    ['8.1', 'acid in doubt before the seventh day', { ...film, ...on(4, meter(4.16)) }]
  ])
]

/** Without starter the first day is for correcting; from the next on a reading is needed. */
const STARTER: readonly Row[] = [
  ...sharing(held, practice, [
    ['6.17', 'no starter, just mixed, no reading', { ...noStarter, ...on(0, 'unsure') }],
    ['6.14', 'pasteurized, just mixed, no reading', { ...pasteurized, ...on(0, 'unsure') }]
  ]),
  ...sharing(discard, practice, [
    ['6.17', 'no starter, a day old, no reading', { ...noStarter, ...on(1, 'unsure') }],
    ['6.14', 'pasteurized, a day old, no reading', { ...pasteurized, ...on(1, 'unsure') }]
  ])
]

/** Every limit of the kombucha jar, on both sides. */
export const LIMITS: readonly Row[] = [
  ...SOUR_BY_DAY_SEVEN,
  ...DAY_SEVEN,
  ...MIX,
  ...FLOOR,
  ...SLOW,
  ...WAKING,
  ...FILM_YEAST,
  ...STARTER
]

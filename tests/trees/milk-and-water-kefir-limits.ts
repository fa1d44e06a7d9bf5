import type { Answer, Answers } from '../../src/tree/answers.ts'
import { meter, narrowStrip, type Row, sharing, wideStrip } from './kombucha-jar-rows.ts'
import {
  bottle,
  kind,
  milk,
  set,
  signs,
  time,
  unmeasured,
  water,
  yogurt
} from './milk-and-water-kefir-told.ts'
import {
  again,
  caution,
  discard,
  fine,
  growing,
  growth,
  practice,
  specialist,
  wait
} from './told.ts'

const acid = (ph: Answer, span: string): Answers => ({ 'kefir-ph': ph, ...time(span) })
const first = 'under-one-day'
const second = 'one-to-two-days'
const third = 'two-to-three-days'
const later = 'over-three-days'
const still: Answers = { 'kefir-progress': 'no-change' }
const changed: Answers = { 'kefir-progress': 'changed' }
const haccp = 'Kefir HACCP summary, believed Utah State; 4.6 by 48 hours: own caution'

/** pH 4.6 by 48 hours and 5.0 at 24 hours, on both sides, by each instrument. */
const BY_INSTRUMENT: readonly Row[] = [
  ...sharing(fine, haccp, [
    ['4.1', 'a meter reads 4.55 on the first day', acid(meter(4.55), first)],
    ['4.1', 'a meter reads 4.55 on the second day', acid(meter(4.55), second)],
    ['4.1', 'a narrow strip reads 4.3', acid(narrowStrip(4.3), second)],
    ['4.1', 'a wide strip reads 4.1', acid(wideStrip(4.1), second)],
    ['4.1', 'a meter reads 4.55 in water kefir', water(acid(meter(4.55), second))],
    ['4.1', 'a meter reads 4.55 on the third day', acid(meter(4.55), third)]
  ]),
  ...sharing(growing, haccp, [
    ['4.1', 'a meter reads 4.6 on the second day', acid(meter(4.6), second)],
    ['4.1', 'a narrow strip reads 4.4', acid(narrowStrip(4.4), second)],
    ['4.1', 'a wide strip reads 4.2', acid(wideStrip(4.2), second)],
    ['4.1', 'a meter reads 4.7 on the second day', acid(meter(4.7), second)],
    ['4.1', 'a meter reads 4.95 on the second day', acid(meter(4.95), second)],
    ['4.1', 'a meter reads 4.95 in water kefir', water(acid(meter(4.95), second))]
  ]),
  ...sharing({ batch: 'normal-growth', use: 'not-yet' }, haccp, [
    ['4.1', 'a meter reads 4.6 on the first day', acid(meter(4.6), first)],
    ['4.1', 'a meter reads 5.5 on the first day', acid(meter(5.5), first)]
  ]),
  ...sharing(wait, `${haccp}; a reading in doubt on the day it is due: own caution`, [
    ['4.1', 'a meter reads 5.0 on the second day', acid(meter(5), second)],
    ['4.1', 'a meter reads 5.05 on the second day', acid(meter(5.05), second)],
    ['4.1', 'a narrow strip reads 4.8 on the second day', acid(narrowStrip(4.8), second)],
    ['4.1', 'a narrow strip reads 5.3 on the second day', acid(narrowStrip(5.3), second)],
    ['4.1', 'a wide strip reads 5.5 on the second day', acid(wideStrip(5.5), second)],
    ['4.1', 'a meter reads 4.6 on the third day', acid(meter(4.6), third)],
    ['4.1', 'a meter reads 4.65 on the third day', acid(meter(4.65), third)],
    ['4.1', 'a narrow strip reads 4.9 on the third day', acid(narrowStrip(4.9), third)],
    ['4.1', 'a meter reads 4.6 in water kefir', water(acid(meter(4.6), third))]
  ]),
  ...sharing(discard, haccp, [
    ['4.1', 'a meter reads 5.1 on the second day', acid(meter(5.1), second)],
    ['4.1', 'a narrow strip reads 5.4 on the second day', acid(narrowStrip(5.4), second)],
    ['4.1', 'a wide strip reads 5.6 on the second day', acid(wideStrip(5.6), second)],
    ['4.1', 'a meter reads 5.1 in water kefir', water(acid(meter(5.1), second))],
    ['4.1', 'a meter reads 4.7 on the third day', acid(meter(4.7), third)],
    ['4.1', 'a narrow strip reads 5.0 on the third day', acid(narrowStrip(5), third)],
    ['4.1', 'a wide strip reads 5.2 on the third day', acid(wideStrip(5.2), third)],
    ['4.1', 'a meter reads 4.7 in water kefir', water(acid(meter(4.7), third))],
    ['4.1', 'a meter reads 4.7 after the third day', acid(meter(4.7), later)],
    ['4.1', 'in doubt twice on the third day', { ...acid(meter(4.6), third), ...again }]
  ]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['4.1', 'a meter reads 4.7, the hours unknown', acid(meter(4.7), 'unsure')],
    ['4.1', 'a meter reads 4.6, the hours unknown', acid(meter(4.6), 'unsure')],
    ['4.1', 'of unknown kind, sour enough', { ...kind('unsure'), ...acid(meter(3.5), second) }]
  ])
]

/** Acid not measured: change is the only hint, it proves nothing, and the warm time ends. */
const UNMEASURED: readonly Row[] = [
  ...sharing(growing, `${practice}; no reading is no pass: own caution`, [
    ['4.2.8', 'changed on the second day', unmeasured(second, 'changed')],
    ['4.2.8', 'water kefir changed on the second day', water(unmeasured(second, 'changed'))],
    ['4.2.8', 'unchanged on the first day', unmeasured(first, 'no-change')]
  ]),
  // Two days end the warm time of milk kefir, three that of water kefir: what turned is chilled and tested.
  ...sharing(wait, caution, [
    ['A16', 'thick and sour on the third day', unmeasured(third, 'changed')],
    ['A16', 'thick and sour after the third day', unmeasured(later, 'changed')],
    ['A16', 'water kefir bubbling on the third day', water(unmeasured(third, 'changed'))],
    ['A16', 'water kefir bubbling after the third day', water(unmeasured(later, 'changed'))],
    ['A16', 'unsure of it on the third day', unmeasured(third, 'unsure')]
  ]),
  ...sharing(wait, practice, [
    ['4.2.8', 'unsure of it on the second day', unmeasured(second, 'unsure')],
    ['4.2.8', 'unchanged, the hours unknown', unmeasured('unsure', 'no-change')],
    ['4.2.8', 'water kefir unchanged on the second day', water(unmeasured(second, 'no-change'))]
  ]),
  ...sharing(discard, practice, [
    ['4.2.8', 'milk kefir unchanged after the third day', unmeasured(later, 'no-change')],
    ['4.2.8', 'water kefir barely sour after the third day', water(unmeasured(later, 'partly'))],
    [
      '4.2.8',
      'of unknown kind, unchanged on the third day',
      {
        ...kind('unsure'),
        ...unmeasured(third, 'no-change')
      }
    ]
  ]),
  ...sharing(discard, `the warm time ends at 48 hours: ${caution}`, [
    ['A16', 'sour and thin on the third day', unmeasured(third, 'partly')]
  ]),
  ...sharing(discard, caution, [
    ['A16', 'thick, and still untested a day later', { ...unmeasured(third, 'changed'), ...again }],
    ['A16', 'the hours unknown, untested twice', { ...unmeasured('unsure', 'changed'), ...again }],
    ['B14', 'in doubt twice, the hours unknown', { ...acid(meter(4.6), 'unsure'), ...again }],
    ['B14', 'in doubt twice on the second day', { ...acid(meter(5), second), ...again }]
  ])
]

const tested = (ph: Answer): Answers => yogurt({ ...set('set-and-tested'), 'kefir-ph': ph })
const capped = (ph: Answer): Answers => bottle({ 'kefir-ph': ph })

/** Yogurt that somebody tested, and bottles, whose acid is due when they are capped. */
const YOGURT_AND_BOTTLES: readonly Row[] = [
  ...sharing(fine, 'NCHFP, home yogurt (copy): 4.6 is set', [
    ['A17', 'yogurt reads 4.55 by meter', tested(meter(4.55))]
  ]),
  ...sharing(wait, caution, [
    ['A17', 'yogurt reads 4.6 by meter', tested(meter(4.6))],
    ['A17', 'yogurt reads 4.5 by a narrow strip', tested(narrowStrip(4.5))],
    ['S15', 'a bottle reads 4.6 by meter', capped(meter(4.6))],
    ['S15', 'nobody tested the bottle', capped('unsure')]
  ]),
  ...sharing(discard, caution, [
    ['A17', 'set in its time, and reads 5.3', tested(meter(5.3))],
    ['A17', 'yogurt reads 4.66 by meter', tested(meter(4.66))],
    ['A17', 'yogurt in doubt twice', { ...tested(meter(4.6)), ...again }],
    ['S15', 'a bottle reads 4.7 by meter', capped(meter(4.7))],
    ['S15', 'a bottle in doubt twice', { ...capped(meter(4.6)), ...again }],
    ['S15', 'a bottle untested twice', { ...capped('unsure'), ...again }]
  ]),
  ...sharing(fine, haccp, [['S15', 'a bottle reads 4.55 by meter', capped(meter(4.55))]])
]

/** A reading beside what is seen: acid counts for more than thickness, never for more than a fault. */
const READING_AND_LOOK: readonly Row[] = [
  ...sharing(fine, haccp, [
    ['4.1', 'sour enough, and no change seen', { ...acid(meter(4.55), second), ...still }]
  ]),
  ...sharing(discard, haccp, [
    ['4.1', 'not sour by meter, and changed', { ...acid(meter(4.7), third), ...changed }],
    [
      '4.1',
      'water kefir still sweet on the third day',
      water({ ...acid(meter(4.7), third), ...still })
    ]
  ]),
  ...sharing(discard, practice, [
    ['4.2.9', 'sour enough, and putrid', { ...acid(meter(3.5), second), ...signs('putrid') }]
  ]),
  ...sharing({ batch: 'yeast-strands', use: 'not-yet' }, caution, [
    [
      '4.2.3',
      'a film, and nobody measured',
      {
        ...unmeasured(second, 'changed'),
        ...growth('flat-film')
      }
    ]
  ]),
  ...sharing(specialist, caution, [
    ['4.1', 'raw milk kefir, sour enough', { ...acid(meter(3.5), second), ...milk('raw-milk') }]
  ])
]

/** Limits of acid and time on both sides. */
export const KEFIR_LIMITS: readonly Row[] = [
  ...BY_INSTRUMENT,
  ...UNMEASURED,
  ...YOGURT_AND_BOTTLES,
  ...READING_AND_LOOK
]

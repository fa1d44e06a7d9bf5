import type { Answers } from '../../src/tree/answers.ts'
import { days, meter, type Row, reading, sharing } from './kombucha-jar-rows.ts'
import {
  again,
  caution,
  choice,
  discard,
  fine,
  mold,
  person,
  practice,
  sign,
  wait
} from './told.ts'

const jar = sign('jar-signs')
const plan = sign('plans')
const surface = choice('surface-texture')
const sweet = sign('smell-and-liquid')('still-sweet')
const bare = surface('nothing-yet')
const on = (day: number | 'unsure', ph: ReturnType<typeof meter> | 'unsure'): Answers => ({
  'jar-ph': ph,
  day: day === 'unsure' ? day : days(day)
})
/** A meter that was never set with buffers. */
const uncalibrated = (ph: number) => reading(ph, 0.5)

const testedFirst = 'own caution: one test settles it, so nothing goes out untested'
const ends = 'own caution: no wait comes back for ever'

/** Mold at second hand, and readings that are none. */
const SECOND_HAND: readonly Row[] = [
  ...sharing(wait, caution, [
    ['3.14', 'a spoon shared with a moldy jar', jar('shared-with-mold')],
    ['3.11', 'a splash from a moldy jar', { ...jar('shared-with-mold'), ...on(8, meter(3)) }]
  ]),
  ...sharing({ person: 'ask-doctor', batch: 'wait-and-recheck', use: 'never' }, caution, [
    [
      '3.14',
      'a spoon shared, drunk at higher risk',
      { ...jar('shared-with-mold'), ...person('at-risk-drank') }
    ]
  ]),
  ...sharing(mold, caution, [
    ['2.26', 'fuzz in the tap', jar('mold-removed')],
    ['6.3', 'drawn from a batch that turned moldy', jar('mold-removed')],
    ['3.2', 'pushed under and sour since', { ...jar('mold-removed'), ...on(12, meter(2.9)) }]
  ]),
  ...sharing(discard, caution, [
    ['2.44', 'air freshener beside the open jar', jar('cleaner-got-in')],
    ['1.10', 'lemon juice on the third day', { ...jar('late-acid'), ...on(8, meter(3.4)) }]
  ]),
  ...sharing(wait, 'own caution: the widest interval', [
    ['1.13', 'a meter never set reads 4.0', on(8, uncalibrated(4))],
    ['1.13', 'a meter never set reads 3.8', on(8, uncalibrated(3.8))]
  ]),
  ...sharing(fine, 'own caution: the widest interval', [
    ['1.13', 'a meter never set reads 3.7', on(8, uncalibrated(3.7))]
  ])
]

/** What is waited for once and then decided. */
const ENDS: readonly Row[] = [
  ...sharing(wait, practice, [['2.30', 'flies on the cloth, seen today', jar('flies-outside')]]),
  ...sharing(fine, ends, [['2.30', 'flies for two days, none inside', jar('flies-watched')]]),
  ...sharing(wait, caution, [
    ['2.30', 'told as new and as watched', jar('flies-outside', 'flies-watched')]
  ]),
  ...sharing(wait, `Nummer 2013 on long ferments; ${ends}`, [
    ['1.20', 'fourteen days, no reading', on(14, 'unsure')],
    ['1.20', 'forty days, no reading', on(40, 'unsure')]
  ]),
  ...sharing({ batch: 'normal-growth', use: 'not-yet' }, practice, [
    ['1.20', 'thirteen days, no reading', on(13, 'unsure')]
  ]),
  ...sharing(discard, ends, [
    ['1.20', 'fourteen days, no reading again', { ...on(14, 'unsure'), ...again }],
    ['2.36', 'no film, no reading again', { ...bare, ...on(14, 'unsure'), ...again }],
    ['2.36', 'sweet on day ten, no reading again', { ...sweet, ...on(10, 'unsure'), ...again }],
    ['1.14', 'no day, in-between twice', { ...on('unsure', meter(4.2)), ...again }],
    ['1.11', 'no day and no reading, twice', { ...on('unsure', 'unsure'), ...again }]
  ]),
  ...sharing({ use: 'not-yet' }, ends, [
    ['1.14', 'no day, in-between once', on('unsure', meter(4.2))],
    ['1.11', 'no day and no reading, once', on('unsure', 'unsure')]
  ]),
  ...sharing({ batch: 'quality-only', use: 'never' }, caution, [
    ['2.53', 'still smells of wine', { ...sign('smell-and-liquid')('boozy'), ...again }]
  ]),
  ...sharing(fine, practice, [
    ['2.17', 'a dull film that turned shiny', { ...surface('wet-film'), ...again }]
  ])
]

/** No film by the fourteenth day, still sweet on the tenth: a test comes before throwing out. */
const SLOW: readonly Row[] = [
  ...sharing(wait, testedFirst, [
    ['2.36', 'fourteen days, no film, no reading', { ...bare, ...on(14, 'unsure') }],
    ['2.36', 'fourteen days, no film, acid in doubt', { ...bare, ...on(14, meter(4.16)) }],
    ['2.36', 'ten days, sweet, no reading', { ...sweet, ...on(10, 'unsure') }],
    ['2.36', 'ten days, sweet, acid in doubt', { ...sweet, ...on(10, meter(4.16)) }]
  ]),
  ...sharing(discard, ends, [
    ['2.36', 'no film, in-between twice', { ...bare, ...on(14, meter(4.16)), ...again }],
    ['2.36', 'sweet, in-between twice', { ...sweet, ...on(10, meter(4.16)), ...again }]
  ])
]

/** Plans stand beside the verdict of the batch. */
const PLANNED: readonly Row[] = [
  ...sharing({ batch: 'normal-growth', use: 'not-yet' }, caution, [
    ['4.21', 'to be sold', plan('sell-it')],
    ['4.1', 'a gift, nobody knows for whom', plan('give-it-away')]
  ]),
  ...sharing(fine, caution, [
    ['5.19', 'to be canned', plan('can-it')],
    ['1.27', 'to be kept on a shelf', plan('store-it-warm')]
  ]),
  ...sharing(mold, caution, [
    ['4.21', 'to be sold, and moldy', { ...plan('sell-it'), ...surface('dry-fuzzy') }]
  ])
]

/** Every wait of the kombucha jar, and what ends it. */
export const WAITS: readonly Row[] = [...SECOND_HAND, ...ENDS, ...SLOW, ...PLANNED]

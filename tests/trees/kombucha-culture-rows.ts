import {
  days,
  type Expected,
  meter,
  narrowStrip,
  type Row,
  sharing,
  wideStrip
} from './kombucha-jar-rows.ts'
import {
  again,
  caution,
  choice,
  discard,
  mold,
  molds,
  person,
  practice,
  sign,
  wait
} from './told.ts'

const kind = choice('culture-kind')
const signs = sign('culture-signs')
const surface = choice('surface-texture')
const smell = sign('smell-and-liquid')
const bottle = (stage: string) => ({ ...kind('plain-raw-bottle'), 'film-stage': stage })
const day = (count: number) => ({ day: days(count) })

const begin: Expected = {
  person: null,
  container: null,
  batch: 'normal-growth',
  use: 'as-directed'
}
const notYet: Expected = { use: 'not-yet' }
const never: Expected = { use: 'never' }

/** The rows on cultures and starters: sheet section 6, mold and vessels from 2 and 1. */
export const CULTURE_ROWS: readonly Row[] = [
  ...sharing(begin, practice, [
    ['6.5', 'a resting jar in strong liquid', kind('own-jar')],
    ['6.11', 'strong old liquid without a disc', kind('liquid-alone')],
    ['6.9', 'chilled, its liquid strong', kind('chilled')],
    [
      '6.13',
      'a thick disc from a plain raw bottle',
      { ...kind('plain-raw-bottle'), 'film-stage': 'thick-disc' }
    ]
  ]),
  ...sharing(begin, `${practice}; Niagara Region would rather have the first one bought`, [
    ['1.28', 'a piece from a friend in strong liquid', kind('from-a-friend')]
  ]),
  // Not yet before: a sweet taste decides nothing, its pH does (nobody tastes a starter).
  ...sharing(begin, caution, [['2.40', 'still sweet, and acid enough', smell('still-sweet')]]),
  ...sharing(notYet, caution, [
    ['2.40', 'still sweet, and too weak', { ...smell('still-sweet'), 'culture-ph': meter(3.8) }],
    ['S28', 'a piece is for sale', sign('plans')('sell-it')],
    ['S28', 'a piece is a gift', sign('plans')('give-it-away')]
  ]),
  ...sharing(notYet, practice, [
    ['1.8', 'a disc without its liquid', kind('disc-without-liquid')],
    ['6.12', 'liquid of a batch that is not finished', kind('unfinished-batch')],
    [
      '6.15',
      'distilled white vinegar',
      { ...kind('vinegar-instead'), 'vinegar-kind': 'distilled-white' }
    ],
    ['6.13', 'a haze in a store bottle', { ...kind('plain-raw-bottle'), 'film-stage': 'haze' }],
    [
      '6.13',
      'a thin white film in a store bottle',
      { ...kind('plain-raw-bottle'), 'film-stage': 'white-film' }
    ]
  ]),
  ...sharing(never, practice, [
    ['6.14', 'a pasteurized bottle', kind('pasteurized-bottle')],
    ['6.13', 'a flavored bottle', kind('flavored-bottle')],
    ['6.15', 'raw cider vinegar', { ...kind('vinegar-instead'), 'vinegar-kind': 'raw-or-cider' }]
  ]),
  ...sharing(discard, practice, [
    ['6.17', 'grown from sweet tea alone', kind('sweet-tea-alone')],
    ['6.7', 'dried up and long left alone', signs('dried-up')],
    ['2.31', 'insects inside', signs('insects-inside')],
    ['1.24', 'kept in bare metal', signs('bare-metal-vessel')],
    ['2.28', 'falling apart', surface('falling-apart')],
    ['2.48', 'smells rotten', smell('putrid')],
    ['2.33', 'ropy liquid', smell('ropy-liquid')]
  ]),
  ...sharing(discard, 'FDA CPG 525.825: harmless, discarded for quality', [
    ['2.32', 'vinegar eels', signs('tiny-eels')]
  ]),
  // Thrown out for standing near before; nothing wet went over, so two weeks of looking will do.
  ...sharing(begin, caution, [
    ['7.14', 'beside a moldy jar', signs('stood-near-mold')],
    ['2.30', 'flies for two days, none inside', signs('flies-watched')],
    ['2.17', 'a dull film that turned shiny', { ...surface('wet-film'), ...again }]
  ]),
  ...sharing(wait, caution, [
    ['3.14', 'a spoon shared with a moldy jar', signs('shared-with-mold')],
    ['2.30', 'flies on the cloth, seen today', signs('flies-outside')],
    ['2.53', 'smells of wine', smell('boozy')],
    ['2.36', 'a haze in the fourth week', { ...bottle('haze'), ...day(28) }],
    ['6.10', 'a dried culture on its thirtieth day', { ...kind('dried'), ...day(30) }],
    ['6.9', 'a frozen culture on its thirtieth day', { ...kind('frozen'), ...day(30) }]
  ]),
  ...sharing(discard, 'common practice, the end own caution', [
    ['2.36', 'a haze after four weeks', { ...bottle('haze'), ...day(29) }],
    ['2.36', 'a thin film after four weeks', { ...bottle('white-film'), ...day(29) }],
    ['2.36', 'nothing after three weeks', { ...bottle('nothing'), ...day(22) }],
    ['6.10', 'a dried culture past thirty days', { ...kind('dried'), ...day(31) }],
    ['6.9', 'a frozen culture past thirty days', { ...kind('frozen'), ...day(31) }]
  ]),
  ...sharing({ batch: 'quality-only', use: 'never' }, caution, [
    ['2.53', 'still smells of wine', { ...smell('boozy'), ...again }]
  ]),
  ...sharing(mold, `${molds}; Niagara Region`, [
    ['6.8', 'mold anywhere in the jar', signs('mold-anywhere')],
    ['2.19', 'white fuzz', surface('dry-fuzzy')],
    ['2.18', 'powder', surface('chalky-powder')]
  ]),
  ...sharing({ ...never, person: 'ask-doctor' }, caution, [
    ['4', 'a higher-risk person had some', person('at-risk-drank')]
  ])
]

/** Limits on both sides, by each instrument. */
export const CULTURE_LIMITS: readonly Row[] = [
  ...sharing(begin, practice, [
    ['6.11', 'a meter reads 3.45', { 'culture-ph': meter(3.45) }],
    ['6.11', 'a narrow strip reads 3.2', { 'culture-ph': narrowStrip(3.2) }],
    ['6.11', 'a wide strip reads 3.0', { 'culture-ph': wideStrip(3) }]
  ]),
  ...sharing(notYet, practice, [
    ['6.11', 'a meter reads 3.5', { 'culture-ph': meter(3.5) }],
    ['6.11', 'a narrow strip reads 3.3', { 'culture-ph': narrowStrip(3.3) }],
    ['6.11', 'nobody measured', { 'culture-ph': 'unsure' }]
  ]),
  ...sharing(begin, 'Queensland Government, Fermented foods', [
    ['1.10', 'the mix reads 4.55 by a meter', { 'mix-acidity': meter(4.55) }]
  ]),
  ...sharing(notYet, 'Queensland Government, Fermented foods', [
    ['1.10', 'the mix reads 4.6 by a meter', { 'mix-acidity': meter(4.6) }],
    ['1.10', 'the mix reads 4.7 by a meter', { 'mix-acidity': meter(4.7) }]
  ])
]

import { closedBottleRows } from './closed-bottle-rows.ts'
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
  doubt,
  fine,
  mold,
  molds,
  person,
  practice,
  sign,
  specialist,
  wait
} from './told.ts'

const story = sign('bottle-story')
const growth = choice('bottle-growth')
const opened = sign('opened-bottle')

const niagara = 'Niagara Region Public Health, Kombucha Best Practices'

const notReady: Expected = { batch: 'normal-growth', use: 'not-yet' }

/** The rows on bottles: sheet section 5, alcohol from 4, limits on both sides. */
export const BOTTLE_ROWS: readonly Row[] = [
  ...sharing(fine, practice, [
    ['5.1', 'three days at room temperature', { 'bottle-days': days(3) }],
    ['5.1', 'just capped', { 'bottle-days': days(0) }],
    ['5.7', 'a round swing-top', { 'bottle-kind': 'swing-top' }],
    ['5.7', 'a beer bottle', { 'bottle-kind': 'beer' }],
    ['5.7', 'a plastic soda bottle', { 'bottle-kind': 'plastic' }],
    ['5.14', 'a wet jelly disc', growth('jelly')],
    ['5.15', 'a thin, wet film in the neck', growth('neck-film')],
    ['5.16', 'floating fruit without fuzz', growth('fruit-floating')],
    ['5.10', 'chilled in time', { 'bottle-place': 'fridge-now' }]
  ]),
  ...sharing({ batch: 'yeast-strands', use: 'as-directed' }, practice, [
    ['5.14', 'sediment and strings', growth('sediment')]
  ]),
  ...sharing({ batch: 'quality-only' }, practice, [['5.18', 'flat', opened('flat')]]),
  ...sharing(mold, molds, [
    ['5.16', 'fuzz in the neck', growth('fuzz')],
    ['5.16', 'fuzz on floating fruit', growth('fuzz-on-fruit')]
  ]),
  ...sharing(mold, caution, [['6.3', 'the jar it came from had mold', story('jar-had-mold')]]),
  ...sharing(discard, practice, [
    ['2.31', 'flies or maggots', story('insects-got-in')],
    ['1.24', 'brewed in bare metal', story('bare-metal-vessel')],
    ['2.48', 'smells rotten', opened('spoiled-smell')],
    ['2.44', 'smells strongly of solvent', opened('strong-solvent')],
    ['2.50', 'smells of metal', opened('metallic')],
    ['2.33', 'ropy', opened('ropy-liquid')],
    ['2.34', 'oily sheen', opened('oily-sheen')],
    ['5.17', 'a wrinkled film', growth('wrinkled-film')],
    ['2.24', 'colored spots', growth('colored-spots')]
  ]),
  ...sharing(discard, 'FDA, traditional pottery (copy); Phan 1998', [
    ['1.23', 'brewed in glazed pottery', story('lead-risk-vessel')]
  ]),
  ...sharing({ ...discard, person: 'poison-help' }, 'HRSA Poison Help', [
    [
      '2.52',
      'a cleaner got in and somebody drank',
      { ...story('cleaner-got-in'), ...person('someone-drank') }
    ]
  ]),
  ...sharing({ ...mold, person: 'poison-help' }, caution, [
    [
      '4',
      'a higher-risk person drank from a moldy one',
      { ...growth('fuzz'), ...person('at-risk-drank') }
    ]
  ]),
  ...sharing(wait, practice, [
    ['2.49', 'musty', opened('musty')],
    ['2.45', 'a little egg or solvent', opened('faint-off-smell')]
  ]),
  ...sharing({ use: 'never' }, 'TTB, Kombucha; New Zealand recall 2022', [
    ['4.21', 'boozy', opened('boozy')]
  ]),
  ...sharing({ person: null, use: 'never' }, 'FDA, People at risk of foodborne illness (copy)', [
    ['4', 'somebody at higher risk will have some', person('at-risk-will-drink')]
  ]),
  ...sharing({ person: 'ask-doctor', use: 'never' }, caution, [
    ['4', 'somebody at higher risk had an ordinary one', person('at-risk-drank')]
  ]),
  ...sharing({ person: 'emergency' }, 'Government of Canada, botulism', [
    ['4', 'blurred vision', person('severe-symptoms')]
  ]),
  ...sharing(wait, caution, [
    ['S24', 'filled with the funnel of a moldy jar', story('shared-with-mold')],
    ['S24', 'unsure whether the funnel was shared', doubt('bottle-story')('shared-with-mold')]
  ]),
  ...sharing({ use: 'as-directed' }, practice, [
    ['S24', 'a moldy jar stood beside it', story('near-mold')],
    ['C25', 'none has been opened yet', opened('not-opened')]
  ]),
  ...sharing(specialist, caution, [['C24', 'it is ginger beer', story('another-drink')]]),
  ...sharing(discard, caution, [
    ['S25', 'lemon juice went in on the third day', story('late-acid')],
    ['S27', 'still untested at the second look', { 'bottling-ph': 'unsure', ...again }],
    ['S27', 'in between at the second look', { 'bottling-ph': meter(4.2), ...again }]
  ]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['S28', 'it is for sale', sign('plans')('sell-it')],
    ['S28', 'it is a gift', sign('plans')('give-it-away')]
  ]),
  ...sharing({ batch: 'normal-growth', use: 'as-directed' }, caution, [
    ['S28', 'it is to stand on a shelf', sign('plans')('store-it-warm')]
  ]),
  ...closedBottleRows()
]

/** Published limits on both sides, by each instrument. */
export const BOTTLE_LIMITS: readonly Row[] = [
  ...sharing(fine, `${niagara}; 21 CFR 114.80`, [
    ['5.6', 'a meter reads 4.15', { 'bottling-ph': meter(4.15) }],
    ['5.6', 'a narrow strip reads 3.9', { 'bottling-ph': narrowStrip(3.9) }],
    ['5.6', 'a wide strip reads 3.7', { 'bottling-ph': wideStrip(3.7) }]
  ]),
  ...sharing({ use: 'not-yet' }, `${niagara}; 21 CFR 114.80`, [
    ['5.6', 'a meter reads 4.2', { 'bottling-ph': meter(4.2) }],
    ['5.6', 'a narrow strip reads 4.0', { 'bottling-ph': narrowStrip(4) }],
    ['5.6', 'a wide strip reads 3.8', { 'bottling-ph': wideStrip(3.8) }],
    ['5.6', 'nobody measured', { 'bottling-ph': 'unsure' }]
  ]),
  ...sharing(notReady, 'Brewer 2021, J Food Prot 84(8):1366', [
    ['1.11', 'bottled on day 6', { 'days-in-the-jar': days(6) }],
    ['1.11', 'nobody knows the days', { 'days-in-the-jar': 'unsure' }]
  ]),
  ...sharing(discard, 'Nummer 2013, J Environ Health 76(4):8', [
    [
      '1.14',
      'a meter reads 4.3 after seven days',
      { 'bottling-ph': meter(4.3), 'days-in-the-jar': days(7) }
    ]
  ]),
  ...sharing({ batch: 'possible-toxin', use: 'never' }, `sealed and over pH 4.6: ${caution}`, [
    ['1.12', 'a meter reads 4.7', { 'bottling-ph': meter(4.7) }]
  ])
]

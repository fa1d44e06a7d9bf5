import type { Answers } from '../../src/tree/answers.ts'
import {
  acid,
  again,
  brine,
  caution,
  coldKimchi,
  discard,
  film,
  fine,
  growing,
  kind,
  mold,
  noReading,
  practice,
  salt,
  story,
  surface,
  wait
} from './brined-vegetables-told.ts'
import { days, narrowStrip, type Row, sharing, wideStrip } from './kombucha-jar-rows.ts'
import { choice, doubt, sign } from './told.ts'

// What nobody ever set with a buffer is taken to be out by as much as the coarsest strip.
const neverSet = wideStrip
const before = choice('acid-before')
const bare = (how: string): Answers => ({ ...brine('food-above-brine'), 'exposed-food': how })
const plan = sign('plans')
const kimchi = kind('kimchi')
const onDay = (day: number): Answers => ({ 'days-in-brine': days(day) })
const untold: Answers = { 'days-in-brine': 'unsure' }
const weak: Answers = { ...kind('cucumber-pickles'), 'pickle-brine': 'weaker-or-own' }

/** Acid in between, never measured, or added late: every wait has an end. */
const ACID: readonly Row[] = [
  ...sharing(wait, caution, [
    [
      'C7',
      'kimchi short of acid on day 27',
      { ...kimchi, ...acid(4.4, 27), ...before('twice-or-more') }
    ],
    ['C7', 'kimchi around the mark on day 30, first', { ...kimchi, ...acid(4.2, 30) }],
    ['C7', 'mash never measured by day 30', { ...kind('pepper-mash'), ...noReading, ...onDay(30) }],
    ['C7', 'kraut around the mark, again', { ...acid(4.6, 30), ...before('once') }],
    [
      'B3',
      'little salt, sour to 4.4, again',
      { ...salt(1.5), ...acid(4.4, 30), ...before('once') }
    ],
    ['C7', 'kimchi in doubt, day not known', { ...kimchi, ...acid(4.2, 9), ...untold }],
    ['2.3', 'perhaps vinegar went in late', doubt('jar-story')('late-acid')]
  ]),
  ...sharing(discard, caution, [
    ['C7', 'kimchi short of acid on day 28', { ...kimchi, ...acid(4.4, 28) }],
    [
      'C7',
      'kimchi around the mark on day 30, again',
      { ...kimchi, ...acid(4.2, 30), ...before('once') }
    ],
    [
      'C7',
      'kvass never measured, again',
      { ...kind('beet-kvass'), ...noReading, ...onDay(31), ...before('once') }
    ],
    ['C7', 'kraut around the mark, a third time', { ...acid(4.6, 30), ...before('twice-or-more') }],
    [
      'C7',
      'pickles around the mark, a third time',
      { ...kind('cucumber-pickles'), ...acid(4.6, 30), ...before('twice-or-more') }
    ],
    [
      'B3',
      'little salt, sour to 4.4, a third time',
      { ...salt(1.5), ...acid(4.4, 35), ...before('twice-or-more') }
    ],
    [
      'C7',
      'kimchi in doubt again, day not known',
      { ...kimchi, ...acid(4.2, 9), ...untold, ...before('once') }
    ],
    [
      'C7',
      'kraut in doubt again, day not known',
      { ...acid(4.6, 9), ...untold, ...before('once') }
    ],
    ['C7', 'cold kimchi short of acid on day 28', { ...coldKimchi, ...acid(4.4, 28) }],
    ['2.3', 'vinegar poured in on day 5', story('late-acid')]
  ]),
  ...sharing({ batch: 'normal-growth', use: 'not-yet' }, 'unh-2025, own caution', [
    ['C10', 'kraut at its time that nobody measured', noReading],
    ['C10', 'young kraut that nobody measured', { ...noReading, ...onDay(12) }],
    ['C10', 'young kimchi that nobody measured', { ...kimchi, ...noReading, ...onDay(4) }]
  ]),
  ...sharing({ batch: 'normal-growth', use: 'as-directed' }, 'missouri-salt', [
    ['2.1', 'an own brine, surely sour', { ...weak, ...acid(3.8, 35) }]
  ]),
  ...sharing(wait, caution, [
    ['S7', 'kimchi by a meter never set', { ...kimchi, 'brine-ph': neverSet(3.8) }],
    ['S7', 'kimchi by a strip at 4', { ...kimchi, 'brine-ph': narrowStrip(4) }]
  ]),
  ...sharing(fine, caution, [
    ['S7', 'kimchi by a meter never set, far below', { ...kimchi, 'brine-ph': neverSet(3.7) }]
  ])
]

/** Mold at second hand, food that stood bare, a film of unknown age. */
const SECOND_HAND: readonly Row[] = [
  ...sharing(wait, caution, [
    ['3.11', 'one spoon for this and a moldy jar', story('shared-with-mold')],
    ['3.11', 'perhaps one spoon for both', doubt('jar-story')('shared-with-mold')],
    ['C35', 'a film of unknown age', film('unsure')],
    ['C39', 'bare since yesterday', bare('up-to-three-days')],
    ['C39', 'bare for a week', bare('over-three-days')],
    ['C39', 'bare, nobody knows how long', bare('unsure')]
  ]),
  ...sharing(fine, caution, [
    ['3.11', 'a moldy jar stood near', story('near-mold')],
    ['7', 'pushed under days ago, clean since', bare('put-right')]
  ]),
  ...sharing(discard, caution, [
    ['C39', 'bare for a week, at the second look', { ...bare('over-three-days'), ...again }]
  ]),
  ...sharing(mold, caution, [['2.26', 'fur on lid, seal or cloth', story('mold-removed')]])
]

/** What somebody means to do with it stands beside the verdict. */
const PLANS: readonly Row[] = [
  ...sharing(fine, caution, [
    ['C11', 'for the canner', plan('can-it')],
    ['C11', 'for the shelf', plan('store-it-warm')]
  ]),
  ...sharing(growing, caution, [
    ['C11', 'for a market stand', plan('sell-it')],
    ['C11', 'for a potluck', plan('give-it-away')]
  ]),
  ...sharing(mold, caution, [
    ['C11', 'for the canner, with fur', { ...plan('can-it'), ...surface('dry-fuzzy') }]
  ]),
  ...sharing({ batch: 'normal-growth', use: 'not-yet' }, practice, [
    [
      'C40',
      'a plain sour smell on day 5',
      { 'brine-smell': { 'sour-cabbage': 'yes' }, ...acid(4, 5) }
    ]
  ])
]

/** Every row on doubts and their ends. */
export const DOUBT_ROWS: readonly Row[] = [...ACID, ...SECOND_HAND, ...PLANS]

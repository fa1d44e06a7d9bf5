import { days, type Row, sharing } from './kombucha-jar-rows.ts'
import { FOR_EVERYONE_ROWS, FUR_ROWS, PEOPLE_ROWS, VESSEL_ROWS } from './shared-rows.ts'
import {
  again,
  caution,
  choice,
  discard,
  doubt,
  fine,
  growing,
  growth,
  hazard,
  memory,
  mold,
  molds,
  person,
  practice,
  pressure,
  quality,
  sign,
  wait
} from './told.ts'

const mother = choice('mother-look')
const look = sign('vinegar-look')
const smell = sign('vinegar-smell')
const story = sign('vessel-story')
const lid = sign('container-signs')
const plan = sign('plans')
/** Nobody tested it, and nobody counts the days. */
const untested = { 'vinegar-ph': 'unsure', 'vinegar-days': 'unsure' } as const

const ohio = 'Ohio State Extension HYG-5346-09'
const cfia = 'Canadian Food Inspection Agency, Mother of vinegar'
const asked = 'Ask Extension 547866'
const eels = 'FDA CPG 525.825, as an encyclopedia cites it'

const LOOKS: readonly Row[] = [
  ...sharing(fine, cfia, [
    ['5.1', 'a smooth jelly disc', mother('smooth-disc')],
    ['5.1', 'no disc yet', mother('no-disc')]
  ]),
  ...sharing(fine, ohio, [['5.2', 'brown strings and sediment', mother('brown-strings')]]),
  ...sharing({ batch: 'yeast-strands', use: 'not-yet' }, practice, [
    ['5.3', 'a thin, flat, white film', growth('flat-film')],
    [
      '5.3',
      'unsure, and flat folds from the side',
      { ...growth('unsure'), 'growth-from-the-side': 'flat-ridges' }
    ],
    [
      '5.3',
      'a flat film beside a good mother',
      { ...growth('flat-film'), ...mother('smooth-disc') }
    ]
  ]),
  ...sharing(discard, caution, [
    ['5.3', 'the film is back after a week', { ...growth('flat-film'), ...again }],
    ['5.3', 'a film on a musty one', { ...growth('flat-film'), ...smell('musty') }]
  ]),
  ...sharing(mold, `${asked}; ${molds}`, [
    ['5.4', 'colored spots on mother or fruit', mother('colored-spots')],
    ['5.4', 'dry patches on mother or fruit', mother('dry-patches')],
    ['5.4', 'fuzz beside a smooth mother', { ...growth('dry-fuzzy'), ...mother('smooth-disc') }],
    [
      '5.4',
      'colored spots, with acid enough to keep',
      { ...mother('colored-spots'), 'vinegar-days': days(300) }
    ]
  ]),
  ...sharing(quality, eels, [['5.5', 'vinegar eels', look('tiny-eels')]]),
  ...sharing(wait, caution, [
    ['5.4', 'unsure of the mother', mother('unsure')],
    ['5.0', 'scraps stick out of the liquid', look('scraps-above-liquid')],
    ['5.9', 'flies outside only', look('flies-outside')]
  ]),
  // One wait of two days; flies that stayed outside are a note alone.
  ...sharing(fine, caution, [
    ['5.9', 'flies outside only, at the second look', { ...look('flies-outside'), ...again }]
  ]),
  ...sharing(discard, `${practice}; ${memory}`, [
    ['5.9', 'larvae, or flies inside', story('insects-inside')],
    ['5.9', 'larvae beside eels', { ...story('insects-inside'), ...look('tiny-eels') }]
  ]),
  // The plan gets its answer beside the verdict, which stays the vinegar's own: it is fine on salad.
  ...sharing(fine, 'Penn State Extension, Homemade vinegar acidity; own caution', [
    ['5.0', 'meant for canning or pickling', plan('can-it')]
  ]),
  ...sharing({ batch: 'normal-growth', use: 'not-yet' }, caution, [
    ['5.0', 'meant for selling', plan('sell-it')],
    ['5.0', 'meant to be given away', plan('give-it-away')]
  ]),
  ...sharing(fine, `${cfia}; ${practice}`, [
    [
      '5.1',
      'bought, with a jelly disc, past its date',
      { ...look('bought'), ...mother('smooth-disc'), ...untested }
    ],
    [
      '5.0',
      'bought, shut for weeks in a cupboard',
      { ...look('bought'), ...lid('tight-lid', 'closed-too-long'), ...untested }
    ]
  ]),
  ...sharing(quality, caution, [
    [
      '5.7',
      'bought, and smells of wine',
      { ...look('bought'), ...smell('bread-or-wine'), ...untested }
    ]
  ]),
  ...sharing(mold, molds, [
    ['5.4', 'bought, with fuzz on it', { ...look('bought'), ...growth('dry-fuzzy') }]
  ]),
  ...sharing(discard, practice, [
    ['5.8', 'bought, and smells rotten', { ...look('bought'), ...smell('rotten') }]
  ]),
  ...sharing(discard, ohio, [
    ['5.0', 'kept in metal other than stainless', story('reactive-metal')]
  ])
]

const SMELLS: readonly Row[] = [
  ...sharing(wait, `${practice}; ${memory}`, [
    ['5.6', 'smells of nail polish', smell('solvent')],
    ['5.7', 'smells of bread or wine', smell('bread-or-wine')],
    [
      '5.7',
      'smells of wine early in the acid stage',
      { ...smell('bread-or-wine'), 'vinegar-days': days(5) }
    ]
  ]),
  ...sharing(growing, memory, [['5.7', 'hardly smells sour', smell('little-smell')]]),
  ...sharing(discard, practice, [
    ['5.8', 'smells rotten', smell('rotten')],
    ['5.8', 'smells rotten and of wine', smell('rotten', 'bread-or-wine')],
    ['5.8', 'scraps smell rotten on day 3', { ...smell('rotten'), 'vinegar-days': days(3) }]
  ]),
  ...sharing(wait, caution, [['5.8', 'musty', smell('musty')]]),
  ...sharing(discard, caution, [['5.8', 'musty twice', { ...smell('musty'), ...again }]]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['5.8', 'unsure whether it smells rotten', doubt('vinegar-smell')('rotten')],
    ['5.6', 'unsure whether it smells of nail polish', doubt('vinegar-smell')('solvent')],
    [
      '5.0',
      'unsure whether it was bought, and untested',
      { ...doubt('vinegar-look')('bought'), ...untested }
    ],
    ['5.10', 'unsure whether it still bubbles', doubt('vinegar-look')('gas-bubbles')]
  ])
]

const VESSELS: readonly Row[] = [
  ...sharing(growing, memory, [['5.10', 'gas still rises', look('gas-bubbles')]]),
  // A domed lid on a jar is a caution in every tree alike; an open jar with a crack holds no gas.
  ...sharing(pressure, `${memory}; ${caution}`, [
    ['5.10', 'a bulging lid', lid('lid-bulging-or-hissing')],
    [
      '5.10',
      'a bulging lid, gas still rising',
      { ...lid('lid-bulging-or-hissing'), ...look('gas-bubbles') }
    ],
    ['5.10', 'shut for days', lid('closed-too-long', 'tight-lid')]
  ]),
  ...sharing(hazard, caution, [
    ['5.10', 'hisses and is too big for the fridge', lid('burst-or-out-of-reach')],
    ['5.10', 'cracked under a tight lid', lid('cracked-glass', 'tight-lid')]
  ]),
  ...sharing({ ...discard, container: null }, caution, [
    ['5.10', 'cracked glass, open', lid('cracked-glass')]
  ]),
  ...sharing({ ...mold, container: null }, caution, [
    [
      '5.10',
      'cracked glass around a moldy one',
      { ...lid('cracked-glass'), ...growth('dry-fuzzy') }
    ]
  ]),
  // A caution before; shut for less than 4 days it is none, in every tree alike (settled 18).
  ...sharing({ container: null, use: 'as-directed' }, caution, [
    ['5.10', 'a lid shut tight', lid('tight-lid')]
  ]),
  ...sharing(wait, caution, [
    ['5.10', 'unsure of the lid', doubt('container-signs')('lid-bulging-or-hissing')],
    ['5.10', 'unsure of the glass', doubt('container-signs')('cracked-glass')]
  ]),
  ...sharing({ container: null, use: 'not-yet' }, caution, [
    ['5.10', 'gas rises under a lid shut tight', { ...lid('tight-lid'), ...look('gas-bubbles') }]
  ]),
  // With its weeks and its acid a smell that stays is a matter of taste.
  ...sharing(quality, caution, [
    ['5.6', 'still smells of nail polish, the acid there', { ...smell('solvent'), ...again }],
    ['5.7', 'still smells of wine, the acid there', { ...smell('bread-or-wine'), ...again }]
  ]),
  ...sharing(wait, `${practice}; ${memory}`, [
    [
      '5.7',
      'still smells of wine on day 20',
      { ...smell('bread-or-wine'), ...again, 'vinegar-days': days(20) }
    ]
  ]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['5.9', 'unsure whether flies are near', doubt('vinegar-look')('flies-outside')],
    ['5.7', 'unsure whether it smells of wine', doubt('vinegar-smell')('bread-or-wine')]
  ]),
  ...sharing({ ...mold, person: 'poison-help' }, caution, [
    [
      '5.4',
      'somebody at higher risk had some with spots on it',
      { ...mother('colored-spots'), ...person('at-risk-drank') }
    ]
  ])
]

/** Everything that the sheet says of vinegar, and what holds for every ferment. */
export const VINEGAR_ROWS: readonly Row[] = [
  ...LOOKS,
  ...SMELLS,
  ...VESSELS,
  ...FUR_ROWS,
  ...PEOPLE_ROWS,
  ...FOR_EVERYONE_ROWS,
  ...VESSEL_ROWS
]

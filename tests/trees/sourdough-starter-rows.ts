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

const color = choice('dough-color')
const smell = sign('dough-smell')
const base = choice('starter-base')
const rise = choice('starter-rise')
const lid = sign('container-signs')
const told = sign('dough-told')
const age = (count: number) => ({ 'starter-age': days(count) })

const friendship = 'Colorado State Extension, SafeFood 1(2), Amish friendship bread (copy)'
const mixes = 'NC State, food safety FAQ 631, starter mix'

/** The signs table on sourdough, sheet section 3, row by row. */
const SIGNS: readonly Row[] = [
  ...sharing(fine, 'Colorado State Extension, Sourdough starter best practices', [
    ['3.0', 'bubbles, and rises the same way each time', rise('rises-predictably')],
    ['3.0', 'a film of foam, wet and flat', growth('wet-and-even')]
  ]),
  ...sharing(quality, practice, [
    ['3.1', 'gray, brown or black liquid', color('dark-liquid')],
    ['3.1', 'clear liquid', color('clear-liquid')],
    ['3.7', 'smells of vinegar, beer or nail polish', smell('sharp-or-boozy')]
  ]),
  ...sharing(mold, molds, [
    [
      '3.1',
      'dark liquid, and fuzz on the wall',
      { ...color('dark-liquid'), ...growth('dry-fuzzy') }
    ],
    ['3.6', 'a dry crust with fuzz', { ...color('dry-crust'), ...growth('dry-fuzzy') }]
  ]),
  ...sharing(discard, caution, [
    ['3.2', 'pink liquid, on rye as well', color('pink-or-orange-liquid')],
    ['3.5', 'the film is back after several feeds', { ...growth('flat-film'), ...again }],
    ['3.5', 'a film on a musty one', { ...growth('flat-film'), ...smell('musty') }]
  ]),
  ...sharing(discard, friendship, [
    ['3.3', 'a pink or orange streak', color('pink-or-orange-streak')],
    ['3.3', 'red or other colored spots', color('colored-spots')],
    [
      '3.3',
      'a pink streak in one that rises well for years',
      { ...color('pink-or-orange-streak'), ...age(3000) }
    ]
  ]),
  ...sharing({ batch: 'yeast-strands', use: 'not-yet' }, practice, [
    ['3.5', 'a flat white film', growth('flat-film')],
    [
      '3.5',
      'unsure, and flat folds from the side',
      { ...growth('unsure'), 'growth-from-the-side': 'flat-ridges' }
    ]
  ]),
  ...sharing(fine, `${practice}; ${memory}`, [['3.6', 'a dry tan crust', color('dry-crust')]]),
  ...sharing(wait, practice, [
    ['3.8', 'smells of cheese on day 2', { ...smell('cheese-or-vomit'), ...age(2) }],
    ['3.8', 'smells of vomit on day 5', { ...smell('cheese-or-vomit'), ...age(5) }],
    [
      '3.8',
      'smells of cheese on day 2 and still on day 5',
      { ...smell('cheese-or-vomit'), ...age(5), ...again }
    ],
    ['3.11', 'lively on day 2, flat on day 4', { ...rise('went-flat'), ...age(4) }],
    ['3.16', 'only liquid on it after months of rest', rise('flat-after-rest')],
    [
      '3.16',
      'flat after months, dark liquid on it',
      { ...rise('flat-after-rest'), ...color('dark-liquid') }
    ]
  ]),
  ...sharing(wait, mixes, [
    ['3.9', 'an old one smells of cheese', { ...smell('cheese-or-vomit'), ...age(100) }]
  ]),
  ...sharing(discard, `${mixes}; ${friendship}`, [
    [
      '3.9',
      'an old one smells of cheese after three feeds',
      { ...smell('cheese-or-vomit'), ...age(100), ...again }
    ],
    ['3.9', 'an old one smells rotten', smell('rotten')],
    ['3.9', 'a new one smells rotten', { ...smell('rotten'), ...age(3) }],
    ['3.10', 'slimy', smell('slimy')],
    ['3.15', 'milk left out and not soured', base('milk-not-soured')]
  ]),
  // Chilling it now would undo nothing, so nobody waits for that: what it did in the warm decides.
  ...sharing(quality, `${friendship}; ${mixes}`, [
    ['3.15', 'milk left out that turned sour', base('milk-left-out')]
  ]),
  ...sharing(fine, `${mixes}, which cites USDA`, [
    ['3.15', 'milk kept in the fridge', base('milk-kept-cold')]
  ]),
  ...sharing(wait, caution, [
    ['3.9', 'musty', smell('musty')],
    ['3.6', 'a dry crust on a musty one', { ...color('dry-crust'), ...smell('musty') }]
  ]),
  ...sharing(discard, caution, [['3.9', 'musty twice', { ...smell('musty'), ...again }]])
]

const VESSELS: readonly Row[] = [
  ...sharing({ ...pressure, batch: 'normal-growth' }, memory, [
    ['3.14', 'a bulging lid', lid('lid-bulging-or-hissing')],
    ['3.14', 'a bulging lid that shuts tight', lid('lid-bulging-or-hissing', 'tight-lid')]
  ]),
  ...sharing({ ...pressure, ...discard }, caution, [
    [
      '3.14',
      'a bulging lid on a pink one',
      { ...lid('lid-bulging-or-hissing'), ...color('pink-or-orange-streak') }
    ]
  ]),
  ...sharing(pressure, caution, [['3.14', 'shut for days', lid('closed-too-long', 'tight-lid')]]),
  ...sharing(hazard, caution, [
    ['3.14', 'cracked under a tight lid', lid('cracked-glass', 'tight-lid')],
    ['3.14', 'hisses and cannot be moved', lid('burst-or-out-of-reach')],
    [
      '3.14',
      'a bottle of it bulges',
      { ...lid('lid-bulging-or-hissing'), 'brine-vessel': 'bottle' }
    ]
  ]),
  // An open jar holds no gas: bits of glass, no burst.
  ...sharing({ ...discard, container: null }, caution, [
    ['3.14', 'cracked glass, open', lid('cracked-glass')]
  ]),
  ...sharing(fine, practice, [['3.14', 'a tight lid that lies flat', lid('tight-lid')]]),
  ...sharing(wait, caution, [
    ['3.14', 'unsure of the lid', doubt('container-signs')('lid-bulging-or-hissing')],
    ['3.14', 'unsure of the glass', doubt('container-signs')('cracked-glass')]
  ]),
  ...sharing({ container: null }, caution, [
    ['3.14', 'unsure of the glass of an open jar', doubt('container-signs')('cracked-glass')]
  ])
]

/** What callers tell besides, and what a doubt comes to when it is looked at again. */
const TOLD: readonly Row[] = [
  ...sharing(fine, caution, [
    ['3.13', 'bugs in the flour, none in the starter', told('bugs-in-the-flour')],
    ['3.0', 'bread was baked from it', told('baked-from-it')],
    ['3.0', 'it is meant for selling', told('meant-to-sell')]
  ]),
  ...sharing(fine, practice, [['3.10', 'sticky, and not slimy', told('sticky')]]),
  ...sharing(growing, practice, [['3.16', 'just out of the fridge', rise('not-fed-yet')]]),
  ...sharing(discard, caution, [
    ['3.3', 'unsure of the color twice', { ...color('unsure'), ...again }],
    ['3.9', 'unsure whether it is rotten, twice', { ...doubt('dough-smell')('rotten'), ...again }],
    ['3.15', 'unsure of what it is made, twice', { ...base('unsure'), ...again }],
    [
      '3.12',
      'no activity at the second look, its age unknown',
      { ...rise('never-active'), 'starter-age': 'unsure', ...again }
    ],
    [
      '3.15',
      'a pink one, and bread was baked from it',
      { ...color('pink-or-orange-streak'), ...told('baked-from-it') }
    ]
  ])
]

const DOUBTS: readonly Row[] = [
  ...sharing({ use: 'not-yet' }, caution, [
    ['3.0', 'rises now and then', rise('uneven-rise')],
    ['3.0', 'unsure how it rises', rise('unsure')],
    ['3.3', 'unsure of the color', color('unsure')],
    ['3.9', 'unsure whether it smells rotten', doubt('dough-smell')('rotten')],
    ['3.10', 'unsure whether it is slimy', doubt('dough-smell')('slimy')],
    ['3.15', 'unsure what it is made of', base('unsure')],
    ['3.0', 'nobody knows its age', { 'starter-age': 'unsure' }]
  ]),
  ...sharing({ ...discard, person: 'poison-help' }, caution, [
    [
      '3.3',
      'somebody at higher risk ate some of a pink one',
      { ...color('pink-or-orange-streak'), ...person('at-risk-drank') }
    ]
  ])
]

/** Two things at once: the worse one counts. */
const TOGETHER: readonly Row[] = [
  ...sharing(discard, `${mixes}; ${friendship}`, [
    ['3.10', 'slimy on day 3', { ...smell('slimy'), ...age(3) }],
    ['3.9', 'hungry and rotten', smell('sharp-or-boozy', 'rotten')],
    [
      '3.15',
      'milk left out, not soured, rises well',
      { ...base('milk-not-soured'), ...rise('rises-predictably') }
    ]
  ]),
  ...sharing({ ...pressure, ...discard }, caution, [
    [
      '3.14',
      'a bulging lid on a rotten one',
      { ...lid('lid-bulging-or-hissing'), ...smell('rotten') }
    ]
  ]),
  ...sharing({ batch: 'quality-only', use: 'not-yet' }, practice, [
    ['3.1', 'dark liquid on day 5', { ...color('dark-liquid'), ...age(5) }],
    ['3.7', 'smells of nail polish on day 6', { ...smell('sharp-or-boozy'), ...age(6) }]
  ]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['3.8', 'unsure whether it smells of cheese', doubt('dough-smell')('cheese-or-vomit')],
    ['3.9', 'unsure whether it smells musty', doubt('dough-smell')('musty')]
  ]),
  ...sharing({ ...discard, person: 'poison-help' }, caution, [
    [
      '3.15',
      'somebody at higher risk ate some of an unsoured milk starter',
      { ...base('milk-not-soured'), ...person('at-risk-drank') }
    ]
  ])
]

/** Everything that the sheet says of a starter, and the limits that hold for every ferment. */
export const STARTER_ROWS: readonly Row[] = [
  ...SIGNS,
  ...VESSELS,
  ...TOLD,
  ...DOUBTS,
  ...TOGETHER,
  ...FUR_ROWS,
  ...PEOPLE_ROWS,
  ...FOR_EVERYONE_ROWS,
  ...VESSEL_ROWS
]

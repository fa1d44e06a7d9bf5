import type { Answers } from '../../src/tree/answers.ts'
import {
  discard,
  emergency,
  fine,
  growing,
  mold,
  people,
  type Statement,
  signs,
  specialist,
  statedIn,
  toxin,
  wait
} from './published.ts'
import { days, meter, narrowStrip } from './told.ts'

const dough = statedIn('sourdough-starter')
const kefir = statedIn('milk-and-water-kefir')
const vinegar = statedIn('vinegar-mother')
const outside = statedIn('outside-this-tool')
const growth = (answer: string): Answers => ({ 'surface-growth': answer })
const base = (answer: string): Answers => ({ 'starter-base': answer })
const kefirAt = (ph: number, time: string): Answers => ({
  'kefir-ph': meter(ph),
  'kefir-time': time
})
const yogurt: Answers = { 'kefir-kind': 'yogurt' }
const kind = (answer: string): Answers => ({ 'outside-kind': answer })

/** What is published on sourdough starters. */
export const DOUGH_STATEMENTS: readonly Statement[] = [
  ...dough('csu-sourdough', 'land-grant extension', [
    [
      'a starter is covered loosely',
      signs('container-signs', 'tight-lid'),
      { ...fine, says: ['rest-the-lid-loosely'] }
    ],
    [
      'raw starter is raw flour and is baked, not eaten',
      {},
      { ...fine, says: ['bake-it-through'] }
    ],
    ['a starter shows by its rise that it works', { 'starter-rise': 'rises-predictably' }, fine],
    [
      'a starter that does not rise does not work yet',
      { 'starter-rise': 'never-active', 'starter-age': days(9) },
      wait
    ]
  ]),
  ...dough('csu-friendship-bread', 'land-grant extension', [
    [
      'a starter with pink or orange in it is thrown out',
      { 'dough-color': 'pink-or-orange-streak' },
      { ...discard, says: ['pink-dough'] }
    ],
    ['a starter with mold is thrown out', growth('dry-fuzzy'), mold],
    [
      'a starter made with milk is of little risk only where it turned sour',
      base('milk-not-soured'),
      discard
    ]
  ]),
  ...dough('ncsu-starter', 'land-grant extension', [
    // Other experts see little risk once it soured. So it is chilled at once, and its history decides:
    // to wait a day in the cold would show nothing.
    [
      'a starter made with milk is not left out of the cold',
      base('milk-left-out'),
      { says: ['chill-milk-dough', 'milk-soured-in-time'], leavesOut: ['feed-and-cover-loosely'] }
    ],
    ['a starter made with milk is kept in the cold', base('milk-kept-cold'), fine],
    ['slimy starter is thrown out', signs('dough-smell', 'slimy'), discard]
  ]),
  ...dough('dough-2011', 'journal', [
    [
      'germs multiply in dough that has no sour bacteria yet',
      { 'starter-age': days(6) },
      { ...growing, says: ['the-first-week'] }
    ]
  ])
]

/** What is published on kefir and yogurt. */
export const KEFIR_STATEMENTS: readonly Statement[] = [
  ...kefir('nummer-kefir', 'NCHFP', [
    ['milk kefir takes about a day', { 'kefir-time': 'one-to-two-days' }, fine],
    [
      'kefir ferments between 64 and 72 °F',
      signs('kefir-habits', 'hot-or-cold-room'),
      { says: ['kefir-room'] }
    ]
  ]),
  ...kefir('kefir-haccp', 'land-grant extension', [
    ['kefir is at a pH of 5.0 or lower after a day', kefirAt(5.06, 'one-to-two-days'), discard],
    [
      'kefir at a pH of 5.0 after a day keeps to its limit',
      kefirAt(4.95, 'one-to-two-days'),
      growing
    ],
    [
      'kefir is made of pasteurized milk',
      signs('milk-history', 'raw-milk'),
      { ...specialist, says: ['raw-milk-kefir'] }
    ]
  ]),
  ...kefir('home-yogurt', 'NCHFP', [
    [
      'yogurt that did not set in its time is thrown out',
      { ...yogurt, 'yogurt-set': 'never-set' },
      discard
    ],
    [
      'clear yellow liquid on yogurt is whey',
      { ...yogurt, 'kefir-color': 'yellow-whey' },
      { ...fine, says: ['whey-is-usual'] }
    ],
    [
      'yogurt is made of milk that was heated',
      { ...yogurt, ...signs('milk-history', 'raw-milk') },
      discard
    ]
  ]),
  ...kefir('two-hour-rule', 'USDA', [
    [
      'perishable food that stood out for more than two hours is thrown out',
      { ...yogurt, ...signs('milk-history', 'left-out-too-long') },
      discard
    ]
  ]),
  ...kefir('yogurt-mold-2014', 'journal', [
    [
      'a mold from yogurt can harm people whose immune system is weak',
      { ...yogurt, ...growth('dry-fuzzy'), ...people('at-risk-drank') },
      { ...mold, person: 'poison-help' }
    ]
  ]),
  ...kefir('yogurt-recall-2013', 'news', [
    [
      'gas in yogurt tells of spoilage',
      { ...yogurt, ...signs('kefir-signs', 'gas') },
      { ...discard, says: ['gas-in-yogurt'] }
    ]
  ]),
  ...kefir('bcit-water-kefir', 'journal', [
    [
      'about a fifth of the water kefirs on sale held more than 1 percent of alcohol',
      { 'kefir-kind': 'water-kefir-bottle', ...people('at-risk-will-drink') },
      { use: 'never', says: ['bottles-hold-gas'] }
    ]
  ]),
  ...kefir('cfr-114-80', 'FDA', [
    [
      'a strip leaves the acid of kefir open above a pH of 4.0',
      { 'kefir-ph': narrowStrip(4.5), 'kefir-time': 'two-to-three-days' },
      { ...wait, says: ['kefir-by-meter'] }
    ]
  ])
]

/** What is published on vinegar and its mother. */
export const VINEGAR_STATEMENTS: readonly Statement[] = [
  ...vinegar('osu-vinegar', 'land-grant extension', [
    [
      'vinegar needs air through a cloth',
      signs('container-signs', 'tight-lid'),
      { says: ['vinegar-needs-air'] }
    ],
    [
      'no metal but stainless steel touches vinegar',
      signs('vessel-story', 'reactive-metal'),
      discard
    ],
    [
      'vinegar is made between 60 and 80 °F',
      signs('vinegar-habits', 'hot-or-cold-place'),
      { says: ['vinegar-room'] }
    ]
  ]),
  ...vinegar('cfia-mother', 'government abroad', [
    [
      'a smooth jelly in vinegar is the mother, and no fault',
      { 'mother-look': 'smooth-disc' },
      { ...fine, says: ['that-is-the-mother'] }
    ]
  ]),
  ...vinegar('ask-extension-vinegar', 'land-grant extension', [
    [
      'moldy vinegar is not used, not even for cleaning',
      { 'mother-look': 'dry-patches' },
      { ...mold, says: ['not-even-for-cleaning', 'keep-no-mother'] }
    ]
  ]),
  ...vinegar('psu-vinegar', 'land-grant extension', [
    [
      'homemade vinegar is of unknown strength and not for canning',
      signs('plans', 'can-it'),
      { ...fine, says: ['never-can-with-it', 'no-canning-with-this'] }
    ]
  ]),
  ...vinegar('fda-cpg-vinegar-eels', 'FDA', [
    [
      'vinegar eels are unwanted in vinegar and harm nobody',
      signs('vinegar-look', 'tiny-eels'),
      { person: null, atMost: 'quality-only', says: ['eels-in-vinegar'] }
    ]
  ])
]

/** What is published on foods that no other tree is for. */
export const OUTSIDE_STATEMENTS: readonly Statement[] = [
  ...outside('cdc-canned', 'CDC', [
    [
      'a canned jar that leaks may hold toxin and is not opened',
      { ...kind('canned-jar'), ...signs('closed-jar-signs', 'bulging-or-leaking') },
      { ...toxin, says: ['do-not-open-taste-pour'] }
    ],
    [
      'a canned jar that spurts is bagged twice and kept out of sink and compost',
      { ...kind('canned-jar'), ...signs('closed-jar-signs', 'spurted') },
      { ...toxin, says: ['bag-it-upright', 'out-of-sink-and-compost', 'clean-a-toxin-spill'] }
    ]
  ]),
  ...outside('wsu-botulism', 'land-grant extension', [
    [
      'signs of botulism may come as late as ten days after',
      { ...kind('oil-or-tofu'), ...people('someone-drank') },
      { ...toxin, person: 'poison-help', says: ['watch-ten-days', 'toxin-any-sign-911'] }
    ]
  ]),
  ...outside('morse-1990', 'journal', [
    ['garlic under oil at a pH of 5.7 made people ill', kind('oil-or-tofu'), toxin]
  ]),
  ...outside('mmwr-tofu-2013', 'CDC', [
    [
      'toxin of botulism was found in tofu fermented at home',
      { ...kind('oil-or-tofu'), ...people('at-risk-drank') },
      { ...toxin, person: 'poison-help', says: ['airless-and-not-sour'] }
    ]
  ]),
  ...outside('poison-org-bongkrek', 'poison center or hospital', [
    [
      'a toxin in coconut press-cake outlasts cooking and has no smell',
      kind('press-cake-tempeh'),
      { ...toxin, says: ['press-cake-toxin'] }
    ],
    [
      'whoever is unwell after press-cake needs help at once',
      {
        ...kind('press-cake-tempeh'),
        ...signs('press-cake-eaters', 'unwell-after-press-cake')
      },
      { ...emergency, says: ['call-911'] }
    ]
  ]),
  ...outside('salmonella-tempeh-2012', 'news', [
    [
      'tempeh from a tainted starter made people ill',
      kind('tempeh'),
      { ...specialist, says: ['tempeh-is-cooked'] }
    ]
  ])
]

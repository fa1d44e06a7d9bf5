import type { Answers } from '../../src/tree/answers.ts'
import {
  acid,
  brine,
  coldKimchi,
  color,
  film,
  kind,
  lid,
  pigment,
  salt,
  smell,
  story,
  surface,
  warmth
} from './brined-vegetables-told.ts'
import {
  discard,
  emergency,
  fine,
  growing,
  mold,
  people,
  type Statement,
  signs,
  statedIn,
  toxin,
  wait
} from './published.ts'
import { days } from './told.ts'

const stated = statedIn('brined-vegetables')
const pickles = kind('cucumber-pickles')
const cutSalt: Answers = signs('packing-habits', 'salt-was-cut')
const soft = (share: number): Answers => ({ ...brine('soft'), ...salt(share), ...acid(3.8, 35) })
const kvass = (day: number): Answers => ({ ...kind('beet-kvass'), ...acid(4.1, day) })

/** What is published on vegetables in brine. */
export const VEGETABLE_STATEMENTS: readonly Statement[] = [
  ...stated('usda-kraut', 'USDA', [
    [
      'three tablespoons of salt to five pounds of cabbage, some 2.4 percent, is right',
      salt(2.4),
      { ...fine, leavesOut: ['too-little-salt', 'salt-at-the-edge', 'too-much-salt'] }
    ],
    [
      'three quarters of a cup to 25 pounds, some 1.9 percent, will do',
      salt(1.9),
      { ...fine, leavesOut: ['too-little-salt'] }
    ],
    ['kraut at 70 to 75 °F takes three to four weeks', acid(3.6, 28), fine],
    [
      'kraut in a cooler room takes five to six weeks',
      { ...acid(3.6, 41), ...warmth('under-sixty-five') },
      { ...growing, says: ['cold-takes-six-weeks'] }
    ],
    [
      'kraut is done after six weeks in a cooler room',
      { ...acid(3.6, 42), ...warmth('under-sixty-five') },
      fine
    ]
  ]),
  ...stated('unh-2025', 'land-grant extension', [
    [
      'a ferment of less than three weeks is not finished',
      acid(3.6, 20),
      { ...growing, says: ['wait-out-the-recipe'] }
    ]
  ]),
  ...stated('usda-dills', 'USDA', [
    [
      'scum on pickles is taken off as it comes',
      { ...pickles, ...film('thin-and-new') },
      { batch: 'yeast-strands', says: ['skim-the-flat-film'] }
    ],
    ['pickles that turn soft are thrown out', { ...pickles, ...brine('soft') }, discard],
    ['pickles that turn slimy are thrown out', { ...pickles, ...brine('slime') }, discard],
    ['pickles that smell bad are thrown out', { ...pickles, ...smell('putrid') }, discard]
  ]),
  ...stated('usda-containers', 'USDA', [
    [
      'food stays one to two inches under the brine',
      brine('food-above-brine'),
      { atLeast: 'wait-and-recheck', says: ['push-food-under'] }
    ],
    ['gas rises while it ferments', acid(3.9, 5), growing]
  ]),
  ...stated('nchfp-ferment-problems', 'NCHFP', [
    ['hollow pickles come from how cucumbers grow', { ...pickles, ...brine('hollow') }, fine],
    [
      'pickles that took up copper are not eaten',
      { ...pickles, ...color('metallic-green') },
      { ...discard, says: ['retire-the-metal'] }
    ]
  ]),
  ...stated('penn-state-fermentation', 'land-grant extension', [
    ['copper, iron and galvanized metal never hold a ferment', story('reactive-metal'), discard],
    [
      'a crock with lead in its glaze never holds a ferment',
      story('old-pottery'),
      { ...discard, says: ['never-use-this-pot-again'] }
    ]
  ]),
  ...stated('osu-kraut', 'land-grant extension', [
    [
      'kraut with a clean sour smell that is soft has lost quality alone',
      soft(2.4),
      { batch: 'quality-only', use: 'as-directed' }
    ],
    [
      'kraut with 1.7 percent of salt or less turns soft',
      soft(1.69),
      { ...discard, says: ['too-little-salt'] }
    ],
    [
      'kraut turned pink by a red vegetable is as it should be',
      { ...color('even-pink'), ...pigment('source-in-jar') },
      fine
    ],
    ['slimy kraut is thrown out', brine('slime'), discard],
    ['a white film on kraut is yeast', film('thin-and-new'), { atMost: 'yeast-strands' }]
  ]),
  ...stated('ncsu-pickle-problems', 'land-grant extension', [
    ['pickles shrivel in a strong brine', { ...pickles, ...brine('shriveled') }, fine]
  ]),
  ...stated('clemson-pickles', 'land-grant extension', [
    ['the brine of fermented pickles turns cloudy', { ...pickles, ...brine('cloudy') }, fine],
    [
      'pickles turned pink by yeast are thrown out',
      { ...pickles, ...color('pink-patches'), ...pigment('no-source') },
      discard
    ]
  ]),
  ...stated('missouri-garlic', 'land-grant extension', [
    ['pickles may be eaten though their garlic turned blue', color('garlic-blue'), fine]
  ]),
  ...stated('msu-discoloration', 'land-grant extension', [
    [
      'iron in the water turns a brine red',
      { ...color('even-pink'), ...pigment('iron-water') },
      fine
    ]
  ]),
  ...stated('msu-reduced-salt', 'land-grant extension', [
    ['salt is never cut in a ferment', cutSalt, { says: ['never-cut-the-salt'] }]
  ]),
  ...stated('satora-2020', 'journal', [
    ['salt over 3 percent favors pink yeasts', salt(3.01), { says: ['too-much-salt'] }]
  ]),
  ...stated('ncsu-faq', 'land-grant extension', [
    [
      'kraut does not ferment as it should above 80 to 85 °F',
      { ...soft(2.4), ...warmth('over-eighty') },
      { ...discard, says: ['soft-and-off-limits'] }
    ],
    [
      'kraut that smells of yeast is not canned',
      smell('yeasty-or-alcohol'),
      { batch: 'quality-only', says: ['do-not-can-this'] }
    ]
  ]),
  ...stated('ask-extension-mold', 'land-grant extension', [
    [
      'round spots with dark centers are mold, and all of it goes',
      surface('spots-with-dark-centers'),
      { ...mold, says: ['throw-out-food-and-brine'] }
    ]
  ]),
  ...stated('breidt-2013', 'journal', [
    ['a brine whose pH climbs again is spoiling', story('ph-rose'), discard],
    [
      'spoiling brine smells of cheese and manure',
      smell('manure-or-strong-cheese'),
      { ...discard, says: ['smells-of-eaten-acid'] }
    ]
  ]),
  ...stated('snyder-2020', 'journal', [
    ['a vegetable ferment has to fall below a pH of 4.6', acid(4.66, 35), discard],
    ['a vegetable ferment that fell below 4.6 has met its limit', acid(4.55, 35), fine]
  ]),
  ...stated('niksic-2005', 'journal', [
    ['germs outlast most of the time that kraut ferments', acid(3.5, 15), growing]
  ]),
  ...stated('acharya-2021', 'journal', [
    ['in kraut juice the acid grows for seven days', kvass(6), growing],
    ['in kraut juice hardly any germs were left on the seventh day', kvass(7), fine]
  ]),
  ...stated('smith-2023', 'journal', [
    [
      'kimchi eaten young made people ill at a pH of 4.1',
      { ...kind('kimchi'), ...acid(4.1, 6) },
      { use: 'not-yet', says: ['a-week-and-acid'] }
    ]
  ]),
  ...stated('gill-2024', 'not noted', [
    [
      'in cold sour kimchi germs hardly die off in eight weeks',
      { ...coldKimchi, ...acid(4.1, 27) },
      { ...growing, says: ['sour-cold-kimchi', 'four-cold-weeks'] }
    ],
    [
      'sour kimchi from the cold may carry germs at any age',
      { ...coldKimchi, ...acid(4.1, 28) },
      { ...fine, says: ['sour-cold-kimchi'], leavesOut: ['four-cold-weeks'] }
    ]
  ]),
  ...stated('park-2015', 'journal', [
    [
      'kimchi put straight in the cold barely turns sour in three weeks',
      { ...coldKimchi, 'brine-ph': 'unsure', 'days-in-brine': days(21) },
      { ...wait, says: ['cold-kimchi'] }
    ]
  ]),
  ...stated('wsu-botulism', 'land-grant extension', [
    [
      'a canned jar that bulges may hold toxin',
      { ...kind('canned'), ...lid('lid-domed-or-leaking') },
      { ...toxin, says: ['do-not-open-taste-pour', 'bag-twice'] }
    ]
  ]),
  ...stated('cdc-garlic-oil', 'CDC', [
    [
      'garlic in oil that was not kept cold is not eaten',
      { ...kind('in-oil'), 'oil-kept': 'warm-or-over-four-days' },
      toxin
    ],
    [
      'garlic in oil is kept cold, and four days at most',
      { ...kind('in-oil'), 'oil-kept': 'cold-four-days' },
      { use: 'as-directed', says: ['oil-has-four-days', 'oil-out-on-day-five'] }
    ]
  ]),
  ...stated('amarillo-2013', 'state or local government', [
    [
      'vegetables closed up for weeks that never turned sour are thought to have held toxin',
      { ...lid('tight-lid'), ...acid(4.8, 35) },
      { ...toxin, says: ['sealed-and-not-sour'] }
    ]
  ]),
  ...stated('canada-botulism', 'government abroad', [
    [
      'double vision, slurred speech and trouble swallowing speak of botulism',
      people('severe-symptoms'),
      { ...emergency, says: ['call-911'] }
    ]
  ])
]

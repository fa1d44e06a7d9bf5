import {
  acid,
  again,
  brine,
  caution,
  color,
  discard,
  film,
  fine,
  growing,
  kind,
  mold,
  noReading,
  pigment,
  practice,
  quality,
  salt,
  smell,
  story,
  surface,
  wait,
  warmth,
  yeast
} from './brined-vegetables-told.ts'
import { days, type Row, sharing } from './kombucha-jar-rows.ts'

/** Section 2.3: what is ordinary in kraut, pickles and mixed vegetables, and what is a nuisance. */
const MILD: readonly Row[] = [
  ...sharing(growing, 'usda-containers', [
    ['2.3', 'gas in the first week', { ...surface('wet-and-even'), ...acid(3.9, 5) }]
  ]),
  ...sharing(growing, practice, [
    ['2.3', 'cabbage gas in the first week', { ...smell('egg-or-sulfur'), ...acid(4, 5) }],
    ['2.3', 'nothing bubbles, yet sour', { ...brine('no-bubbles'), ...acid(4.3, 3) }]
  ]),
  ...sharing(fine, practice, [['2.3', 'froth of a brownish white', brine('foam')]]),
  ...sharing(fine, 'clemson-pickles, msu-cloudiness', [
    ['2.3', 'a fermented brine turned milky', { ...kind('cucumber-pickles'), ...brine('cloudy') }]
  ]),
  ...sharing(fine, 'pickling-troubleshooting', [
    ['2.3', 'pale dust that settled', brine('sediment')]
  ]),
  ...sharing(fine, 'osu-kraut, clemson-pickles', [
    ['2.3', 'red cabbage lends its dye', { ...color('even-pink'), ...pigment('source-in-jar') }]
  ]),
  ...sharing(fine, 'msu-discoloration', [
    ['2.3', 'water with iron in it', { ...color('even-pink'), ...pigment('iron-water') }]
  ]),
  ...sharing(fine, 'nchfp-ferment-problems, ncsu-pickle-problems', [
    ['2.3', 'empty cores', { ...kind('cucumber-pickles'), ...brine('hollow') }],
    ['2.3', 'wrinkled skins', { ...kind('cucumber-pickles'), ...brine('shriveled') }]
  ]),
  ...sharing(fine, 'missouri-garlic, clemson-pickles', [
    ['2.3', 'cloves gone blue', { ...kind('other-vegetables'), ...color('garlic-blue') }]
  ]),
  ...sharing({ use: 'as-directed' }, 'osu-kraut, msu-discoloration', [
    ['2.3', 'dull gray and nothing else', color('gray-through')]
  ]),
  ...sharing(quality, 'osu-kraut', [
    ['2.3', 'brown under the brine', color('dark-top')],
    ['2.3', 'limp kraut within every limit', brine('soft')]
  ]),
  ...sharing(quality, 'ncsu-faq', [['2.3', 'a smell of bread', smell('yeasty-or-alcohol')]]),
  ...sharing(yeast, 'osu-kraut, ncsu-pickle-problems', [
    ['2.3', 'a thin white skin', film('thin-and-new')],
    [
      '1.7',
      'flat folds in a light from the side',
      {
        ...surface('unsure'),
        'growth-from-the-side': 'flat-ridges'
      }
    ]
  ]),
  ...sharing(yeast, caution, [
    ['2.3', 'a thick skin, acid proved anew', { ...film('thick-for-weeks'), ...acid(3.8, 50) }]
  ]),
  ...sharing(wait, practice, [
    ['2.3', 'nail polish, first time', smell('solvent')],
    [
      '2.3',
      'nothing bubbles, nobody measured',
      {
        ...brine('no-bubbles'),
        ...noReading,
        'days-in-brine': days(3)
      }
    ]
  ]),
  ...sharing(wait, caution, [
    ['2.3', 'pieces that float', brine('food-above-brine')],
    [
      '2.3',
      'brown where it stands in air, sour',
      {
        ...color('dark-top'),
        ...brine('food-above-brine')
      }
    ],
    [
      '2.3',
      'pink here and there beside beets',
      {
        ...color('pink-patches'),
        ...pigment('source-in-jar')
      }
    ],
    ['8', 'cannot tell slime', { 'brine-signs': { slime: 'unsure' } }]
  ])
]

/** Section 2.3, and 1.7: what is thrown out. */
const THROWN: readonly Row[] = [
  ...sharing(mold, 'ask-extension-mold, osu-kraut', [
    ['2.3', 'white fur', surface('dry-fuzzy')],
    ['2.3', 'green fur', { ...surface('dry-fuzzy'), ...color('colored-spots') }],
    ['2.3', 'fur on blue garlic', { ...surface('dry-fuzzy'), ...color('garlic-blue') }],
    ['1.7', 'round spots, dark in the middle', surface('spots-with-dark-centers')],
    ['2.6', 'fur on a very sour brine', { ...surface('dry-fuzzy'), ...acid(3.2, 40) }]
  ]),
  ...sharing(mold, practice, [
    ['1.7', 'a dusting', surface('chalky-powder')],
    [
      '1.7',
      'hairs in a light from the side',
      {
        ...surface('unsure'),
        'growth-from-the-side': 'hairs-or-powder'
      }
    ]
  ]),
  ...sharing(mold, caution, [['2.6', 'fur spooned off before', story('mold-removed')]]),
  ...sharing(discard, 'breidt-2013', [
    ['2.3', 'a thick skin, nobody measured', { ...film('thick-for-weeks'), ...noReading }],
    ['2.3', 'a thick skin, acid in doubt', { ...film('thick-for-weeks'), ...acid(4.6, 50) }],
    ['2.3', 'barnyard', smell('manure-or-strong-cheese')],
    ['1.3', 'sour once, less so now', story('ph-rose')]
  ]),
  ...sharing(discard, caution, [
    ['7', 'a skin that returned twice', film('came-back-twice')],
    [
      '2.3',
      'a skin over bare food, nobody measured',
      {
        ...film('thin-and-new'),
        ...brine('food-above-brine'),
        ...noReading
      }
    ],
    ['2.3', 'orange spots', color('colored-spots')],
    [
      '2.3',
      'brown in air, nobody measured',
      {
        ...color('dark-top'),
        ...brine('food-above-brine'),
        ...noReading
      }
    ],
    [
      '2.3',
      'brown in air and limp',
      { ...color('dark-top'), ...brine('food-above-brine', 'soft') }
    ],
    ['2.3', 'gray with a cellar smell', { ...color('gray-through'), ...smell('musty') }],
    ['8', 'cannot tell slime, twice', { 'brine-signs': { slime: 'unsure' }, ...again }]
  ]),
  ...sharing(discard, 'clemson-pickles, satora-2020', [
    [
      '2.3',
      'pink here and there, green cabbage',
      {
        ...color('pink-patches'),
        ...pigment('no-source')
      }
    ],
    ['2.3', 'pink all through, green cabbage', { ...color('even-pink'), ...pigment('no-source') }]
  ]),
  ...sharing(discard, 'osu-kraut, ncsu-pickle-problems, usda-dills', [
    ['2.3', 'brine that pulls strings', brine('slime')],
    ['2.3', 'settled dust in thick brine', brine('sediment', 'slime')],
    ['2.3', 'bread smell in thick brine', { ...smell('yeasty-or-alcohol'), ...brine('slime') }],
    ['2.3', 'limp cucumbers', { ...kind('cucumber-pickles'), ...brine('soft') }],
    ['2.3', 'limp kraut, little salt', { ...brine('soft'), ...salt(1.6) }],
    ['2.3', 'limp kraut, salt unknown', { ...brine('soft'), 'salt-share': 'unsure' }],
    ['2.3', 'limp kraut, a hot room', { ...brine('soft'), ...warmth('over-eighty') }],
    ['2.3', 'limp kraut, nobody measured', { ...brine('soft'), ...noReading }],
    ['2.3', 'rotten', smell('putrid')]
  ]),
  ...sharing(discard, practice, [
    ['2.3', 'nail polish that stays', { ...smell('solvent'), ...again }],
    ['2.3', 'maggots', story('insects-inside')]
  ]),
  ...sharing(discard, 'from-memory', [['2.3', 'ammonia', smell('ammonia')]]),
  ...sharing(discard, 'nchfp-ferment-problems', [
    ['2.3', 'a shining green', color('metallic-green')],
    ['2.1', 'a brass weight', story('reactive-metal')]
  ]),
  ...sharing(discard, 'fda-pottery', [['2.1', 'an old painted pot', story('old-pottery')]])
]

/** Every row of the signs table that a walk can show. */
export const SIGN_ROWS: readonly Row[] = [...MILD, ...THROWN]

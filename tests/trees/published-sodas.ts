import type { Answers } from '../../src/tree/answers.ts'
import {
  discard,
  emergency,
  growing,
  mold,
  people,
  type Statement,
  signs,
  statedIn,
  toxin
} from './published.ts'
import { meter } from './told.ts'

const soda = statedIn('wild-sodas')
const bug: Answers = { 'soda-kind': 'ginger-bug' }
const tepache: Answers = { 'soda-kind': 'open-soda' }
const bottled: Answers = { 'soda-kind': 'soda-bottle' }

/**
 * What is published on ferments in general and holds of wild sodas: no publication was found that says
 * when one is ready, so none frees it.
 */
export const SODA_STATEMENTS: readonly Statement[] = [
  ...soda('fsis-molds', 'USDA', [
    [
      'soft, moist food with mold on it is thrown out whole',
      { ...bug, 'surface-growth': 'dry-fuzzy' },
      { ...mold, leavesOut: ['skim-the-soda-film', 'tend-the-soda'] }
    ],
    [
      'nobody sniffs it',
      { ...tepache, 'surface-growth': 'chalky-powder' },
      { ...mold, says: ['do-not-sniff'] }
    ]
  ]),
  ...soda('queensland-fermented', 'government abroad', [
    [
      'above a pH of 4.6 the spores of botulism can grow in a closed soda',
      { ...bottled, 'soda-ph': meter(4.66) },
      { ...toxin, says: ['do-not-open-taste-pour'], leavesOut: ['open-over-a-sink'] }
    ],
    [
      'at a pH of 4.6 and under those spores do not grow in a soda',
      { ...bottled, 'soda-ph': meter(4.55) },
      { ...growing, says: ['ask-about-the-soda'] }
    ],
    [
      'a ferment is to be at a pH of 4.6 within its first day',
      { ...tepache, 'soda-ph': meter(4.66), 'soda-age': 'three-to-seven-days' },
      discard
    ]
  ]),
  ...soda('ny-agriculture-kombucha', 'state or local government', [
    [
      'a container that gives way is one of the hazards of a drink that ferments in it',
      { ...bottled, ...signs('bottle-signs', 'bulging') },
      { container: 'pressure-hazard', use: 'never', says: ['leave-it-be', 'everyone-out'] }
    ]
  ]),
  ...soda('nz-recall-2022', 'government abroad', [
    [
      'cold slows such a drink and does not stop it',
      { ...bottled, 'bottle-place': 'fridge-over-a-month' },
      { container: 'pressure-caution', says: ['long-in-the-fridge'] }
    ]
  ]),
  ...soda('ttb-kombucha', 'TTB', [
    [
      'half a percent of alcohol at any time makes it an alcoholic drink',
      signs('plans', 'sell-it'),
      { use: 'not-yet', says: ['sold-with-alcohol'] }
    ]
  ]),
  ...soda('fda-pottery', 'FDA', [
    [
      'old or painted pottery can hold lead that washing does not take out',
      { ...tepache, ...signs('vessel-story', 'old-pottery') },
      { ...discard, says: ['never-use-this-pot-again'], leavesOut: ['wash-jar-and-tools'] }
    ]
  ]),
  ...soda('hrsa-poison-help', 'US health agency', [
    [
      'whoever swallowed a cleaner calls Poison Help',
      people('swallowed-cleaner'),
      { person: 'poison-help', use: 'never', says: ['call-poison-help'] }
    ]
  ]),
  ...soda('canada-botulism', 'government abroad', [
    ['trouble with sight or swallowing is an emergency', people('severe-symptoms'), emergency]
  ])
]

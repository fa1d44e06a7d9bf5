import type { Answers } from '../../src/tree/answers.ts'
import {
  discard,
  fine,
  mold,
  people,
  type Statement,
  signs,
  statedIn,
  toxin,
  wait
} from './published.ts'
import { days, meter, narrowStrip } from './told.ts'

const bottle = statedIn('kombucha-bottle')
const culture = statedIn('kombucha-culture')
const bottled = (ph: ReturnType<typeof meter>): Answers => ({ 'bottling-ph': ph })
const juice = (percent: number): Answers => ({ 'juice-share': days(percent) })
const mix = (ph: number): Answers => ({ 'mix-acidity': meter(ph) })
const share = (percent: number): Answers => ({ 'starter-share': days(percent) })

/** What is published on kombucha in closed bottles. */
export const BOTTLE_STATEMENTS: readonly Statement[] = [
  ...bottle('niagara-kombucha', 'government abroad', [
    ['what is bottled is never above a pH of 4.2', bottled(meter(4.26)), discard],
    ['what is bottled may be as high as a pH of 4.2', bottled(meter(4.15)), fine]
  ]),
  ...bottle('queensland-fermented', 'government abroad', [
    ['above a pH of 4.6 the spores of botulism can grow', bottled(meter(4.66)), toxin],
    [
      'at a pH of 4.6 and under those spores do not grow',
      bottled(meter(4.55)),
      { atMost: 'discard-and-sanitize' }
    ]
  ]),
  ...bottle('cfr-114-80', 'FDA', [
    [
      'a strip does not clear a bottle above a pH of 4.0',
      bottled(narrowStrip(4.1)),
      { ...wait, says: ['test-again-with-a-meter'] }
    ]
  ]),
  ...bottle('ny-agriculture-kombucha', 'state or local government', [
    [
      'a container that gives way is one of the hazards of kombucha',
      signs('bottle-signs', 'bulging'),
      { container: 'pressure-hazard', use: 'never', says: ['leave-the-bottles-be', 'everyone-out'] }
    ]
  ]),
  ...bottle('ttb-kombucha', 'TTB', [
    [
      'past half a percent it is an alcoholic drink, after bottling too',
      signs('opened-bottle', 'boozy'),
      { use: 'never', says: ['boozy-bottle', 'treat-bottle-as-alcohol'] }
    ]
  ]),
  ...bottle('nz-recall-2022', 'government abroad', [
    ['live kombucha is kept cold', {}, { ...fine, says: ['keep-bottles-cold'] }]
  ]),
  ...bottle('nih-senior-health', 'US health agency', [
    [
      'food that made somebody ill is kept for the health department',
      { 'bottle-growth': 'fuzz', ...people('illness-signs') },
      {
        batch: 'likely-mold',
        person: 'doctor-today',
        says: ['keep-it-cold-and-labeled', 'ask-health-department'],
        leavesOut: ['empty-the-bottles', 'wash-the-bottles']
      }
    ]
  ]),
  ...bottle('fda-at-risk', 'FDA', [
    [
      'a child is at more risk from food than a healthy adult',
      people('at-risk-drank'),
      { person: 'ask-doctor', use: 'never', says: ['doctor-this-week'] }
    ]
  ]),
  ...bottle('munilla-2023', 'journal', [
    [
      'lead goes over into kombucha that is kept in ceramic bottles',
      signs('bottle-story', 'lead-risk-vessel'),
      { ...discard, says: ['lead-vessel', 'every-bottle-goes'] }
    ]
  ]),
  ...bottle('fsis-molds', 'USDA', [
    [
      'soft wet food with mold is thrown out, for mold goes below what is seen',
      { 'bottle-growth': 'fuzz-on-fruit' },
      mold
    ]
  ]),
  ...bottle('brewer-2021', 'journal', [
    [
      'a falling pH does not tell that the germs in a young brew are gone',
      { 'days-in-the-jar': days(6) },
      { use: 'not-yet', says: ['bottled-too-young'] }
    ]
  ]),
  ...bottle('uga-forsyth', 'land-grant extension', [
    [
      'no sugar is added once the ferment is finished',
      juice(20.1),
      { says: ['far-too-much-juice'] }
    ]
  ])
]

/** What is published on cultures and starters. */
export const CULTURE_STATEMENTS: readonly Statement[] = [
  ...culture('niagara-kombucha', 'government abroad', [
    [
      'no culture is used again from a batch with mold',
      signs('culture-signs', 'mold-anywhere'),
      { ...mold, says: ['mold-reaches-every-disc'] }
    ],
    ['a culture from a batch without mold or anything odd may be used again', {}, fine],
    [
      'a culture from a batch with something odd in it is not used again',
      { 'spots-and-color': 'dark-on-top' },
      discard
    ]
  ]),
  ...culture('young-womens-health', 'poison center or hospital', [
    [
      'a culture with mold is thrown out together with its tea',
      { 'surface-texture': 'dry-fuzzy' },
      { ...mold, says: ['throw-out-all'] }
    ]
  ]),
  ...culture('msu-kombucha', 'land-grant extension', [
    [
      'an abnormal look is reason enough to throw a culture out',
      { 'spots-and-color': 'bright-on-top' },
      discard
    ]
  ]),
  ...culture('queensland-fermented', 'government abroad', [
    [
      'a new mix above a pH of 4.6 is not acid enough',
      mix(4.66),
      { ...wait, says: ['add-acid-today'] }
    ],
    ['a new mix under a pH of 4.6 is acid enough', mix(4.55), fine]
  ]),
  ...culture('virginia-fst-297', 'land-grant extension', [
    [
      'a new batch takes a tenth of its volume in starter',
      share(10),
      { ...fine, says: ['one-tenth-starter'], leavesOut: ['too-little-starter'] }
    ],
    [
      'a new batch with less starter than that falls short',
      share(9.9),
      { says: ['too-little-starter'] }
    ]
  ]),
  ...culture('fda-pottery', 'FDA', [
    [
      'whoever drank from glazed pottery asks for a lead test, feeling well or not',
      { ...signs('culture-signs', 'lead-risk-vessel'), ...people('someone-drank') },
      { ...discard, person: 'ask-doctor', says: ['lead-test-for-all'] }
    ]
  ]),
  ...culture('fda-cpg-vinegar-eels', 'FDA', [
    [
      'vinegar eels spoil a culture and poison nobody',
      signs('culture-signs', 'tiny-eels'),
      { ...discard, person: null, says: ['eels-are-harmless'] }
    ]
  ])
]

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
  statedIn,
  wait
} from './published.ts'
import { days, meter, narrowStrip } from './told.ts'

const stated = statedIn('kombucha-jar')
const on = (day: number, ph: ReturnType<typeof meter>): Answers => ({
  'jar-ph': ph,
  day: days(day)
})
const fuzz: Answers = { 'surface-texture': 'dry-fuzzy' }
const share = (percent: number): Answers => ({ 'starter-share': days(percent) })

/** What is published on kombucha in its jar. */
export const JAR_STATEMENTS: readonly Statement[] = [
  ...stated('niagara-kombucha', 'government abroad', [
    ['a brew is never served above a pH of 4.2', on(7, meter(4.26)), discard],
    ['a brew at a pH of 4.2 or lower is within the limit', on(7, meter(4.15)), fine],
    [
      'a brew under a pH of 2.5 is not served',
      on(9, meter(2.49)),
      { batch: 'quality-only', use: 'never', says: ['do-not-serve-too-sour'] }
    ],
    [
      'a moldy brew goes with its culture, all of it',
      fuzz,
      { ...mold, says: ['throw-out-all', 'keep-nothing-from-this-jar'] }
    ],
    [
      'a healthy adult has no more than four ounces a day',
      {},
      { ...fine, says: ['drink-a-little'] }
    ]
  ]),
  ...stated('fpt-2025', 'journal', [
    ['home brew is to lie between a pH of 2.5 and 4.2', on(9, meter(2.5)), fine],
    ['between 4.2 and 4.6 a brew is over the limit of kombucha', on(7, meter(4.4)), discard]
  ]),
  ...stated('queensland-fermented', 'government abroad', [
    ['a ferment is under a pH of 4.6 within a day', on(1, meter(4.66)), discard],
    ['a ferment that is under 4.6 after a day keeps to the rule', on(1, meter(4.55)), growing]
  ]),
  ...stated('nummer-2013', 'journal', [
    [
      'after some 30 days acid and alcohol can each come to 3 percent',
      on(31, meter(3.2)),
      { says: ['long-ferment'] }
    ],
    [
      'a ferment of the usual length carries no such remark',
      on(10, meter(3.2)),
      { ...fine, leavesOut: ['long-ferment'] }
    ]
  ]),
  ...stated('brewer-2021', 'journal', [
    [
      'salmonella was still there in half of the home kits after 14 days, and the pH told little of it',
      on(6, meter(3)),
      { ...growing, says: ['wait-for-day-seven'] }
    ]
  ]),
  ...stated('cfr-114-80', 'FDA', [
    [
      'above a pH of 4.0 a strip proves nothing',
      on(9, narrowStrip(4.1)),
      { ...wait, says: ['measure-with-a-meter'] }
    ],
    ['above a pH of 4.0 a meter may still prove the acid', on(9, meter(4.1)), fine]
  ]),
  ...stated('virginia-fst-297', 'land-grant extension', [
    [
      'a finished brew is chilled and its culture taken out',
      on(7, meter(3.2)),
      { ...fine, says: ['chill-and-remove-culture'] }
    ],
    ['a tenth of the batch is starter', share(10), { ...fine, leavesOut: ['too-little-starter'] }],
    ['less starter than a tenth falls short', share(9.9), { says: ['too-little-starter'] }]
  ]),
  ...stated('msu-kombucha', 'land-grant extension', [
    [
      'a culture of an unusual color is thrown out',
      { 'spots-and-color': 'even-tint', 'colored-ingredient': 'not-added' },
      discard
    ],
    ['a culture with odd spots is thrown out', { 'spots-and-color': 'bright-on-top' }, discard]
  ]),
  ...stated('k-state-2019', 'land-grant extension', [
    [
      'a gallon of tea takes a cup of sugar',
      signs('tea-and-sugar', 'little-or-no-sugar'),
      { ...fine, says: ['a-cup-of-sugar'] }
    ]
  ]),
  ...stated('fda-t95-15', 'FDA', [
    [
      'home brew may carry molds that harm people whose immune system is weak',
      { ...fuzz, ...people('at-risk-drank') },
      { ...mold, person: 'poison-help' }
    ]
  ]),
  ...stated('fda-pottery', 'FDA', [
    [
      'washing takes no lead out of glazed pottery, which never holds food again',
      signs('jar-signs', 'lead-risk-vessel'),
      { ...discard, says: ['never-use-this-pot-again'], leavesOut: ['sanitize-with-bleach'] }
    ]
  ]),
  ...stated('phan-1998', 'journal', [
    [
      'a couple who drank daily from a ceramic pot were poisoned by its lead',
      { ...signs('jar-signs', 'lead-risk-vessel'), ...people('someone-drank') },
      { ...discard, atLeast: 'ask-doctor', says: ['lead-test-for-all'] }
    ]
  ]),
  ...stated('mmwr-1995', 'CDC', [
    [
      'acid draws lead out of a ceramic vessel',
      signs('jar-signs', 'lead-risk-vessel'),
      { atLeast: 'discard-and-sanitize' }
    ]
  ]),
  ...stated('fda-cpg-vinegar-eels', 'FDA', [
    [
      'vinegar eels in a brew harm nobody who swallowed them',
      { ...signs('jar-signs', 'tiny-eels'), ...people('someone-drank') },
      { person: null, atMost: 'discard-and-sanitize', says: ['eels-are-harmless'] }
    ]
  ]),
  ...stated('ttb-kombucha', 'TTB', [
    [
      'kombucha may ferment past half a percent of alcohol',
      signs('smell-and-liquid', 'boozy'),
      { ...wait, says: ['may-hold-alcohol'] }
    ]
  ]),
  ...stated('cdc-symptoms', 'CDC', [
    [
      'bloody diarrhea, a fever over 102 °F or lasting vomiting go to a doctor',
      people('illness-signs'),
      { person: 'doctor-today', use: 'never', says: ['no-anti-diarrhea'] }
    ]
  ]),
  ...stated('hrsa-poison-help', 'US health agency', [
    [
      'trouble breathing or a collapse is a call to 911',
      people('severe-symptoms'),
      { ...emergency, says: ['call-911'] }
    ]
  ]),
  ...stated('fda-at-risk', 'FDA', [
    [
      'pregnancy, young or old age and weak immunity raise the risk of illness from food',
      people('at-risk-will-drink'),
      { batch: 'normal-growth', use: 'never', says: ['kombucha-not-for-them'] }
    ]
  ]),
  ...stated('fsis-molds', 'USDA', [
    [
      'mold is not scooped off a jelly and the rest kept',
      signs('jar-signs', 'mold-removed'),
      { ...mold, says: ['mold-comes-back'] }
    ],
    ['nobody sniffs at mold', fuzz, { ...mold, says: ['do-not-sniff'] }]
  ])
]

import type { Answers } from '../../src/tree/answers.ts'
import { type Row, sharing } from './kombucha-jar-rows.ts'
import {
  again,
  caution,
  discard,
  doubt,
  emergency,
  growth,
  mold,
  molds,
  person,
  practice,
  sign,
  wait
} from './told.ts'

const story = sign('vessel-story')
const storyInDoubt = doubt('vessel-story')
const side = (answer: string): Answers => ({
  ...growth('unsure'),
  'growth-from-the-side': answer
})

/** The people around any ferment, where the ferment itself shows nothing wrong. */
export const PEOPLE_ROWS: readonly Row[] = [
  ...sharing(emergency, 'Government of Canada, botulism; 911: own caution', [
    ['1.1', 'double vision or trouble swallowing', person('severe-symptoms')],
    ['1.1', 'severe signs beside a mild upset', person('severe-symptoms', 'mild-upset')]
  ]),
  ...sharing(emergency, caution, [
    ['1.1', 'a deep cut from glass', person('deep-cut-or-eye')],
    ['1.6', 'a pounding headache, or one with a racing heart', person('bad-headache')],
    ['1.6', 'chest pain beside flushing', person('bad-headache', 'headache-or-flushing')]
  ]),
  ...sharing({ person: 'doctor-today', batch: 'ask-specialist', use: 'never' }, caution, [
    ['1.6', 'a mild headache, flushing or a racing heart alone', person('headache-or-flushing')]
  ]),
  ...sharing(
    { person: 'doctor-today', batch: 'ask-specialist', use: 'never' },
    'CDC, symptoms of food poisoning (copy)',
    [['1.1', 'bloody diarrhea', person('illness-signs')]]
  ),
  ...sharing({ person: 'poison-help', batch: 'ask-specialist', use: 'never' }, caution, [
    ['1.1', 'a mild upset', person('mild-upset')]
  ]),
  ...sharing({ person: 'poison-help', batch: 'discard-and-sanitize', use: 'never' }, caution, [
    ['1.1', 'somebody swallowed a cleaner', person('swallowed-cleaner')]
  ]),
  ...sharing({ person: 'ask-doctor' }, caution, [
    ['1.6', 'somebody at higher risk had some', person('at-risk-drank')]
  ]),
  ...sharing({ person: null }, caution, [
    ['1.6', 'a school child had some, and nothing is wrong', person('young-drank')]
  ])
]

/** A food that is for nobody at higher risk. */
export const NOT_FOR_THEM_ROWS: readonly Row[] = [
  ...sharing({ person: 'ask-doctor', use: 'never' }, caution, [
    ['1.6', 'somebody at higher risk had some of an ordinary one', person('at-risk-drank')]
  ]),
  ...sharing({ person: null, use: 'never' }, 'FDA, People at risk of foodborne illness', [
    ['1.6', 'somebody at higher risk will have some', person('at-risk-will-drink')]
  ])
]

/** Bread baked through, and vinegar that is done, heated and in food: no source draws a line for anyone. */
export const FOR_EVERYONE_ROWS: readonly Row[] = sharing(
  { person: null, batch: 'normal-growth', use: 'as-directed' },
  caution,
  [['1.6', 'somebody at higher risk will have some', person('at-risk-will-drink')]]
)

/** Fur, powder and doubt about them, which count alike on every ferment. */
export const FUR_ROWS: readonly Row[] = [
  ...sharing(mold, molds, [
    ['1.7', 'dry fuzz of any color', growth('dry-fuzzy')],
    ['1.7', 'dry powder', growth('chalky-powder')],
    ['1.7', 'hairs in a light from the side', side('hairs-or-powder')]
  ]),
  ...sharing(mold, 'Ask Extension 152949', [
    ['1.7', 'round spots with dark centers', growth('spots-with-dark-centers')]
  ]),
  ...sharing({ ...mold, person: 'poison-help' }, caution, [
    [
      '1.7',
      'somebody at higher risk had some of a moldy one',
      { ...growth('dry-fuzzy'), ...person('at-risk-drank') }
    ],
    [
      '1.7',
      'a school child had some of a moldy one',
      { ...growth('dry-fuzzy'), ...person('young-drank') }
    ]
  ]),
  ...sharing(wait, caution, [['1.7', 'unsure of fur at the first look', side('unsure')]]),
  ...sharing(discard, caution, [
    ['1.7', 'unsure of fur at the second look', { ...side('unsure'), ...again }],
    [
      '1.7',
      'unsure of fur, and somebody at higher risk will have some',
      { ...side('unsure'), ...person('at-risk-will-drink') }
    ]
  ])
]

/** What happened to the vessel, asked alike of dough, milk, sugar water and vinegar. */
export const VESSEL_ROWS: readonly Row[] = [
  ...sharing(mold, caution, [
    ['1.7', 'mold was taken off before, or seen on its cloth or lid', story('mold-removed')]
  ]),
  ...sharing({ use: 'as-directed' }, practice, [
    ['S24', 'it stood beside a moldy jar', story('near-mold')]
  ]),
  ...sharing(discard, practice, [['2.3', 'insects or larvae inside', story('insects-inside')]]),
  ...sharing(discard, 'FDA, traditional pottery (copy)', [
    ['2.1', 'kept in glazed or unmarked pottery', story('old-pottery')]
  ]),
  ...sharing({ ...discard, person: 'ask-doctor' }, caution, [
    [
      '2.1',
      'somebody had some from such pottery',
      { ...story('old-pottery'), ...person('someone-drank') }
    ]
  ]),
  ...sharing(discard, 'NCHFP, Problems with fermented pickles; extension pickling FAQ', [
    ['2.1', 'kept in copper, brass or zinc', story('reactive-metal')]
  ]),
  ...sharing(discard, caution, [['1.4', 'a cleaner got in', story('cleaner-got-in')]]),
  ...sharing({ ...discard, person: 'poison-help' }, 'HRSA Poison Help', [
    [
      '1.4',
      'somebody had some with a cleaner in it',
      { ...story('cleaner-got-in'), ...person('someone-drank') }
    ]
  ]),
  ...sharing({ ...discard, person: 'poison-help' }, caution, [
    [
      '1.6',
      'somebody at higher risk had some with insects in it',
      { ...story('insects-inside'), ...person('at-risk-drank') }
    ]
  ]),
  ...sharing(wait, caution, [
    ['S24', 'a spoon went from a moldy jar into it', story('shared-with-mold')],
    ['S24', 'unsure whether a spoon did', storyInDoubt('shared-with-mold')],
    ['1.7', 'unsure whether mold was taken off', storyInDoubt('mold-removed')],
    ['2.3', 'unsure whether insects are inside', storyInDoubt('insects-inside')],
    ['2.1', 'unsure of the pottery', storyInDoubt('old-pottery')],
    ['2.1', 'unsure of the metal', storyInDoubt('reactive-metal')],
    ['1.4', 'unsure whether a cleaner got in', storyInDoubt('cleaner-got-in')]
  ])
]

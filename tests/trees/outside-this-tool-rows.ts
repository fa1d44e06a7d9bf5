import { type Row, sharing } from './kombucha-jar-rows.ts'
import {
  caution,
  choice,
  doubt,
  emergency,
  memory,
  person,
  practice,
  sign,
  specialist,
  toxin
} from './told.ts'

const kind = choice('outside-kind')
const jar = sign('closed-jar-signs')
const jarInDoubt = doubt('closed-jar-signs')
const doubtful = doubt('press-cake-eaters')('unwell-after-press-cake')
const unwell = sign('press-cake-eaters')('unwell-after-press-cake')

const cdc = 'CDC, home-canned foods and botulism (copies)'
const poison = 'National Capital Poison Center, Bongkrekic acid'
const toCall = { ...specialist, person: null, container: null }
const closed = { ...toxin, container: null }
// Known only where the walk comes to the food, whose verdict stands beside it; nothing of it is said.
const emergencyHere = { ...toxin, person: 'emergency' }
const sealedHazard = { container: 'pressure-hazard', batch: 'ask-specialist', use: 'never' }
const sealedCare = { container: 'pressure-caution', batch: 'ask-specialist', use: 'not-yet' }

const KINDS: readonly Row[] = [
  ...sharing(toCall, 'Codex standard for tempe (copies); Food Safety News 2012; own caution', [
    ['6.1', 'soybean tempeh, koji, miso or natto', kind('tempeh-or-koji')]
  ]),
  ...sharing(toCall, caution, [
    ['6.3', 'a ginger bug in a sound bottle', kind('fizzy-drink')],
    ['6.4', 'fish, sausage, meat or eggs', kind('fish-meat-or-egg')],
    ['1.5', 'garlic in honey', kind('honey-garlic')],
    ['2.5', 'a plan to sell, or to keep on a shelf', kind('plan-to-sell-or-shelf')],
    ['1.1', 'a canned jar that shows nothing', kind('canned-jar')],
    ['1.1', 'a jar of unknown process that shows nothing', kind('unsure')],
    ['6.4', 'any other food', kind('something-else')]
  ]),
  ...sharing(toxin, 'MMWR 56(05) and 62(26); Morse 1990, AJPH 80(11):1372', [
    ['1.5', 'food under oil, or home-fermented tofu', kind('oil-or-tofu')]
  ]),
  ...sharing(toxin, poison, [['6.1', 'tempeh of press-cake', kind('press-cake-tempeh')]])
]

const JARS: readonly Row[] = [
  ...sharing(closed, cdc, [
    [
      '1.1',
      'a canned jar bulges or leaks',
      { ...kind('canned-jar'), ...jar('bulging-or-leaking') }
    ],
    ['1.1', 'a canned jar spurted', { ...kind('canned-jar'), ...jar('spurted') }]
  ]),
  ...sharing(closed, caution, [
    ['1.1', 'another canned jar burst', { ...kind('canned-jar'), ...jar('sibling-burst') }],
    ['1.1', 'a jar of unknown process bulges', { ...kind('unsure'), ...jar('bulging-or-leaking') }],
    ['1.1', 'a jar of unknown process spurted', { ...kind('unsure'), ...jar('spurted') }],
    [
      '1.1',
      'unsure whether a canned jar bulges',
      { ...kind('canned-jar'), ...jarInDoubt('bulging-or-leaking') }
    ],
    ['1.1', 'unsure whether it spurted', { ...kind('canned-jar'), ...jarInDoubt('spurted') }]
  ]),
  ...sharing({ ...toxin, container: 'pressure-hazard' }, caution, [
    ['1.1', 'a cracked canned jar', { ...kind('canned-jar'), ...jar('cracked-glass') }],
    ['1.1', 'a cracked jar of unknown process', { ...kind('unsure'), ...jar('cracked-glass') }]
  ]),
  ...sharing(sealedHazard, practice, [
    ['6.3', 'a ginger bottle bulges', { ...kind('fizzy-drink'), ...jar('bulging-or-leaking') }],
    ['6.3', 'a ginger bottle is cracked', { ...kind('fizzy-drink'), ...jar('cracked-glass') }],
    ['6.3', 'another ginger bottle burst', { ...kind('fizzy-drink'), ...jar('sibling-burst') }],
    ['1.1', 'something else bulges', jar('bulging-or-leaking')],
    ['1.1', 'something else is cracked', jar('cracked-glass')],
    [
      '6.3',
      'a ginger bottle gushed, another burst',
      { ...kind('fizzy-drink'), ...jar('spurted', 'sibling-burst') }
    ]
  ]),
  ...sharing(sealedCare, practice, [
    ['6.3', 'a ginger bottle gushed', { ...kind('fizzy-drink'), ...jar('spurted') }]
  ]),
  ...sharing(sealedCare, caution, [
    [
      '6.3',
      'unsure whether a ginger bottle bulges',
      { ...kind('fizzy-drink'), ...jarInDoubt('bulging-or-leaking') }
    ]
  ])
]

const EATERS: readonly Row[] = [
  ...sharing(emergency, poison, [
    ['6.1', 'unwell after press-cake tempeh', { ...kind('press-cake-tempeh'), ...unwell }],
    [
      '6.1',
      'a mild upset after press-cake tempeh',
      { ...kind('press-cake-tempeh'), ...person('mild-upset', 'someone-drank'), ...unwell }
    ]
  ]),
  ...sharing({ ...toxin, person: 'poison-help' }, `${poison}; ${caution}`, [
    [
      '6.1',
      'somebody ate press-cake tempeh and feels well',
      { ...kind('press-cake-tempeh'), ...person('someone-drank') }
    ],
    [
      '6.1',
      'somebody at higher risk ate press-cake tempeh',
      { ...kind('press-cake-tempeh'), ...person('at-risk-drank') }
    ]
  ]),
  ...sharing({ ...toxin, person: 'poison-help' }, caution, [
    ['1.5', 'somebody ate garlic in oil', { ...kind('oil-or-tofu'), ...person('someone-drank') }],
    [
      '1.5',
      'somebody at higher risk ate garlic in oil',
      { ...kind('oil-or-tofu'), ...person('at-risk-drank') }
    ],
    [
      '1.1',
      'somebody ate from a bulging canned jar',
      { ...kind('canned-jar'), ...jar('bulging-or-leaking'), ...person('someone-drank') }
    ]
  ]),
  ...sharing(emergency, 'Government of Canada, botulism; 911: own caution', [
    [
      '1.1',
      'double vision after a bulging canned jar',
      { ...kind('canned-jar'), ...jar('bulging-or-leaking'), ...person('severe-symptoms') }
    ]
  ]),
  // Gut signs belong to botulism, and nobody can tell from here who had some: any symptom counts.
  ...sharing(emergencyHere, caution, [
    [
      '1.1',
      'cannot keep liquids down after garlic in oil',
      { ...kind('oil-or-tofu'), ...person('illness-signs') }
    ]
  ]),
  ...sharing({ ...toxin, person: null }, `${memory}; ${caution}`, [
    [
      '1.6',
      'somebody at higher risk was to have garlic in oil',
      { ...kind('oil-or-tofu'), ...person('at-risk-will-drink') }
    ]
  ])
]

/** What callers tell twice, or in two places that do not agree. */
const TWICE: readonly Row[] = [
  ...sharing({ ...toxin, person: 'poison-help' }, caution, [
    [
      '6.1',
      'unsure whether an eater of press-cake is unwell',
      { ...kind('press-cake-tempeh'), ...doubtful }
    ]
  ]),
  ...sharing(emergencyHere, caution, [
    [
      '6.1',
      'a mild upset beside press-cake that nobody is said to have had',
      { ...kind('press-cake-tempeh'), ...person('mild-upset') }
    ],
    [
      '6.1',
      'keeps nothing down, and unsure whether it was the press-cake',
      { ...kind('press-cake-tempeh'), ...person('illness-signs'), ...doubtful }
    ]
  ]),
  ...sharing(emergencyHere, caution, [
    ['1.5', 'a mild upset after garlic in oil', { ...kind('oil-or-tofu'), ...person('mild-upset') }]
  ]),
  ...sharing({ ...specialist, person: null, use: 'never' }, caution, [
    [
      '1.5',
      'somebody at higher risk will have honey garlic',
      { ...kind('honey-garlic'), ...person('at-risk-will-drink') }
    ],
    [
      '6.1',
      'somebody at higher risk will have tempeh',
      { ...kind('tempeh-or-koji'), ...person('at-risk-will-drink') }
    ]
  ]),
  ...sharing(sealedCare, caution, [
    ['1.1', 'something else gushed', jar('spurted')],
    [
      '6.3',
      'unsure whether another bottle burst',
      { ...kind('fizzy-drink'), ...jarInDoubt('sibling-burst') }
    ],
    ['1.1', 'unsure whether something else is cracked', jarInDoubt('cracked-glass')]
  ])
]

/** Foods that this tool does not judge, and the few of them that cannot wait. */
export const OUTSIDE_ROWS: readonly Row[] = [...KINDS, ...JARS, ...EATERS, ...TWICE]

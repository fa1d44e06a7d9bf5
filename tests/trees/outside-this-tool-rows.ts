import { type Row, sharing } from './kombucha-jar-rows.ts'
import { JARS, KINDS } from './outside-this-tool-kinds.ts'
import {
  caution,
  choice,
  doubt,
  emergency,
  memory,
  person,
  sign,
  specialist,
  toxin
} from './told.ts'

const kind = choice('outside-kind')
const jar = sign('closed-jar-signs')
const jarInDoubt = doubt('closed-jar-signs')
const doubtful = doubt('press-cake-eaters')('unwell-after-press-cake')
const unwell = sign('press-cake-eaters')('unwell-after-press-cake')

const poison = 'National Capital Poison Center, Bongkrekic acid'
// Known only where the walk comes to the food, whose verdict stands beside it; nothing of it is said.
const emergencyHere = { ...toxin, person: 'emergency' }
const sealedCare = { container: 'pressure-caution', batch: 'ask-specialist', use: 'not-yet' }

const EATERS: readonly Row[] = [
  ...sharing({ person: 'poison-help', batch: 'ask-specialist', use: 'never' }, caution, [
    [
      '1.5',
      'a baby had honey and garlic',
      { ...kind('honey-garlic'), ...sign('honey-eaters')('baby-had-honey') }
    ]
  ]),
  ...sharing({ person: null, batch: 'ask-specialist', use: 'not-yet' }, caution, [
    [
      '1.5',
      'unsure whether a baby had any',
      { ...kind('honey-garlic'), ...doubt('honey-eaters')('baby-had-honey') }
    ],
    ['1.5', 'honey that no baby had', kind('honey-garlic')]
  ]),
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
      { ...kind('tempeh'), ...person('at-risk-will-drink') }
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

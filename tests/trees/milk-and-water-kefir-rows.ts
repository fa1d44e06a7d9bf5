import { type Expected, type Row, sharing } from './kombucha-jar-rows.ts'
import {
  bottle,
  color,
  kind,
  milk,
  set,
  signs,
  unmeasured,
  vessel,
  vesselInDoubt,
  water,
  yogurt
} from './milk-and-water-kefir-told.ts'
import { FUR_ROWS, PEOPLE_ROWS, VESSEL_ROWS } from './shared-rows.ts'
import {
  again,
  caution,
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
  specialist,
  wait
} from './told.ts'

const yogurtText = 'NCHFP, home yogurt (copy)'
const nummer = 'Nummer, NCHFP, Fermented foods: Kefir'
const pink = color('pink-or-orange')
const thick: Expected = { batch: 'wait-and-recheck', use: 'never' }

const LOOKS: readonly Row[] = [
  ...sharing(fine, nummer, [
    ['4.1', 'milk kefir, sour and thick within two days', kind('milk-kefir')],
    ['4.1', 'water kefir, tangy and bubbling within two days', water()]
  ]),
  ...sharing(fine, yogurtText, [
    ['4.1', 'yogurt set and sour in its time', yogurt()],
    ['4.2.1', 'whey on yogurt', yogurt(color('yellow-whey'))]
  ]),
  ...sharing(fine, practice, [
    ['4.2.1', 'whey on milk kefir', color('yellow-whey')],
    ['4.2.5', 'a dry crust of fat on milk kefir', color('dry-fat-crust')],
    ['4.2.5', 'a dry crust of fat on yogurt', yogurt(color('dry-fat-crust'))],
    ['4.2.6', 'cream-colored grains', color('tan-or-cream-grains')],
    ['4.2.6', 'grains tan from molasses', water(color('tan-or-cream-grains'))],
    ['4.2.12', 'fizz in milk kefir', signs('gas')],
    ['4.2.12', 'fizz in water kefir', water(signs('gas'))]
  ]),
  ...sharing(mold, molds, [
    ['4.2.2', 'fuzz on water kefir', water(growth('dry-fuzzy'))],
    ['4.2.2', 'fuzz in a closed bottle', bottle(growth('dry-fuzzy'))],
    ['4.2.2', 'fuzz on yogurt', yogurt(growth('dry-fuzzy'))],
    ['4.2.5', 'a crust of fat with fuzz', { ...color('dry-fat-crust'), ...growth('dry-fuzzy') }]
  ]),
  ...sharing(discard, caution, [
    ['4.2.2', 'colored spots on milk kefir', color('colored-spots')],
    ['4.2.2', 'colored spots on water kefir', water(color('colored-spots'))],
    ['4.2.2', 'colored spots on yogurt', yogurt(color('colored-spots'))],
    ['4.2.4', 'pink milk kefir', pink],
    ['4.2.4', 'pink milk kefir, whatever fruit is in it', { ...pink, 'fruit-color': 'from-fruit' }],
    ['4.2.4', 'pink yogurt', yogurt(pink)],
    [
      '4.2.4',
      'pink water kefir without fruit',
      water({ ...pink, 'fruit-color': 'not-from-fruit' })
    ],
    ['4.2.4', 'a pink bottle without fruit', bottle({ ...pink, 'fruit-color': 'not-from-fruit' })],
    ['4.2.5', 'a crust of fat on a musty one', { ...color('dry-fat-crust'), ...signs('musty') }],
    ['4.2.3', 'the film on milk kefir is back', { ...growth('flat-film'), ...again }],
    ['4.2.3', 'the film on water kefir is back', water({ ...growth('flat-film'), ...again })],
    ['4.2.3', 'a film on a musty one', { ...growth('flat-film'), ...signs('musty') }]
  ]),
  ...sharing(fine, practice, [
    ['4.2.4', 'water kefir pink from hibiscus', water({ ...pink, 'fruit-color': 'from-fruit' })]
  ]),
  ...sharing(wait, caution, [
    ['4.2.4', 'unsure whether fruit dyed it', water({ ...pink, 'fruit-color': 'unsure' })]
  ]),
  ...sharing({ batch: 'yeast-strands', use: 'as-directed' }, practice, [
    ['4.2.3', 'a flat film on milk kefir', growth('flat-film')],
    ['4.2.3', 'a flat film on water kefir', water(growth('flat-film'))]
  ]),
  ...sharing(discard, `${yogurtText}; ${caution}`, [
    ['4.2.3', 'a flat film on yogurt', yogurt(growth('flat-film'))]
  ]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['4.2.4', 'unsure of the color', color('unsure')],
    ['4.2.9', 'unsure whether it smells putrid', doubt('kefir-signs')('putrid')],
    ['4.1', 'unsure which of them it is', kind('unsure')]
  ])
]

const SMELL_AND_FLOW: readonly Row[] = [
  ...sharing(thick, practice, [
    ['4.2.7', 'stringy milk kefir', signs('stringy')],
    ['4.2.7', 'thick, syrupy water kefir', water(signs('stringy'))],
    ['4.2.7', 'water kefir still syrupy', water({ ...signs('stringy'), ...again })]
  ]),
  ...sharing(discard, practice, [
    ['4.2.7', 'milk kefir stringy after a corrected batch', { ...signs('stringy'), ...again }],
    ['4.2.7', 'stringy and foul milk kefir', signs('stringy', 'putrid')],
    ['4.2.9', 'putrid milk kefir', signs('putrid')],
    ['4.2.9', 'putrid water kefir', water(signs('putrid'))],
    ['4.2.9', 'putrid yogurt', yogurt(signs('putrid'))],
    ['4.2.11', 'milk kefir smells of solvent', signs('solvent')],
    ['4.2.11', 'water kefir smells of solvent', water(signs('solvent'))]
  ]),
  ...sharing(wait, practice, [
    ['4.2.10', 'milk kefir smells of egg', signs('egg')],
    ['4.2.10', 'water kefir smells of egg', water(signs('egg'))]
  ]),
  ...sharing(discard, caution, [['4.2.10', 'egg twice', { ...signs('egg'), ...again }]]),
  ...sharing(discard, 'Lee 2014, mBio; a university comment in the press', [
    ['4.2.12', 'bubbles in yogurt', yogurt(signs('gas'))]
  ]),
  ...sharing(wait, caution, [['4.2.5', 'musty milk kefir', signs('musty')]])
]

const MILK: readonly Row[] = [
  ...sharing(discard, yogurtText, [
    ['4.2.8', 'yogurt not set when its time is up', yogurt(set('never-set'))],
    ['4.2.8', 'yogurt set late', yogurt(set('set-late'))],
    ['4.1', 'yogurt of raw milk', yogurt(milk('raw-milk'))]
  ]),
  ...sharing(growing, yogurtText, [
    ['4.2.8', 'yogurt whose time is not up', yogurt(set('still-in-time'))]
  ]),
  ...sharing(wait, caution, [['4.2.8', 'unsure whether it set', yogurt(set('unsure'))]]),
  ...sharing(discard, 'two-hour rule for cooked food (secondary pages)', [
    ['4.2.13', 'yogurt left out over two hours', yogurt(milk('left-out-too-long'))]
  ]),
  ...sharing(fine, practice, [
    ['4.2.13', 'milk kefir is not held to two hours', milk('left-out-too-long')]
  ]),
  ...sharing(specialist, caution, [['4.1', 'milk kefir of raw milk', milk('raw-milk')]]),
  ...sharing({ batch: 'ask-specialist', use: 'never' }, caution, [
    [
      '4.1',
      'raw milk kefir, and somebody at higher risk will have some',
      { ...milk('raw-milk'), ...person('at-risk-will-drink') }
    ]
  ]),
  ...sharing(specialist, memory, [
    ['4.3', 'nut paste kept in yogurt', yogurt(milk('low-acid-added'))]
  ]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['4.1', 'unsure whether the milk is raw', doubt('milk-history')('raw-milk')],
    [
      '4.2.13',
      'unsure how long the yogurt stood out',
      yogurt(doubt('milk-history')('left-out-too-long'))
    ]
  ]),
  ...sharing(discard, practice, [
    [
      '4.2.8',
      'no sourness in milk kefir at 48 hours',
      unmeasured('two-to-three-days', 'no-change')
    ],
    ['4.2.8', 'water kefir sweet at 72 hours', water(unmeasured('over-three-days', 'no-change'))]
  ]),
  ...sharing(wait, practice, [
    [
      '4.2.8',
      'milk kefir sour and thin on the second day',
      unmeasured('one-to-two-days', 'partly')
    ],
    ['4.2.8', 'milk kefir unchanged on the second day', unmeasured('one-to-two-days', 'no-change')],
    ['4.2.8', 'water kefir sweet at 48 hours', water(unmeasured('two-to-three-days', 'no-change'))]
  ])
]

const VESSELS: readonly Row[] = [
  ...sharing(hazard, caution, [
    ['4.3', 'a bulging bottle', bottle(vessel('lid-bulging-or-hissing'))],
    [
      '4.3',
      'a bulging one of unknown kind',
      {
        ...kind('unsure'),
        ...vessel('lid-bulging-or-hissing')
      }
    ],
    ['4.3', 'a cracked bottle', bottle(vessel('cracked-glass'))],
    ['4.3', 'a cracked jar of milk kefir', vessel('cracked-glass')],
    ['4.3', 'a cracked jar of yogurt', yogurt(vessel('cracked-glass'))],
    ['4.3', 'another bottle burst', bottle(vessel('sibling-burst'))],
    ['4.3', 'another jar burst', water(vessel('sibling-burst'))]
  ]),
  ...sharing(pressure, practice, [
    ['4.3', 'a domed lid on milk kefir', vessel('lid-bulging-or-hissing')],
    ['4.3', 'a domed lid on a jar of water kefir', water(vessel('lid-bulging-or-hissing'))],
    ['4.3', 'a bottle gushed', bottle(vessel('gushes-or-rock-hard'))],
    ['4.3', 'a bottle closed for weeks', bottle(vessel('closed-too-long'))],
    ['4.3', 'a square bottle', bottle(vessel('weak-bottle'))]
  ]),
  ...sharing({ ...pressure, ...discard }, 'Lee 2014, mBio; a university comment in the press', [
    ['4.2.12', 'a swollen lid on yogurt', yogurt(vessel('lid-bulging-or-hissing'))]
  ]),
  ...sharing(fine, practice, [
    ['4.3', 'a sound bottle closed for a day', bottle(vessel('tight-lid'))]
  ]),
  ...sharing(wait, caution, [
    ['4.3', 'unsure whether a bottle bulges', bottle(vesselInDoubt('lid-bulging-or-hissing'))],
    ['4.3', 'unsure of the glass', vesselInDoubt('cracked-glass')],
    ['4.3', 'unsure whether another burst', bottle(vesselInDoubt('sibling-burst'))]
  ])
]

/** Kinds that share a sign and not its verdict, and the kind that nobody knows. */
const KINDS: readonly Row[] = [
  ...sharing(discard, caution, [
    [
      '4.2.3',
      'flat folds on yogurt from the side',
      yogurt({
        ...growth('unsure'),
        'growth-from-the-side': 'flat-ridges'
      })
    ],
    ['4.2.3', 'a flat film on an unknown kind', { ...kind('unsure'), ...growth('flat-film') }],
    ['4.2.11', 'yogurt smells of solvent', yogurt(signs('solvent'))],
    [
      '4.2.12',
      'bubbles in yogurt set in its time',
      yogurt({ ...set('set-in-time'), ...signs('gas') })
    ],
    [
      '4.2.13',
      'yogurt set in time and left out',
      yogurt({
        ...set('set-in-time'),
        ...milk('left-out-too-long')
      })
    ]
  ]),
  ...sharing(wait, practice, [['4.2.10', 'yogurt smells of egg', yogurt(signs('egg'))]]),
  ...sharing(thick, practice, [['4.2.7', 'stringy yogurt', yogurt(signs('stringy'))]]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['4.2.12', 'unsure whether yogurt has bubbles', yogurt(doubt('kefir-signs')('gas'))],
    ['4.3', 'unsure whether a bottle gushed', bottle(vesselInDoubt('gushes-or-rock-hard'))],
    ['4.3', 'unsure how long it was closed', bottle(vesselInDoubt('closed-too-long'))],
    ['4.3', 'unsure whether the glass is weak', bottle(vesselInDoubt('weak-bottle'))]
  ]),
  ...sharing({ ...discard, person: 'poison-help' }, caution, [
    [
      '4.2.4',
      'somebody at higher risk had some of a pink one',
      { ...pink, ...person('at-risk-drank') }
    ]
  ]),
  ...sharing({ ...hazard, batch: 'likely-mold' }, caution, [
    [
      '4.3',
      'a bulging bottle with fuzz in it',
      bottle({ ...vessel('lid-bulging-or-hissing'), ...growth('dry-fuzzy') })
    ]
  ])
]

/** Everything that the sheet says of kefir and yogurt, and what holds for every ferment. */
export const KEFIR_ROWS: readonly Row[] = [
  ...LOOKS,
  ...SMELL_AND_FLOW,
  ...MILK,
  ...VESSELS,
  ...KINDS,
  ...FUR_ROWS,
  ...PEOPLE_ROWS,
  ...VESSEL_ROWS
]

import { closedBottleRows } from './closed-bottle-rows.ts'
import { type Expected, type Row, sharing } from './kombucha-jar-rows.ts'
import {
  batches,
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
import { FUR_ROWS, NOT_FOR_THEM_ROWS, PEOPLE_ROWS, VESSEL_ROWS } from './shared-rows.ts'
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
  sign,
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
    ['C53', 'milk kefir tinted by jam', color('stirred-in-tint')],
    ['C53', 'yogurt tinted by fruit', yogurt(color('stirred-in-tint'))],
    ['C54', 'milk kefir smells of bread', signs('yeasty')],
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
    [
      'B13',
      'a second thick batch of water kefir',
      water({ ...signs('stringy'), ...batches('second-batch') })
    ],
    ['B13', 'nobody knows how many', water({ ...signs('stringy'), ...batches('unsure') })]
  ]),
  ...sharing(discard, practice, [
    [
      '4.2.7',
      'milk kefir stringy after a corrected batch',
      { ...signs('stringy'), ...batches('second-batch') }
    ],
    [
      'B13',
      'a third thick batch of water kefir',
      water({ ...signs('stringy'), ...batches('third-or-later') })
    ],
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
    ['4.2.12', 'bubbles in yogurt', yogurt(signs('gas'))],
    ['C54', 'yogurt smells of bread', yogurt(signs('yeasty'))]
  ]),
  ...sharing(wait, caution, [['4.2.5', 'musty milk kefir', signs('musty')]])
]

/** A jar or a tub: gas makes it a caution, and glass that holds gas and gives a hazard. */
const VESSELS: readonly Row[] = [
  ...closedBottleRows(kind('water-kefir-bottle')),
  ...closedBottleRows(kind('milk-kefir-bottle')),
  ...sharing(pressure, caution, [
    ['S3', 'a domed lid on milk kefir', vessel('lid-bulging-or-hissing')],
    ['S3', 'a domed lid on water kefir', water(vessel('lid-bulging-or-hissing'))],
    ['S3', 'a jar foamed over', water(vessel('foamed-over', 'tight-lid'))],
    ['S2', 'shut airtight for four warm days', vessel('closed-too-long', 'tight-lid')],
    ['S3', 'another jar burst beside an open one', water(vessel('sibling-burst'))],
    [
      'S3',
      'shut, and a jar burst in another house',
      { ...vessel('sibling-burst', 'tight-lid'), 'sibling-place': 'elsewhere' }
    ]
  ]),
  ...sharing(hazard, caution, [
    ['S3', 'cracked and shut', vessel('cracked-glass', 'tight-lid')],
    ['S3', 'cracked under a domed lid', vessel('cracked-glass', 'lid-bulging-or-hissing')],
    ['S3', 'shut, and the jar beside it burst', vessel('sibling-burst', 'tight-lid')],
    [
      'A5',
      'a bottle of unknown kind bulges',
      { ...kind('unsure'), ...sign('bottle-signs')('bulging') }
    ],
    ['A5', 'told of yogurt, a bottle beside it bulges', yogurt(sign('bottle-signs')('bulging'))]
  ]),
  ...sharing({ container: null, ...discard }, caution, [
    ['B7', 'a cracked jar under a cloth', vessel('cracked-glass')],
    ['B7', 'a chipped jar of yogurt under a cloth', yogurt(vessel('cracked-glass'))]
  ]),
  ...sharing({ container: null, ...wait }, caution, [
    ['B7', 'unsure of the glass of an open jar', vesselInDoubt('cracked-glass')]
  ]),
  ...sharing({ container: null }, practice, [
    ['4.3', 'a tight lid that lies flat', vessel('tight-lid')]
  ]),
  ...sharing({ ...pressure, ...discard }, 'Lee 2014, mBio; a university comment in the press', [
    ['4.2.12', 'a swollen tub of yogurt', yogurt(vessel('lid-bulging-or-hissing'))]
  ]),
  ...sharing({ container: 'pressure-caution', ...wait }, caution, [
    ['S3', 'unsure of a domed lid', vesselInDoubt('lid-bulging-or-hissing')],
    ['S3', 'unsure whether another burst', vesselInDoubt('sibling-burst')]
  ])
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
    ['4.2.8', 'water kefir sweet at 48 hours', water(unmeasured('two-to-three-days', 'no-change'))],
    [
      '4.2.8',
      'water kefir barely sour at 48 hours',
      water(unmeasured('two-to-three-days', 'partly'))
    ]
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
    ['C54', 'unsure whether yogurt smells of bread', yogurt(doubt('kefir-signs')('yeasty'))]
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
      bottle({ ...sign('bottle-signs')('bulging'), ...growth('dry-fuzzy') })
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
  ...NOT_FOR_THEM_ROWS,
  ...VESSEL_ROWS
]

import type { Answer, Answers } from '../../src/tree/answers.ts'
import { days, type Expected, type Row, sharing } from './kombucha-jar-rows.ts'
import { caution, choice, discard, hazard, practice, pressure, sign, wait } from './told.ts'

const seal = sign('bottle-signs')
const glass = choice('bottle-kind')
const capped = (count: number): Answers => ({ 'bottle-days': days(count) })
const warm: Answers = { 'bottle-place': 'over-78' }
const elsewhere: Answers = { 'sibling-place': 'elsewhere' }
const sweet = choice('bottle-sweetness')
const juice = sweet('sweetened')
const container = (...told: readonly Answers[]): Answers => Object.assign({}, ...told)

const calm: Expected = { container: null }
const agency = `${caution}; New York Agriculture and Markets names container failure a hazard`

/** What no one touches: gas at the cap, glass that gives, and strong gas in weak or overdue glass. */
const HAZARDS: readonly Row[] = [
  ...sharing(hazard, agency, [
    ['5.12', 'the cap is domed', seal('bulging')],
    ['5.12', 'it hisses', seal('hissing')],
    ['5.12', 'it leaks, foams or spits while closed', seal('leaking')],
    ['5.12', 'cracked or chipped, and closed', seal('cracked')],
    ['5.13', 'one beside it burst or emptied itself', seal('sibling-burst')],
    [
      '5.13',
      'one burst, nobody knows where it stood',
      container(seal('sibling-burst'), { 'sibling-place': 'unsure' })
    ]
  ]),
  ...sharing(hazard, caution, [
    [
      'S3',
      'a square bottle beside one that foamed over',
      container(seal('gushed'), glass('square'))
    ],
    [
      'S3',
      'jar glass beside one that foamed over',
      container(seal('gushed'), glass('canning-jar'))
    ],
    ['S3', 'one foamed over, four days capped', container(seal('gushed'), capped(4))],
    ['S3', 'one foamed over, stood above 78 °F', container(seal('gushed'), warm, capped(1))],
    [
      'S3',
      'one foamed over after a month in the fridge',
      container(seal('gushed'), { 'bottle-place': 'fridge-over-a-month' })
    ],
    ['S3', 'a corked bottle beside a hard tester', container(seal('hard-plastic'), glass('wine'))],
    [
      'S3',
      'swing-tops past their days beside a hard tester',
      container(seal('hard-plastic'), glass('swing-top'), capped(4))
    ],
    [
      'S3',
      'beer bottles above 78 °F beside a hard tester',
      container(seal('hard-plastic'), glass('beer'), warm, capped(1))
    ],
    ['S3', 'fancy glass with juice, five days', container(glass('square'), capped(5), juice)],
    [
      'S3',
      'jar glass with juice, two hot days',
      container(glass('canning-jar'), warm, capped(2), juice)
    ],
    [
      'S3',
      'thin glass past its days, sugar unknown',
      container(glass('thin-or-worn'), capped(4), sweet('unsure'))
    ],
    [
      'C27',
      'plain round glass with juice, five days',
      container(glass('plain-round'), capped(5), juice)
    ],
    ['C27', 'nobody knows the glass, five days', container(glass('unsure'), capped(5), juice)]
  ])
]

/** What is chilled under a towel before anybody opens it. */
const CAUTIONS: readonly Row[] = [
  ...sharing(pressure, caution, [
    ['5.1', 'four days at room temperature', capped(4)],
    ['5.1', 'two weeks at room temperature', capped(14)],
    [
      '5.1',
      'four days capped, and chilled today',
      container(capped(4), { 'bottle-place': 'fridge-now' })
    ],
    ['5.2', 'two days above 78 °F', container(warm, capped(2))],
    ['5.1', 'nobody knows how long', { 'bottle-days': 'unsure' }],
    ['5.8', 'a hard plastic bottle alone', container(seal('hard-plastic'), glass('plastic'))],
    [
      '5.8',
      'a hard plastic bottle after five days',
      container(seal('hard-plastic'), glass('plastic'), capped(5))
    ],
    ['5.8', 'swing-tops beside a hard tester', container(seal('hard-plastic'), glass('swing-top'))],
    ['0.7', 'strong glass beside one that foamed over', container(seal('gushed'), glass('beer'))],
    ['S3', 'one burst in another house', container(seal('sibling-burst'), elsewhere)],
    [
      'S3',
      'square glass, one foamed over in another house',
      container(seal('gushed'), elsewhere, glass('square'))
    ],
    [
      'S3',
      'strong glass past its days, one foamed over elsewhere',
      container(seal('gushed'), elsewhere, glass('beer'), capped(5))
    ],
    ['5.7', 'a square bottle', glass('square')],
    ['5.7', 'a sealed canning jar', glass('canning-jar')],
    ['5.7', 'a still-wine bottle', glass('wine')],
    ['C27', 'plain round glass', glass('plain-round')],
    [
      'S3',
      'square glass, five days, nothing added',
      container(glass('square'), capped(5), sweet('nothing-added'))
    ],
    ['5.4', 'more than one part in six of juice', seal('much-sugar')],
    ['5.10', 'over a month in the fridge', { 'bottle-place': 'fridge-over-a-month' }]
  ])
]

/** What must not alarm. */
const CALM: readonly Row[] = [
  ...sharing(calm, practice, [
    ['5.1', 'three days at room temperature', capped(3)],
    ['5.1', 'just capped', capped(0)],
    ['5.2', 'one day above 78 °F', container(warm, capped(1))],
    ['5.7', 'a round swing-top', glass('swing-top')],
    ['5.7', 'a plastic soda bottle', glass('plastic')],
    ['5.10', 'chilled in time', { 'bottle-place': 'fridge-now' }]
  ]),
  ...sharing(calm, caution, [
    ['B18', 'open and flat after six days', container(seal('open-now'), capped(6))],
    ['B18', 'it foamed over, and none is closed now', seal('gushed', 'open-now')],
    ['B18', 'open, in a square bottle', container(seal('open-now'), glass('square'))]
  ]),
  ...sharing({ container: null, ...discard }, caution, [
    ['B7', 'open, with a chip in the glass', seal('cracked', 'open-now')]
  ]),
  ...sharing({ container: 'pressure-caution', ...wait }, caution, [
    ['5.12', 'unsure whether it bulges', { 'bottle-signs': { bulging: 'unsure' } }],
    ['5.12', 'unsure of the glass', { 'bottle-signs': { cracked: 'unsure' } }],
    ['5.13', 'unsure whether one burst', { 'bottle-signs': { 'sibling-burst': 'unsure' } }]
  ])
]

/** Closed bottles of any drink that ferments, with what else is told of them. */
export const closedBottleRows = (of: Readonly<Record<string, Answer>> = {}): readonly Row[] =>
  [...HAZARDS, ...CAUTIONS, ...CALM].map(row => ({ ...row, told: { ...of, ...row.told } }))

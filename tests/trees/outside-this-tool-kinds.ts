import { type Row, sharing } from './kombucha-jar-rows.ts'
import {
  caution,
  choice,
  discard,
  doubt,
  fine,
  mold,
  molds,
  practice,
  sign,
  specialist,
  toxin,
  wait
} from './told.ts'

const kind = choice('outside-kind')
const jar = sign('closed-jar-signs')
const jarInDoubt = doubt('closed-jar-signs')

const cdc = 'CDC, home-canned foods and botulism (copies)'
const poison = 'National Capital Poison Center, Bongkrekic acid'
const toCall = { ...specialist, person: null, container: null }
const tempeh = (...signs: readonly string[]) => ({
  ...kind('tempeh'),
  ...sign('tempeh-signs')(...signs)
})
const soda = sign('soda-signs')
const spoiled = { 'packed-look': 'looks-spoiled' } as const
const bottle = (vessel: string, ...signs: readonly string[]) => ({
  ...kind('fizzy-drink'),
  'brine-vessel': vessel,
  ...jar(...signs)
})
const closed = { ...toxin, container: null }
const sealedHazard = { container: 'pressure-hazard', batch: 'ask-specialist', use: 'never' }
const sealedCare = { container: 'pressure-caution', batch: 'ask-specialist', use: 'not-yet' }

/** Each kind of food, and what it shows. */
export const KINDS: readonly Row[] = [
  ...sharing(toCall, 'Codex standard for tempe (copies); Food Safety News 2012; own caution', [
    ['6.1', 'sound soybean tempeh', tempeh()],
    ['6.1', 'tempeh with black near the holes', tempeh('black-near-holes')],
    ['6.1', 'tempeh that got to 93 degrees', tempeh('a-bit-warm')],
    ['6.4', 'koji, miso, natto or amazake', kind('koji-or-miso')]
  ]),
  ...sharing({ ...discard, container: null }, 'Codex standard for tempe (copies); own caution', [
    ['6.1', 'slimy tempeh', tempeh('slimy')],
    ['6.1', 'tempeh that smells of ammonia', tempeh('ammonia-or-rot')],
    ['6.1', 'pink or green tempeh', tempeh('bright-colors')],
    ['6.1', 'tempeh that got to 96 degrees', tempeh('too-warm')],
    ['6.1', 'slimy tempeh with its own spores', tempeh('slimy', 'black-near-holes')],
    ['2.3', 'packed in vinegar and newly cloudy', { ...kind('vinegar-packed'), ...spoiled }]
  ]),
  ...sharing({ ...specialist, use: 'never' }, caution, [
    ['6.1', 'tempeh of nobody knows what', { ...kind('tempeh'), 'tempeh-base': 'unsure' }],
    // Nobody knows what is in it, so nobody has any.
    ['1.1', 'a jar of unknown process that shows nothing', kind('unsure')]
  ]),
  ...sharing(closed, `${cdc}; ${caution}`, [
    ['2.3', 'a canned jar, newly cloudy or moldy', { ...kind('canned-jar'), ...spoiled }],
    ['2.3', 'a jar nobody knows, newly cloudy', { ...kind('unsure'), ...spoiled }],
    ['1.5', 'cold food under oil that turned cloudy', { ...kind('oil-kept-cold'), ...spoiled }]
  ]),
  ...sharing(fine, 'CDC, garlic in oil (news excerpt)', [
    ['1.5', 'food under oil, cold from the start', kind('oil-kept-cold')]
  ]),
  ...sharing(wait, caution, [
    [
      '1.5',
      'cold food under oil, unsure how it looks',
      { ...kind('oil-kept-cold'), 'packed-look': 'unsure' }
    ]
  ]),
  ...sharing(toCall, caution, [
    ['6.3', 'a ginger bug in a sound bottle', kind('fizzy-drink')],
    ['6.4', 'fish, sausage, meat or eggs', kind('fish-meat-or-egg')],
    ['1.5', 'garlic in honey', kind('honey-garlic')],
    ['2.5', 'a plan to sell, or to keep on a shelf', kind('plan-to-sell-or-shelf')],
    ['1.1', 'a canned jar that shows nothing', kind('canned-jar')],
    ['2.3', 'packed in vinegar, cold and clear', kind('vinegar-packed')],
    ['6.5', 'olives', kind('olives')],
    ['6.4', 'any other food', kind('something-else')]
  ]),
  ...sharing(toxin, 'MMWR 56(05) and 62(26); Morse 1990, AJPH 80(11):1372', [
    ['1.5', 'food under oil, or home-fermented tofu', kind('oil-or-tofu')]
  ]),
  ...sharing(toxin, poison, [
    ['6.1', 'tempeh of press-cake', kind('press-cake-tempeh')],
    [
      '6.1',
      'tempeh that turns out to be of press-cake',
      { ...kind('tempeh'), 'tempeh-base': 'press-cake' }
    ]
  ]),
  ...sharing({ ...mold, container: null }, molds, [
    ['6.3', 'fuzz on a ginger bug', { ...kind('fizzy-drink'), ...soda('fuzz-or-colors') }]
  ]),
  ...sharing({ ...discard, container: null }, practice, [
    ['6.3', 'a ginger bug that smells rotten', { ...kind('fizzy-drink'), ...soda('rotten') }]
  ])
]

/** Closed jars and bottles of them. */
export const JARS: readonly Row[] = [
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
  ...sharing(sealedHazard, caution, [
    ['6.3', 'a ginger bottle bulges', bottle('bottle', 'bulging-or-leaking')],
    ['6.3', 'a ginger bottle is cracked', bottle('bottle', 'cracked-glass')],
    ['6.3', 'another ginger bottle burst', bottle('bottle', 'sibling-burst')],
    ['6.3', 'a ginger bottle gushed, another burst', bottle('bottle', 'spurted', 'sibling-burst')],
    ['6.3', 'a square bottle gushed', bottle('weak-bottle', 'spurted')],
    [
      '6.3',
      'a square bottle beside a rock-hard plastic one',
      bottle('weak-bottle', 'hard-plastic')
    ],
    [
      '6.3',
      'a square bottle, shut for four days',
      { ...bottle('weak-bottle'), 'shut-airtight': 'four-days-or-more' }
    ],
    [
      '6.3',
      'a square bottle, two hot days',
      { ...bottle('weak-bottle'), 'shut-airtight': 'two-days-and-hot' }
    ],
    [
      '1.1',
      'a bottle of something else bulges',
      { 'brine-vessel': 'bottle', ...jar('bulging-or-leaking') }
    ],
    ['1.1', 'something else is cracked and shut', jar('cracked-glass')],
    ['1.1', 'another jar of something else burst', jar('sibling-burst')]
  ]),
  ...sharing(sealedCare, caution, [
    ['6.3', 'a ginger bottle gushed', bottle('bottle', 'spurted')],
    ['6.3', 'a plastic bottle is rock hard', bottle('bottle', 'hard-plastic')],
    ['6.3', 'a jar of ginger bug is domed', bottle('jar-or-crock', 'bulging-or-leaking')],
    [
      '6.3',
      'a thick bottle, shut for four days',
      { ...bottle('bottle'), 'shut-airtight': 'four-days-or-more' }
    ],
    [
      '6.3',
      'unsure whether a ginger bottle bulges',
      { ...kind('fizzy-drink'), ...jarInDoubt('bulging-or-leaking') }
    ],
    ['1.1', 'a jar of something else is domed', jar('bulging-or-leaking')],
    [
      '1.1',
      'a soft tub of something else swells',
      { 'brine-vessel': 'soft-tub', ...jar('bulging-or-leaking') }
    ]
  ]),
  ...sharing({ ...discard, container: null }, caution, [
    ['1.1', 'something else is cracked and open', jar('cracked-glass', 'open-now')]
  ]),
  ...sharing(closed, caution, [
    [
      '1.1',
      'a swollen jar of fish, meat or eggs',
      { ...kind('fish-meat-or-egg'), ...jar('bulging-or-leaking') }
    ],
    [
      '1.1',
      'a canned jar that bulged and was opened',
      { ...kind('canned-jar'), ...jar('bulging-or-leaking', 'open-now') }
    ],
    [
      '1.1',
      'a canned jar, cracked and opened',
      { ...kind('canned-jar'), ...jar('cracked-glass', 'open-now') }
    ]
  ])
]

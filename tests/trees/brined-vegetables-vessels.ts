import type { Answers } from '../../src/tree/answers.ts'
import {
  acid,
  caution,
  discard,
  growing,
  hazard,
  kind,
  lid,
  mold,
  noReading,
  pressure,
  salt,
  specialist,
  surface,
  toxin,
  vessel
} from './brined-vegetables-told.ts'
import { type Row, sharing } from './kombucha-jar-rows.ts'
import { choice } from './told.ts'

const shut = choice('shut-airtight')
const tight = (how: string): Answers => ({ ...lid('tight-lid'), ...shut(how) })
const sweet: Answers = { 'sugar-in-it': 'sweetened' }
const oil = (how: string): Answers => ({ ...kind('in-oil'), 'oil-kept': how })
const spoiled: Answers = { 'packed-look': 'looks-spoiled' }
const domed = lid('lid-domed-or-leaking')
const calm = { container: null, batch: 'normal-growth', use: 'as-directed' }
const weeksUntested: Answers = { ...tight('weeks'), ...noReading }

/** Under oil, packed in vinegar, canned: what may hold toxin, and what does not. */
const PACKED: readonly Row[] = [
  ...sharing({ container: null, ...toxin }, 'morse-1990, cdc-garlic-oil', [
    ['1.5', 'garlic under oil, stood in the kitchen', oil('warm-or-over-four-days')]
  ]),
  ...sharing({ container: null, ...toxin }, caution, [
    ['1.5', 'garlic under oil, kept nobody knows how', oil('unsure')],
    ['2.3', 'a canned jar newly cloudy', { ...kind('canned'), ...spoiled }],
    ['2.3', 'a jar of unknown process gone slimy', { ...kind('unsure'), ...spoiled }],
    ['1.1', 'packed in vinegar, and it bulges', { ...kind('vinegar-packed'), ...domed }]
  ]),
  ...sharing({ use: 'as-directed' }, 'cdc-garlic-oil', [
    ['1.5', 'garlic under oil, cold since yesterday', oil('cold-four-days')]
  ]),
  ...sharing(discard, caution, [
    ['2.3', 'packed in vinegar and gone cloudy', { ...kind('vinegar-packed'), ...spoiled }]
  ]),
  ...sharing(specialist, caution, [
    ['2.3', 'packed in vinegar and sound', kind('vinegar-packed')],
    ['2.3', 'canned and sound', kind('canned')]
  ]),
  ...sharing({ batch: 'ask-specialist', use: 'never' }, caution, [
    ['S13', 'nothing is known of it', kind('unsure')]
  ])
]

/** Bottles, tubs and jars that bulge, gush, stand beside one that burst, or are cracked. */
const UNDER_PRESSURE: readonly Row[] = [
  ...sharing(hazard, caution, [
    ['S3', 'a kvass bottle bulges', { ...kind('beet-kvass'), ...domed, ...vessel('bottle') }],
    ['S3', 'hot sauce hisses in a square bottle', { ...domed, ...vessel('weak-bottle') }],
    ['S3', 'it bulges, and nobody knows what it is', { ...domed, ...vessel('unsure') }],
    ['S3', 'a square bottle gushed', { ...lid('spurted-when-opened'), ...vessel('weak-bottle') }],
    ['S3', 'the bottle beside it burst', { ...lid('sibling-burst'), ...vessel('bottle') }],
    ['S3', 'shut, and the jar beside it burst', lid('sibling-burst', 'tight-lid')],
    [
      'S3',
      'a square one beside one that foamed',
      { ...lid('sibling-foamed'), ...vessel('weak-bottle') }
    ],
    ['S3', 'cracked and shut', lid('cracked-glass', 'tight-lid')],
    ['S3', 'cracked and domed', lid('cracked-glass', 'lid-domed-or-leaking')],
    [
      'S3',
      'sweet, five days shut, in a square bottle',
      { ...tight('four-days-or-more'), ...sweet, ...vessel('weak-bottle') }
    ]
  ]),
  ...sharing(pressure, caution, [
    ['S3', 'a swollen tub', { ...domed, ...vessel('soft-tub') }],
    ['S3', 'a round bottle gushed', { ...lid('spurted-when-opened'), ...vessel('bottle') }],
    ['S3', 'another one foamed over', { ...lid('sibling-foamed'), ...vessel('bottle') }],
    ['S3', 'an open jar where another burst', lid('sibling-burst')],
    ['C4', 'shut for five days', tight('four-days-or-more')],
    ['C4', 'shut for weeks, tested', tight('weeks')],
    ['C4', 'shut, nobody knows how long', tight('unsure')],
    ['C4', 'sweet and shut for two hot days', { ...tight('two-days-and-hot'), ...sweet }],
    [
      'C4',
      'kvass shut for two hot days',
      { ...kind('beet-kvass'), ...acid(4, 9), ...tight('two-days-and-hot') }
    ]
  ]),
  ...sharing(calm, caution, [
    ['C4', 'shut since this morning', tight('vented-or-new')],
    ['C4', 'shut in the fridge', tight('kept-cold')],
    ['C4', 'plain kraut shut for two hot days', tight('two-days-and-hot')]
  ]),
  ...sharing({ container: null, ...discard }, caution, [
    ['S3', 'a crock with a crack under a cloth', lid('cracked-glass')]
  ]),
  ...sharing({ container: null, ...mold }, caution, [
    [
      'S12',
      'cracked under a cloth, fur inside',
      { ...lid('cracked-glass'), ...surface('dry-fuzzy') }
    ]
  ]),
  ...sharing({ container: 'pressure-hazard', ...mold }, caution, [
    [
      'S12',
      'cracked and shut, fur seen inside',
      { ...lid('cracked-glass', 'tight-lid'), ...surface('dry-fuzzy') }
    ]
  ]),
  ...sharing({ ...specialist, container: 'pressure-caution' }, caution, [
    ['1.5', 'weeks shut, kimchi, nobody measured', { ...kind('kimchi'), ...weeksUntested }],
    ['1.5', 'weeks shut, little salt, nobody measured', { ...weeksUntested, ...salt(1.5) }],
    [
      '1.5',
      'weeks shut, salt unknown, nobody measured',
      { ...weeksUntested, 'salt-share': 'unsure' }
    ]
  ]),
  ...sharing({ container: null, ...growing }, caution, [
    ['C4', 'plain kraut on its third day, shut', { ...tight('vented-or-new'), ...acid(4.8, 2) }]
  ])
]

/** Every row on what holds it, and on what was packed rather than fermented. */
export const VESSEL_ROWS: readonly Row[] = [...PACKED, ...UNDER_PRESSURE]

import { type Row, sharing } from './kombucha-jar-rows.ts'
import { caution, discard, doubt, hazard, mold, pressure, sign, wait } from './told.ts'

const lid = sign('container-signs')
const lidInDoubt = doubt('container-signs')

/** Lid and glass of a kombucha jar and of a culture's jar, which hold gas alike. */
export const LID_AND_GLASS: readonly Row[] = [
  ...sharing({ ...pressure, batch: 'normal-growth' }, caution, [
    ['5.12', 'a domed lid', lid('lid-bulging-or-hissing')],
    ['5.12', 'a lid that was pressed flat again', lid('lid-bulging-or-hissing', 'tight-lid')],
    ['1.21', 'shut airtight for four days', lid('closed-too-long', 'tight-lid')],
    ['1.21', 'shut airtight, nobody knows how long', lidInDoubt('closed-too-long')]
  ]),
  ...sharing({ container: null, batch: 'normal-growth' }, caution, [
    ['1.21', 'a lid screwed on yesterday', lid('tight-lid')]
  ]),
  ...sharing(hazard, caution, [
    ['5.12', 'leaks and cannot be moved without a bump', lid('burst-or-out-of-reach')],
    ['5.12', 'cracked under a domed lid', lid('cracked-glass', 'lid-bulging-or-hissing')],
    ['5.12', 'chipped under a tight lid', lid('cracked-glass', 'tight-lid')],
    ['5.12', 'cracked and shut for days', lid('cracked-glass', 'closed-too-long')]
  ]),
  ...sharing({ ...hazard, ...mold, container: 'pressure-hazard' }, caution, [
    [
      '5.12',
      'cracked, shut and moldy',
      { ...lid('cracked-glass', 'tight-lid'), 'surface-texture': 'dry-fuzzy' }
    ]
  ]),
  ...sharing({ ...discard, person: null, container: null }, caution, [
    ['5.12', 'a chipped rim under a cloth', lid('cracked-glass')]
  ]),
  ...sharing({ ...discard, person: 'poison-help', container: null }, caution, [
    [
      '5.12',
      'cracked and open, drunk at higher risk',
      { ...lid('cracked-glass'), 'people-signs': { 'at-risk-drank': 'yes' } }
    ]
  ]),
  ...sharing({ ...wait, container: null }, caution, [
    ['5.12', 'maybe a crack, open', lidInDoubt('cracked-glass')]
  ]),
  ...sharing({ ...wait, container: 'pressure-caution' }, caution, [
    ['5.12', 'maybe a domed lid', lidInDoubt('lid-bulging-or-hissing')],
    [
      '5.12',
      'maybe a crack, under a tight lid',
      { 'container-signs': { 'cracked-glass': 'unsure', 'tight-lid': 'yes' } }
    ]
  ])
]

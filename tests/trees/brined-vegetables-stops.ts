import {
  acid,
  again,
  brine,
  caution,
  coldKimchi,
  color,
  discard,
  emergency,
  film,
  fine,
  kind,
  lid,
  mold,
  person,
  pigment,
  practice,
  pressure,
  smell,
  specialist,
  story,
  surface,
  toxin,
  wait,
  yeast
} from './brined-vegetables-told.ts'
import { type Row, sharing } from './kombucha-jar-rows.ts'

/** Sections 2.4, 2.5 and 6: kimchi, pepper mash and beet kvass. */
const OTHERS: readonly Row[] = [
  ...sharing(fine, practice, [
    ['2.4', 'old kimchi grown limp', { ...kind('kimchi'), ...brine('soft') }],
    ['2.4', 'old kimchi that fizzes', { ...kind('kimchi'), ...brine('foam') }],
    ['2.4', 'ripe after ten days', { ...kind('kimchi'), ...acid(4.1, 10) }],
    [
      '2.5',
      'red from chilies',
      {
        ...kind('pepper-mash'),
        ...color('even-pink'),
        ...pigment('source-in-jar')
      }
    ]
  ]),
  ...sharing(fine, 'from-memory', [
    ['2.4', 'dots inside the white ribs', { ...kind('kimchi'), ...color('specks-inside') }]
  ]),
  ...sharing(yeast, `kimchi-yeasts-2018, ${practice}`, [
    ['2.4', 'a white skin on kimchi', { ...kind('kimchi'), ...film('thin-and-new') }],
    ['2.5', 'a white skin on mash', { ...kind('pepper-mash'), ...film('thin-and-new') }],
    ['6', 'a stained skin on kvass', { ...kind('beet-kvass'), ...film('thin-and-new') }]
  ]),
  ...sharing(pressure, practice, [
    ['2.4', 'a domed kimchi lid', { ...kind('kimchi'), ...lid('lid-domed-or-leaking') }],
    ['6', 'a domed kvass lid', { ...kind('beet-kvass'), ...lid('lid-domed-or-leaking') }]
  ]),
  ...sharing(wait, 'park-2015, kimchi-acidity', [
    ['2.4', 'three weeks cold, not sour', { ...coldKimchi, ...acid(5.2, 20) }]
  ]),
  ...sharing(wait, caution, [
    ['2.5', 'mash a little short of acid', { ...kind('pepper-mash'), ...acid(4.4, 10) }],
    ['6', 'kvass not sour on day five', { ...kind('beet-kvass'), ...acid(4.8, 5) }]
  ]),
  ...sharing(specialist, caution, [
    ['2.4', 'oysters in it', { ...kind('kimchi'), ...story('raw-meat-or-seafood') }],
    ['S11', 'a food that is no vegetable', kind('outside-this-tool')]
  ]),
  ...sharing({ person: null, batch: 'normal-growth', use: 'never' }, 'gill-2024, fda-at-risk', [
    [
      '2.4',
      'sour kimchi for a higher-risk eater',
      {
        ...kind('kimchi'),
        ...person('at-risk-will-drink')
      }
    ]
  ]),
  ...sharing(discard, practice, [
    ['2.4', 'slimy kimchi', { ...kind('kimchi'), ...brine('slime') }],
    ['2.4', 'rotten kimchi', { ...kind('kimchi'), ...smell('putrid') }],
    ['6', 'kvass like syrup', { ...kind('beet-kvass'), ...brine('slime') }]
  ]),
  ...sharing(mold, practice, [
    ['2.5', 'fur in a red mash', { ...kind('pepper-mash'), ...surface('dry-fuzzy') }],
    ['6', 'fur on kvass', { ...kind('beet-kvass'), ...surface('dry-fuzzy') }]
  ])
]

/** Of somebody who ate press cake and is unwell in any way. */
const pressCake = (sign: string) => ({
  ...kind('press-cake-tempeh'),
  ...person(sign),
  'press-cake-eaters': { 'unwell-after-press-cake': 'yes' as const }
})

/** Section 1 and the settled questions: people, canned jars, oil, lids. */
const STOPS: readonly Row[] = [
  ...sharing(emergency, 'canada-botulism, wsu-botulism', [
    ['1.1', 'sees double', person('severe-symptoms')]
  ]),
  ...sharing(emergency, caution, [['S2', 'glass in the eye', person('deep-cut-or-eye')]]),
  ...sharing({ person: 'emergency', use: 'never' }, 'poison-org-bongkrek', [
    ['S15', 'ate press cake, an upset', pressCake('mild-upset')],
    ['S15', 'ate press cake, ill', pressCake('illness-signs')]
  ]),
  ...sharing({ person: 'poison-help', ...toxin }, 'poison-org-bongkrek', [
    ['S15', 'ate press cake, well', { ...kind('press-cake-tempeh'), ...person('someone-drank') }]
  ]),
  ...sharing({ person: 'doctor-today', batch: 'ask-specialist', use: 'never' }, 'cdc-symptoms', [
    ['1.1', 'blood, or a racing heart', person('illness-signs')]
  ]),
  ...sharing({ person: 'poison-help', batch: 'ask-specialist', use: 'never' }, caution, [
    ['S15', 'vomited once', person('mild-upset')]
  ]),
  ...sharing({ container: null, ...toxin }, 'wsu-botulism, cdc-canned', [
    ['1.1', 'a canned jar bulges', { ...kind('canned'), ...lid('lid-domed-or-leaking') }],
    ['1.1', 'a canned jar spurts', { ...kind('canned'), ...lid('spurted-when-opened') }]
  ]),
  ...sharing({ container: null, ...toxin }, caution, [
    [
      'S13',
      'nobody knows how, and it bulges',
      {
        ...kind('unsure'),
        ...lid('lid-domed-or-leaking')
      }
    ]
  ]),
  ...sharing(specialist, 'msu-cloudiness', [
    ['2.3', 'packed in vinegar, as it was made', kind('vinegar-packed')]
  ]),
  ...sharing(specialist, caution, [['1.5', 'garlic in honey', kind('honey-garlic')]]),
  ...sharing(toxin, 'mmwr-tofu-2007, mmwr-tofu-2013', [
    ['1.5', 'tofu fermented at home', kind('fermented-tofu')]
  ]),
  ...sharing(toxin, 'amarillo-2013', [
    [
      '1.5',
      'a month under a tight lid, not sour',
      {
        ...kind('other-vegetables'),
        ...lid('tight-lid'),
        ...acid(5.2, 30)
      }
    ]
  ]),
  ...sharing({ person: 'poison-help', ...toxin }, caution, [
    [
      '1.3',
      'fur in a tight jar that is not sour, eaten',
      { ...surface('dry-fuzzy'), ...lid('tight-lid'), ...acid(5, 10), ...person('someone-drank') }
    ],
    [
      '1.1',
      'eaten from a canned jar that bulges',
      { ...kind('canned'), ...lid('lid-domed-or-leaking'), ...person('someone-drank') }
    ]
  ]),
  ...sharing(pressure, caution, [
    ['S3', 'a raw jar with a domed lid', lid('lid-domed-or-leaking')],
    ['S13', 'a raw tub that seeps', { ...kind('cucumber-pickles'), ...lid('lid-domed-or-leaking') }]
  ]),
  ...sharing({ container: 'pressure-hazard', use: 'never' }, caution, [
    ['S3', 'cracked glass under a tight lid', lid('cracked-glass', 'tight-lid')]
  ]),
  ...sharing(wait, caution, [['S8', 'cannot tell fur', surface('unsure')]]),
  ...sharing(discard, caution, [
    ['S8', 'cannot tell fur, twice', { ...surface('unsure'), ...again }],
    [
      'S8',
      'cannot tell fur, a higher-risk eater',
      {
        ...surface('unsure'),
        ...person('at-risk-will-drink')
      }
    ]
  ]),
  ...sharing({ person: 'poison-help', ...mold }, caution, [
    ['S4', 'higher risk, ate mold', { ...surface('dry-fuzzy'), ...person('at-risk-drank') }]
  ]),
  ...sharing({ person: 'ask-doctor', batch: 'normal-growth', use: 'never' }, caution, [
    ['S4', 'higher risk, ate from a fine jar', person('at-risk-drank')]
  ]),
  ...sharing({ person: 'ask-doctor', ...discard }, 'fda-pottery', [
    ['S4', 'ate from an old pot', { ...story('old-pottery'), ...person('someone-drank') }]
  ]),
  ...sharing(fine, practice, [['S4', 'a well adult ate some', person('someone-drank')]])
]

/** Every row on the other kinds and on what comes before any sign. */
export const STOP_ROWS: readonly Row[] = [...OTHERS, ...STOPS]

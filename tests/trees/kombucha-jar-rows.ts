import type { Answers } from '../../src/tree/answers.ts'

/** One row of the fact sheet: what the caller tells, everything else usual, and what must come out. */
export interface Row {
  readonly row: string
  readonly finding: string
  readonly told: Answers
  readonly expect: Expected
  readonly source: string
}

/** What must come out; a track or `use` that the row does not settle is left out. */
export interface Expected {
  readonly person?: string | null
  readonly container?: string | null
  readonly batch?: string | null
  readonly use?: string
}

type Told = readonly [row: string, finding: string, told: Answers]

/** A reading and what its instrument may be out by. */
export const reading = (middle: number, plusMinus: number) => ({
  low: rounded(middle - plusMinus),
  reading: middle,
  high: rounded(middle + plusMinus)
})
// 4.15 + 0.05 must be exactly 4.2, or a pass at the limit turns into a doubt.
const rounded = (value: number) => Math.round(value * 1e6) / 1e6

/** A pH read with a calibrated meter. */
export const meter = (ph: number) => reading(ph, 0.05)
/** A pH read with a narrow-range strip. */
export const narrowStrip = (ph: number) => reading(ph, 0.3)
/** A pH read with a wide-range strip. */
export const wideStrip = (ph: number) => reading(ph, 0.5)
/** Whole days since sweet tea was last added. */
export const days = (count: number) => reading(count, 0)
/** Rows that share what must come out and where it is said. */
export const sharing = (expect: Expected, source: string, rows: readonly Told[]): readonly Row[] =>
  rows.map(([row, finding, told]) => ({ row, finding, told, expect, source }))

const surface = (answer: string): Answers => ({ 'surface-texture': answer })
const color = (answer: string): Answers => ({ 'spots-and-color': answer })
const jar = (sign: string): Answers => ({ 'jar-signs': { [sign]: 'yes' } })
const person = (sign: string): Answers => ({ 'people-signs': { [sign]: 'yes' } })
const smell = (sign: string): Answers => ({ 'smell-and-liquid': { [sign]: 'yes' } })
const acid = (ph: number, day: number): Answers => ({ 'jar-ph': meter(ph), day: days(day) })
const noReading = (day: number): Answers => ({ 'jar-ph': 'unsure', day: days(day) })
const again: Answers = { 'looked-before': 'second-look' }

const practice = 'common practice, no source'
const caution = 'own caution, no source'
const ripe = 3.2

const fine = { person: null, container: null, batch: 'normal-growth', use: 'as-directed' }
const growing = { person: null, container: null, batch: 'normal-growth', use: 'not-yet' }
const yeast = { batch: 'yeast-strands', use: 'as-directed' }
const wait = { batch: 'wait-and-recheck', use: 'not-yet' }
const discard = { batch: 'discard-and-sanitize', use: 'never' }
const mold = { batch: 'likely-mold', use: 'never' }
const emergency = { person: 'emergency', container: null, batch: null, use: 'never' }

/** Rows 1.10 to 1.24 and 6.14, 6.17: recipe, acid, vessel and starter. */
const MAKING: readonly Row[] = [
  ...sharing(growing, practice, [
    ['1.10', 'sour enough right after mixing', acid(4.4, 0)],
    ['1.10', 'as sour as most mixes at the start', acid(3.8, 0)]
  ]),
  ...sharing(wait, 'queensland-fermented', [['1.10', 'too weak when mixed', acid(4.8, 0)]]),
  ...sharing(discard, caution, [
    ['1.10', 'acid poured in days late', { ...jar('late-acid'), ...acid(ripe, 8) }]
  ]),
  ...sharing(discard, 'queensland-fermented', [['1.15', 'still too weak next day', acid(4.8, 1)]]),
  ...sharing(fine, 'niagara-kombucha, fpt-2025', [
    ['1.11', 'sour enough on the seventh day', acid(4, 7)],
    ['1.17', 'as sour as a finished brew is', acid(3, 9)]
  ]),
  ...sharing(discard, 'niagara-kombucha, fpt-2025', [
    ['1.12', 'under the spore line but over the limit', acid(4.4, 7)]
  ]),
  ...sharing(wait, 'cfr-114-80', [
    ['1.13', 'a strip too close to the limit', { 'jar-ph': narrowStrip(4), day: days(8) }],
    ['1.13', 'a meter at the very limit', acid(4.2, 8)]
  ]),
  ...sharing({ batch: 'wait-and-recheck', use: 'never' }, practice, [
    ['1.14', 'a waking culture is not held to it', { ...jar('dried-culture'), ...acid(5, 8) }]
  ]),
  ...sharing(discard, 'magazine-2016', [
    ['1.14', 'a week old and not sour', acid(4.5, 7)],
    ['1.14', 'at the limit twice', { ...acid(4.2, 8), ...again }],
    ['1.14', 'a topped-up vessel, no sourer', { ...jar('continuous-vessel'), ...acid(4.5, 7) }]
  ]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['1.15', 'not there by the fourth day', acid(4.4, 4)],
    ['1.11', 'nobody has measured', noReading(9)],
    ['1.11', 'nobody knows how old it is', { 'jar-ph': meter(ripe), day: 'unsure' }]
  ]),
  ...sharing({ batch: 'quality-only', use: 'never' }, 'niagara-kombucha', [
    ['1.16', 'far too sour to serve', acid(2.3, 12)]
  ]),
  ...sharing(growing, 'brewer-2021', [['1.18', 'sour early proves no kill', acid(ripe, 6)]]),
  // No longer a caution from the first day: gas has to have had days to build up.
  ...sharing(fine, practice, [
    ['1.21', 'a lid screwed on yesterday', { 'container-signs': { 'tight-lid': 'yes' } }]
  ]),
  ...sharing(discard, 'fda-pottery, mmwr-1995, fda-t95-15, phan-1998, munilla-2023', [
    ['1.23', 'a glazed or painted pot', jar('lead-risk-vessel')]
  ]),
  ...sharing(discard, practice, [
    ['1.24', 'a copper pot', jar('bare-metal-vessel')],
    ['6.14', 'a pasteurized starter', { 'starter-kind': 'pasteurized', ...noReading(3) }],
    ['6.17', 'no starter at all', { 'starter-kind': 'no-starter', ...noReading(3) }]
  ])
]

/** Rows 2.1 to 2.38: what is seen. */
const SEEN: readonly Row[] = [
  ...sharing(growing, practice, [
    ['2.1', 'a first clear skin', { ...surface('wet-film'), ...acid(3.6, 3) }],
    ['2.2', 'wet patches not yet joined', { ...surface('wet-islands'), ...acid(3.5, 5) }],
    ['2.38', 'froth on a young brew', { ...surface('wet-bumps-or-blisters'), ...acid(3.6, 3) }]
  ]),
  ...sharing(fine, practice, [
    ['2.2', 'wet patches level with the brew', surface('wet-islands')],
    ['2.3', 'one even moist disc', surface('wet-film')],
    ['2.4', 'a warty disc', surface('wet-bumps-or-blisters')],
    ['2.5', 'clear domes of gas', surface('wet-bumps-or-blisters')],
    ['2.9', 'flecks of tea leaf', color('gritty-specks')],
    ['2.10', 'a torn, lopsided disc', surface('wet-film')],
    ['2.11', 'the old culture lies at the bottom', surface('nothing-yet')],
    ['2.12', 'a disc tanner than the last', color('plain-color')],
    ['2.13', 'hibiscus went in', { ...color('even-tint'), 'colored-ingredient': 'added' }],
    ['2.14', 'a disc that comes apart in layers', surface('wet-film')],
    ['2.15', 'cloudy, pours thin', {}],
    ['2.25', 'wet rounds that join', surface('wet-islands')],
    ['2.26', 'a wet smear on the glass', surface('wet-film')],
    ['2.35', 'no film in a week, but sour', { ...surface('nothing-yet'), ...acid(3.8, 7) }]
  ]),
  ...sharing(yeast, practice, [
    ['2.6', 'brown strings hanging down', surface('strands-or-sediment')],
    ['2.7', 'tan sludge at the bottom', surface('strands-or-sediment')],
    ['2.8', 'dark smudges in the disc', color('within-or-below')],
    ['2.27', 'a spot under the brew line', color('within-or-below')]
  ]),
  ...sharing(wait, practice, [
    ['2.16', 'a dried top without fuzz', surface('dry-leathery')],
    ['2.17', 'a flat wrinkled film, seen once', surface('flat-wrinkled-film')],
    ['2.30', 'flies on the cloth only', jar('flies-outside')],
    ['2.35', 'no film, acid in doubt', { ...surface('nothing-yet'), ...acid(4.2, 7) }]
  ]),
  ...sharing(wait, caution, [
    ['0.6', 'cannot tell fuzz', { ...surface('unsure'), 'side-light': 'unsure' }]
  ]),
  ...sharing(discard, caution, [
    ['0.6', 'cannot tell, twice', { ...surface('unsure'), 'side-light': 'unsure', ...again }],
    ['2.17', 'wrinkled film came back', { ...surface('flat-wrinkled-film'), ...again }],
    ['2.17', 'wrinkled film, no reading', { ...surface('flat-wrinkled-film'), ...noReading(8) }],
    ['2.17', 'wrinkled film, not sour', { ...surface('flat-wrinkled-film'), ...acid(4.4, 5) }],
    [
      '2.17',
      'wrinkled film, a pregnant drinker',
      { ...surface('flat-wrinkled-film'), ...person('at-risk-will-drink') }
    ]
  ]),
  ...sharing(mold, `fsis-molds, niagara-kombucha, ${practice}`, [
    ['2.18', 'dust that lifts off', surface('chalky-powder')],
    ['2.19', 'white cotton tufts', surface('dry-fuzzy')],
    ['2.20', 'green fur', { ...surface('dry-fuzzy'), ...color('dark-on-top') }],
    ['2.21', 'black fur', { ...surface('dry-fuzzy'), ...color('dark-on-top') }],
    ['2.22', 'gray fur', { ...surface('dry-fuzzy'), ...color('dark-on-top') }],
    ['2.23', 'tan fur in a plain color', { ...surface('dry-fuzzy'), ...color('plain-color') }],
    ['2.24', 'pink fur', { ...surface('dry-fuzzy'), ...color('bright-on-top') }],
    ['2.25', 'dry rounds that rise', surface('dry-raised-circles')],
    ['2.26', 'fur above the brew line', surface('dry-fuzzy')]
  ]),
  ...sharing(discard, `msu-kombucha, ${practice}`, [
    ['2.13', 'tinted by nothing', { ...color('even-tint'), 'colored-ingredient': 'not-added' }],
    ['2.21', 'smooth black spots on top', color('dark-on-top')],
    ['2.24', 'smooth orange spots on top', color('bright-on-top')]
  ]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['2.13', 'tint, unknown', { ...color('even-tint'), 'colored-ingredient': 'unsure' }]
  ]),
  ...sharing(discard, practice, [
    ['2.28', 'charred and crumbling', { ...surface('falling-apart'), ...color('all-black') }],
    ['2.28', 'black all through', color('all-black')],
    ['2.29', 'a disc gone to mush', surface('falling-apart')],
    ['2.31', 'maggots on the glass', jar('insects-inside')],
    ['2.33', 'the brew itself pours in strings', smell('ropy-liquid')],
    ['2.34', 'a rainbow slick', smell('oily-sheen')],
    ['2.35', 'no film and not sour', { ...surface('nothing-yet'), ...acid(4.4, 7) }]
  ]),
  ...sharing({ person: null, ...discard }, 'fda-cpg-vinegar-eels', [
    ['2.32', 'threads that swim', jar('tiny-eels')],
    ['2.32', 'swimming threads, drunk', { ...jar('tiny-eels'), ...person('someone-drank') }]
  ]),
  ...sharing({ use: 'as-directed' }, practice, [
    ['2.36', 'no film, but sour', { ...surface('nothing-yet'), ...acid(3.6, 14) }],
    ['2.36', 'sweet, but sour enough', { ...smell('still-sweet'), ...acid(3.6, 10) }]
  ]),
  ...sharing({ batch: 'wait-and-recheck', use: 'never' }, practice, [
    ['2.37', 'a dried culture, nothing yet', { ...jar('dried-culture'), ...noReading(12) }]
  ])
]

/** Rows 2.40 to 2.53: what is smelled, and what callers say of the taste unasked. */
const SMELLED: readonly Row[] = [
  ...sharing(growing, practice, [['2.40', 'sweet tea, hardly a smell', acid(3.9, 3)]]),
  ...sharing(discard, practice, [['2.40', 'hardly a smell, not sour in time', acid(4.5, 8)]]),
  ...sharing(fine, practice, [
    ['2.41', 'a tart vinegar smell', {}],
    ['2.51', 'bitter from long steeping', {}]
  ]),
  ...sharing({ use: 'as-directed' }, 'niagara-kombucha', [
    ['2.42', 'sharp, within the range', { ...smell('harsh-vinegar'), ...acid(2.8, 13) }]
  ]),
  ...sharing({ batch: 'quality-only', use: 'never' }, 'niagara-kombucha', [
    ['2.42', 'sharp, under the range', { ...smell('harsh-vinegar'), ...acid(2.4, 13) }]
  ]),
  ...sharing(yeast, practice, [['2.43', 'smells of beer', smell('yeasty')]]),
  ...sharing(wait, practice, [
    ['2.44', 'a hint of nail polish', smell('faint-solvent')],
    ['2.45', 'a hint of egg in the first week', { ...smell('faint-egg'), ...acid(3.8, 4) }],
    ['2.45', 'a hint of egg later on', { ...smell('faint-egg'), ...acid(ripe, 9) }],
    ['2.49', 'damp cellar over clean growth', smell('musty')]
  ]),
  ...sharing(wait, 'nz-recall-2022', [['2.53', 'warming, like wine', smell('boozy')]]),
  ...sharing(discard, practice, [
    ['2.44', 'strong glue', smell('strong-solvent')],
    ['2.44', 'nail polish that stays', { ...smell('faint-solvent'), ...again }],
    ['2.45', 'a hint of egg that stays', { ...smell('faint-egg'), ...again }],
    ['2.46', 'strong egg in the first week', { ...smell('strong-egg'), ...acid(3.8, 4) }],
    ['2.46', 'strong egg later on', { ...smell('strong-egg'), ...acid(ripe, 9) }],
    ['2.46', 'a hint of egg, not sour in time', { ...smell('faint-egg'), ...acid(4.5, 8) }],
    ['2.49', 'damp cellar, dry top', { ...smell('musty'), ...surface('dry-leathery') }],
    ['2.49', 'damp cellar, twice', { ...smell('musty'), ...again }],
    ['2.50', 'rusty', smell('metallic')],
    ['2.52', 'soap, told unasked', smell('soapy-or-salty')]
  ]),
  ...sharing(discard, 'magazine-2016', [
    ['2.47', 'sweaty feet', smell('cheesy-or-vomit')],
    ['2.48', 'sewage', smell('putrid')]
  ]),
  ...sharing({ person: 'poison-help', ...discard }, 'hrsa-poison-help', [
    ['2.44', 'cleaner in it, drunk', { ...jar('cleaner-got-in'), ...person('someone-drank') }]
  ])
]

/** Rows 3.1, 3.2 and 4.1 to 4.12: mold met before, and people. */
const PEOPLE: readonly Row[] = [
  ...sharing(mold, 'niagara-kombucha, young-womens-health, fsis-molds', [
    ['3.1', 'fur over a very sour brew', { ...surface('dry-fuzzy'), ...acid(3, 9) }],
    ['3.2', 'mold scooped off, clean now', jar('mold-removed')],
    ['4.8', 'a sip of moldy brew', { ...surface('dry-fuzzy'), ...person('someone-drank') }]
  ]),
  ...sharing({ person: null, batch: 'normal-growth', use: 'never' }, 'fda-at-risk', [
    ['4.1', 'a pregnant person wants some', person('at-risk-will-drink')],
    ['4.2', 'a person after a transplant wants some', person('at-risk-will-drink')],
    ['4.3', 'a child wants some', person('at-risk-will-drink')],
    ['4.4', 'a person with a liver disease wants some', person('at-risk-will-drink')],
    ['4.5', 'a person who avoids alcohol wants some', person('at-risk-will-drink')]
  ]),
  ...sharing(fine, 'niagara-kombucha', [
    ['4.6', 'a well adult drank a little of a fine jar', person('someone-drank')]
  ]),
  ...sharing(emergency, 'hrsa-poison-help, canada-botulism', [
    ['4.7', 'cannot breathe', person('severe-symptoms')],
    ['4.10', 'collapsed', person('severe-symptoms')]
  ]),
  ...sharing(emergency, caution, [['4.11', 'glass in the eye', person('deep-cut-or-eye')]]),
  ...sharing({ person: 'doctor-today', batch: 'ask-specialist', use: 'never' }, 'cdc-symptoms', [
    ['4.9', 'blood, or a high fever', person('illness-signs')],
    ['4.11', 'yellow eyes', person('illness-signs')]
  ]),
  ...sharing({ person: 'poison-help', batch: 'ask-specialist', use: 'never' }, caution, [
    ['4.8', 'a mild upset', person('mild-upset')]
  ]),
  ...sharing({ person: 'ask-doctor', ...discard }, 'fda-pottery', [
    ['4.11', 'drank from a pot', { ...jar('lead-risk-vessel'), ...person('someone-drank') }]
  ]),
  ...sharing({ person: 'ask-doctor', batch: 'normal-growth', use: 'never' }, caution, [
    ['4.12', 'higher risk, drank from a fine jar', person('at-risk-drank')]
  ]),
  ...sharing({ person: 'poison-help', ...mold }, caution, [
    ['4.12', 'higher risk, drank mold', { ...surface('dry-fuzzy'), ...person('at-risk-drank') }]
  ]),
  ...sharing({ person: 'poison-help', ...discard }, caution, [
    ['4.12', 'higher risk, drank it weak', { ...acid(4.5, 8), ...person('at-risk-drank') }]
  ])
]

/** Every row of the kombucha sheet that a walk of the jar tree can show. */
export const ROWS: readonly Row[] = [...MAKING, ...SEEN, ...SMELLED, ...PEOPLE]

import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { textsIn } from '../../src/load/texts.ts'
import { type Glossary, readyGlossary } from '../../src/translation/glossary.ts'
import { lintPair } from '../../src/translation/lint.ts'
import { faultText } from '../../src/translation/pair.ts'
import { authoredFiles } from '../helpers/shipped.ts'
import { KINDS, type Slip, type SlipKind, slipsIn } from './slips/made.ts'

const authored: Glossary = parse(readFileSync('shared/glossary/es.yaml', 'utf8'))
const glossary = readyGlossary(authored)

/** Written down before any of the rules was. */
const byHand: readonly Slip[] = JSON.parse(
  readFileSync('tests/translation/slips/by-hand.json', 'utf8')
)

const wordsOf = (tag: string): ReadonlyMap<string, string> =>
  new Map(
    authoredFiles()
      .filter(({ path }) => path.startsWith(`locales/${tag}/`))
      .flatMap(({ path, text }) =>
        [...textsIn(JSON.parse(text))].map(([key, said]) => [`${path.slice(11)}:${key}`, said])
      )
  )
const spanish = wordsOf('es')
const pairs = [...wordsOf('en')].flatMap(([key, english]) => {
  const target = spanish.get(key)
  // What callers say is of each language by itself.
  const ownWords = key.startsWith('know-how.json:') && key.endsWith('.said')
  return target === undefined || ownWords ? [] : [{ english, target }]
})
/** Every fifth text: each kind of slip in a few hundred of them says what all of them would. */
const made = slipsIn(pairs.filter((_, at) => at % 5 === 0))

const faultsOf = (english: string, target: string): readonly string[] =>
  lintPair({ english, target }, 'es', glossary).map(fault => `${fault.rule}: ${faultText(fault)}`)

/** Whether the slip brings a fault that the text did not have before: an accepted one hides nothing else. */
function isFound({ english, target, damaged }: Slip): boolean {
  const before = new Set(faultsOf(english, target))
  return faultsOf(english, damaged).some(fault => !before.has(fault))
}

/**
 * What has to be found of each kind, in hundredths. A clause between commas that is no list ("seen from
 * above, in a jar, …") may go unseen in a text that is made by machine, and so may "ni" that became "y" in a
 * long list that is forbidden as a whole.
 */
const AT_LEAST: Readonly<Record<SlipKind, number>> = {
  number: 100,
  unit: 100,
  phone: 100,
  placeholder: 100,
  'dropped-item': 100,
  untranslated: 100,
  negation: 90,
  'danger-word': 90,
  'register-term': 60
}

const LEAST_MADE: Readonly<Partial<Record<SlipKind, number>>> = {
  'dropped-item': 97,
  negation: 85
}

describe.each([
  ['written by hand', byHand, {}],
  ['made in the shipped texts', made, LEAST_MADE]
] as const)('slips %s', (_, slips, least) => {
  test('are many, and each changes its text', () => {
    expect(slips.length).toBeGreaterThan(140)
    expect(slips.filter(({ target, damaged }) => target === damaged)).toEqual([])
  })

  test.each(KINDS)('%s', kind => {
    const ofKind = slips.filter(slip => slip.kind === kind)
    const missed = ofKind.filter(slip => !isFound(slip))
    const share = (100 * (ofKind.length - missed.length)) / ofKind.length
    expect(share, told(ofKind, missed)).toBeGreaterThanOrEqual({ ...AT_LEAST, ...least }[kind])
  })
})

const told = (all: readonly Slip[], missed: readonly Slip[]) =>
  `${all.length - missed.length} of ${all.length}; missed: ${missed
    .slice(0, 12)
    .map(({ english, damaged }) => `\n${english}\n${damaged}`)
    .join('\n')}`

describe('the rules are quiet where nothing is wrong', () => {
  test('under two texts of a hundred are accepted by name', () => {
    const texts = new Set(
      (authored as unknown as { accepted: { text: string }[] }).accepted.map(({ text }) => text)
    )
    expect((100 * texts.size) / pairs.length).toBeLessThan(2)
  })
})

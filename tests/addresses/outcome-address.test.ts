import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  generalOutcome,
  outcomeToShare,
  readOutcome,
  writeGeneral,
  writeOutcome
} from '../../src/addresses/outcome-address.ts'
import { readRoute } from '../../src/addresses/route.ts'
import { couldBe } from '../../src/evaluate/could-be.ts'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { freestUse } from '../../src/evaluate/freest-use.ts'
import { outcomeToKeep } from '../../src/evaluate/keep.ts'
import { reportOn } from '../../src/report/report.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { level, useLevel, verdict, verdictsOf } from '../../src/tree/caution.ts'
import { TRACKS } from '../../src/tree/observation.ts'
import { USES } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'
import { person } from '../trees/told.ts'

const shipped = await shippedTrees()
const [tree] = shipped
if (tree === undefined) throw new Error('no tree is shipped')
const TODAY = new Date('2026-11-25T12:00:00Z')

const moldy = usualExcept(tree, { 'surface-texture': 'dry-fuzzy' })
const JARS: Readonly<Record<string, Answers>> = {
  moldy,
  ordinary: usualExcept(tree, {}),
  'moldy and topped up': {
    ...moldy,
    'jar-signs': { ...(moldy['jar-signs'] as object), 'continuous-vessel': 'yes' as const }
  },
  'under pressure': usualExcept(tree, { 'container-signs': { 'burst-or-out-of-reach': 'yes' } })
}

/** Reads an address the way the page does. */
function opened(address: string) {
  const { tree: id, outcome, fingerprint, language } = readRoute(address, ['en', 'es'])
  return {
    id,
    language,
    read: readOutcome(tree as NonNullable<typeof tree>, outcome ?? '', fingerprint)
  }
}

describe.each(Object.entries(JARS))('the address of a jar that is %s', (_, answers) => {
  const kept = outcomeToKeep(tree, answers)

  test.each(['en', 'es'])('brings back its outcome, notes and all, in %s', language => {
    const { id, read, language: spoken } = opened(writeOutcome(tree, kept, language))
    expect(id).toBe(tree.id)
    expect(spoken).toBe(language === 'en' ? null : language)
    expect(read?.standing).toBe('whole')
    expect({ ...read?.outcome, notes: [...(read?.outcome.notes ?? [])].sort() }).toEqual({
      ...kept,
      notes: [...kept.notes].sort()
    })
  })

  test('that can be typed never frees what the jar itself does not', () => {
    const { read } = opened(writeGeneral(tree, kept, 'en'))
    expect(read?.standing).toBe('general')
    expect(read?.outcome.use).not.toBe('as-directed')
    for (const track of TRACKS) expect(read?.outcome[track]).toBe(kept[track])
  })

  test('is the same whatever was told of people', () => {
    const drinker = { 'at-risk-will-drink': 'yes' as const }
    const told = {
      ...answers,
      drinkers: { ...(answers.drinkers as object), ...drinker }
    }
    expect(writeOutcome(tree, outcomeToKeep(tree, told), 'en')).toBe(writeOutcome(tree, kept, 'en'))
  })
})

describe('an outcome is shared', () => {
  const shared = (told: Answers) => {
    const answers = { ...moldy, ...told }
    return outcomeToShare(tree, { answers, report: reportOn(evaluate(tree, answers), null, TODAY) })
  }

  test('when nobody needs help', () => {
    expect(shared({})?.batch).toBe('likely-mold')
  })

  test.each(['illness-signs', 'mild-upset', 'at-risk-drank'])(
    'never beside %s: the jar alone would say to throw out what must be kept',
    sign => {
      expect(shared(usualExcept(tree, { ...moldy, ...person(sign) }))).toBeNull()
    }
  )
})

describe('an outcome that leaves less to be drunk because of somebody', () => {
  test.each([
    ['a drinker at higher risk', { 'at-risk-will-drink': 'yes' }],
    ['people nobody is sure of', { 'at-risk-will-drink': 'unsure' }]
  ])('is not shared for %s: the jar alone would free it', (_, told) => {
    const ordinary = usualExcept(tree, {})
    const answers = {
      ...ordinary,
      drinkers: { ...(ordinary.drinkers as object), ...told }
    } as Answers
    const report = reportOn(evaluate(tree, answers), null, TODAY)
    expect(report.outcome.person).toBeNull()
    expect(report.outcome.use).not.toBe('as-directed')
    expect(outcomeToShare(tree, { answers, report })).toBeNull()
  })
})

describe('an address that was cut, mistyped or tampered with', () => {
  const whole = writeOutcome(tree, outcomeToKeep(tree, JARS['moldy and topped up'] ?? {}), 'en')

  test.each(['no-such-verdict', 'likely-mold+normal-growth', '__proto__', '+', 'likely-mold+'])(
    '%s names no outcome',
    named => {
      expect(opened(`#/${tree.id}/${named}`).read).toBeNull()
    }
  )

  test('says so when it was made with another edition, and shows the general sheet', () => {
    const other = whole.replace(/@[0-9a-f]+/, '@000000')
    expect(opened(other).read).toEqual({
      outcome: generalOutcome(tree, ['likely-mold']),
      standing: 'other-edition'
    })
  })

  test.each(tree.verdicts.map(({ id }) => id))('never frees %s beyond its ceiling', id => {
    for (const use of USES) {
      const address = `#/${tree.id}@${tree.fingerprint.slice(0, 6)}/${id}/${use}`
      const outcome = opened(address).read?.outcome
      if (outcome === undefined) continue
      expect(useLevel(outcome.use)).toBeGreaterThanOrEqual(useLevel(verdict(tree, id).ceiling))
    }
  })

  test('is refused when a note was taken out of it, or put into it', () => {
    const kept = outcomeToKeep(tree, JARS['moldy and topped up'] ?? {})
    expect(kept.notes.length).toBeGreaterThan(0)
    const without = { ...kept, notes: kept.notes.slice(1) }
    expect(opened(writeOutcome(tree, without, 'en')).read).toBeNull()
    const strange = Object.keys(tree.advice.notes).filter(
      note => !couldBe(tree, { ...kept, notes: [...kept.notes, note] })
    )
    expect(strange.length).toBeGreaterThan(50)
    for (const note of strange) {
      const more = { ...kept, notes: [...kept.notes, note] }
      expect(opened(writeOutcome(tree, more, 'en')).read).toBeNull()
    }
    expect(opened(`${writeOutcome(tree, kept, 'en')}.999`).read).toBeNull()
  })

  test('is never read as less than the verdicts it names', () => {
    fc.assert(
      fc.property(fc.nat({ max: whole.length }), fc.string({ maxLength: 6 }), (at, noise) => {
        const { read } = opened(whole.slice(0, at) + noise)
        if (read === null) return
        expect(level(tree, 'batch', read.outcome.batch)).toBe(level(tree, 'batch', 'likely-mold'))
        expect(read.outcome.use).toBe('never')
      })
    )
  })
})

describe('an address is refused', () => {
  /** Every way to name one verdict of the batch, and a use. */
  test.each(shipped.map(one => [one.id, one] as const))(
    'when %s gives no such outcome of one jar, or no such verdicts together',
    (_, one) => {
      const start = `@${one.fingerprint.slice(0, 6)}`
      const counts = { whole: 0, refused: 0 }
      const pairs = [null, ...verdictsOf(one, 'container')].flatMap(container =>
        verdictsOf(one, 'batch').map(batch => (container === null ? [batch] : [container, batch]))
      )
      for (const verdicts of pairs) {
        for (const use of USES) {
          const { outcome, fingerprint } = readRoute(
            `#/${one.id}${start}/${verdicts.join('+')}/${use}`,
            []
          )
          const read = readOutcome(one, outcome ?? '', fingerprint)
          counts[read?.standing === 'whole' ? 'whole' : 'refused'] += 1
          if (read === null) continue
          expect(read.outcome.use).toBe(use)
          expect(useLevel(use)).toBeGreaterThanOrEqual(
            Math.max(...verdicts.map(id => useLevel(freestUse(one, id))))
          )
        }
      }
      expect(counts.refused).toBeGreaterThan(0)
    }
  )
})

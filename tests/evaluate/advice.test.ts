import { describe, expect, test } from 'vitest'
import { adviceFor } from '../../src/evaluate/advice.ts'
import { walk } from '../../src/evaluate/walk.ts'
import type { Answers } from '../../src/tree/answers.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { unfolded } from '../helpers/unfolded.ts'
import { usualExcept } from '../helpers/usual.ts'
import { person as people } from '../trees/told.ts'

const tree = (await shippedTrees()).find(({ id }) => id === 'kombucha-jar') as Tree
const days = (n: number) => ({ low: n, reading: n, high: n })
const advice = (told: Answers) => {
  const answers = usualExcept(tree, told)
  return unfolded(adviceFor(tree, walk(tree, answers).outcome, { ...answers, ...told }))
}
const jar = (sign: string): Answers => ({ 'jar-signs': { [sign]: 'yes' } })
const mold: Answers = { 'surface-texture': 'dry-fuzzy' }

describe('a pot that may hold lead is never cleaned for use again', () => {
  const { doNow, clean } = advice(jar('lead-risk-vessel'))

  test('the pot goes out with what is in it', () => {
    expect(doNow).toEqual(
      expect.arrayContaining([
        'never-use-this-pot-again',
        'throw-out-jar-and-all',
        'lead-test-for-all'
      ])
    )
  })

  test('no step sanitizes it, even beside mold', () => {
    expect(clean).toEqual([])
    expect(advice({ ...jar('lead-risk-vessel'), ...mold }).clean).toEqual([])
  })
})

describe('while a person verdict stands nothing is thrown out', () => {
  const ill = advice({ ...people('illness-signs'), ...mold })

  test('the person comes first, then what is left is kept cold and labeled', () => {
    expect(ill.verdict).toBe('doctor-today')
    expect(ill.also).toEqual(['likely-mold'])
    expect(ill.doNow.indexOf('doctor-today-call')).toBe(0)
    expect(ill.doNow).toContain('keep-it-cold-and-labeled')
    expect(ill.doNow).toContain('ask-health-department')
  })

  test('no step throws out, pours out or washes', () => {
    const steps = [...ill.doNow, ...ill.clean, ...ill.keep]
    expect(
      steps.filter(step => /throw-out|bag-it|wash|sanitize|keep-nothing|bottles-from/.test(step))
    ).toEqual([])
  })
})

describe('a jar that may burst is left where it is', () => {
  const burst = advice({ 'container-signs': { 'burst-or-out-of-reach': 'yes' }, ...mold })

  test('nobody is sent back to it for the batch', () => {
    expect(burst.doNow.slice(0, 2)).toEqual(['leave-it-be', 'everyone-out'])
    expect(
      [...burst.doNow, ...burst.clean, ...burst.keep].filter(step =>
        /throw-out|bag-it|wash/.test(step)
      )
    ).toEqual([])
  })

  test('no recheck and no note sends anyone to look inside', () => {
    const flies = advice({
      'container-signs': { 'burst-or-out-of-reach': 'yes' },
      ...jar('flies-outside')
    })
    expect(flies.recheck).toBeNull()
    expect(flies.notes).toEqual([])
  })

  test('what was seen inside is still said', () => {
    expect(burst.also).toEqual(['likely-mold'])
  })
})

describe('an emergency says the emergency and nothing else', () => {
  test('only its own steps and numbers', () => {
    const { verdict, also, doNow, clean, refer } = advice({ ...people('severe-symptoms'), ...mold })
    expect({ verdict, also, clean, refer }).toEqual({
      verdict: 'emergency',
      also: [],
      clean: [],
      refer: ['emergency', 'poison-help']
    })
    expect(doNow[0]).toBe('call-911')
    expect(doNow.some(step => /throw|keep/.test(step))).toBe(false)
  })
})

describe('the steps follow the use that the outcome leaves', () => {
  test('a jar that passes may be chilled and drunk a little', () => {
    expect(advice({}).doNow).toContain('drink-a-little')
  })

  test('nothing else ever says to drink', () => {
    for (const told of [
      { day: days(3) },
      people('at-risk-will-drink'),
      { 'jar-ph': 'unsure' },
      mold,
      jar('flies-outside')
    ]) {
      expect(advice(told).doNow).not.toContain('drink-a-little')
    }
  })

  test('in a continuous vessel with mold the spigot comes apart before the washing', () => {
    const { clean } = advice({ ...jar('continuous-vessel'), ...mold })
    expect(clean.indexOf('take-the-spigot-apart')).toBe(0)
    expect(clean).toContain('sanitize-with-bleach')
  })

  test('in a continuous vessel that looks fine nothing is taken apart', () => {
    expect(advice(jar('continuous-vessel')).clean).toEqual([])
  })
})

describe('of several rechecks the soonest counts', () => {
  test('a day of the ferment counts from the day it is', () => {
    expect(advice({ day: days(2) }).recheck).toEqual({ day: 7 })
    expect(advice({ day: days(6), ...jar('flies-outside') }).recheck).toEqual({ day: 7 })
    expect(advice({ day: days(2), ...jar('flies-outside') }).recheck).toEqual({ hours: [48, 48] })
  })

  test('what is thrown away is not looked at again', () => {
    expect(advice(mold).recheck).toBeNull()
  })
})

describe('notes on what to change come after the outcome', () => {
  test('and change nothing of it', () => {
    const cold: Answers = {
      'room-temperature': { low: 60, reading: 62, high: 64 },
      'jar-cover': 'loose-weave'
    }
    const told = advice({ ...mold, ...cold })
    expect(told.change).toEqual(['too-cold', 'cover-with-tight-cloth'])
    expect(walk(tree, { ...usualExcept(tree, mold), ...cold }).outcome).toEqual(
      walk(tree, usualExcept(tree, mold)).outcome
    )
  })
})

describe('what a person needs is said first', () => {
  test('the card for a cut keeps everyone away from the other bottles', () => {
    const { doNow } = advice(people('deep-cut-or-eye'))
    expect(doNow).toEqual(expect.arrayContaining(['press-on-the-cut', 'keep-everyone-away']))
    expect(doNow).not.toContain('say-what-was-drunk')
  })

  test('an unsure sign about a person asks after them before the jar', () => {
    const { doNow, refer } = advice({
      'people-signs': { 'severe-symptoms': 'unsure' },
      ...jar('flies-outside')
    })
    expect(doNow[0]).toBe('ask-how-everyone-feels')
    expect(refer[0]).toBe('poison-help')
  })

  test('somebody ill beside a jar that may burst: the health department is told, the jar is left', () => {
    const { doNow, refer } = advice({
      ...people('mild-upset'),
      'container-signs': { 'burst-or-out-of-reach': 'yes' }
    })
    expect(doNow).toContain('tell-health-department')
    expect(doNow).not.toContain('keep-it-cold-and-labeled')
    expect(refer).toContain('health-department')
  })

  test('a step that sends to the health department names whom to call', () => {
    for (const told of ['mild-upset', 'illness-signs', 'headache-or-flushing']) {
      const { doNow, refer } = advice(people(told))
      expect(doNow).toContain('ask-health-department')
      expect(refer).toContain('health-department')
    }
  })

  // Own caution: only illness gives the health department a reason to look at the food.
  test('whoever is well and calls Poison Help about a moldy jar throws it out', () => {
    const { doNow, manner, refer } = advice({ ...people('at-risk-drank'), ...mold })
    expect(manner).toBe('plain')
    expect(doNow).toContain('throw-out-all')
    expect(doNow).not.toContain('ask-health-department')
    expect(refer).not.toContain('health-department')
  })

  test('a doctor this week beside a jar that looks fine does not impound the jar', () => {
    const { doNow, manner } = advice(people('at-risk-drank'))
    expect(manner).toBe('plain')
    expect(doNow).not.toContain('keep-it-cold-and-labeled')
    expect(doNow).toContain('call-if-it-goes-wrong')
  })

  test('a pot that may hold lead, and somebody drank: the doctor, though nobody is sure', () => {
    const answers = usualExcept(tree, {
      drinkers: { 'someone-drank': 'yes' },
      'jar-signs': { 'lead-risk-vessel': 'unsure' }
    })
    expect(walk(tree, answers).outcome.person).toBe('ask-doctor')
  })
})

describe('a batch that is thrown out is not tested, waited for or skimmed', () => {
  const discards: readonly Answers[] = [
    { 'jar-ph': { low: 4.13, reading: 4.18, high: 4.23 }, 'looked-before': 'second-look' },
    { 'surface-texture': 'flat-wrinkled-film', 'looked-before': 'second-look' },
    { ...mold, 'jar-ph': 'unsure' },
    { ...jar('insects-inside'), 'surface-texture': 'dry-leathery' }
  ]

  test.each(discards)('%j', told => {
    const { doNow, notes, recheck } = advice(told)
    expect(
      [...doNow, ...notes].filter(id => /measure|test-|wait-for|wet-the|look-again/.test(id))
    ).toEqual([])
    expect(recheck).toBeNull()
  })
})

describe('a wait comes to an end', () => {
  const second = (told: Answers) =>
    walk(tree, usualExcept(tree, { ...told, 'looked-before': 'second-look' })).outcome

  test('a top still dry at the second look is discarded', () => {
    expect(second({ 'surface-texture': 'dry-leathery' }).batch).toBe('discard-and-sanitize')
  })

  test('a smell of alcohol that stays is treated as alcohol', () => {
    expect(second({ 'smell-and-liquid': { boozy: 'yes' } }).use).toBe('never')
  })

  test('a dried culture is looked at after a week, not after a day', () => {
    expect(advice({ ...jar('dried-culture'), 'surface-texture': 'nothing-yet' }).recheck).toEqual({
      hours: [168, 168]
    })
  })
})

describe('a jar that may hold bleach is not bagged, chilled or moved', () => {
  test('whoever drank from it hears of the gas right after Poison Help', () => {
    const { doNow } = advice({ ...people('someone-drank'), ...jar('cleaner-got-in') })
    expect(doNow).not.toContain('keep-it-cold-and-labeled')
    expect(doNow).not.toContain('bag-it')
    const heard = doNow.indexOf('if-bleach-got-in')
    expect(heard).toBeGreaterThan(doNow.indexOf('call-poison-help'))
    expect(heard).toBeLessThan(doNow.indexOf('throw-out-all'))
  })
})

describe('nobody is sent to a jar that may burst, for whatever reason', () => {
  test('a pot that may hold lead stays where it is', () => {
    const { doNow } = advice({
      ...people('someone-drank'),
      ...jar('lead-risk-vessel'),
      'container-signs': { 'burst-or-out-of-reach': 'yes' }
    })
    expect(doNow).not.toContain('keep-the-pot-apart')
    expect(doNow).toContain('never-use-this-pot-again')
  })
})

describe('a borderline reading is judged by the limit of its day', () => {
  const reading = { low: 4.55, reading: 4.6, high: 4.65 }

  test('in the first days by 4.6, and on the first day acid is added', () => {
    expect(advice({ 'jar-ph': reading, day: days(3) }).doNow).toContain(
      'measure-early-with-a-meter'
    )
    expect(advice({ 'jar-ph': reading, day: days(0) }).doNow).toContain(
      'add-starter-or-vinegar-today'
    )
  })

  test('from day seven on by 4.2', () => {
    const late = advice({ 'jar-ph': { low: 4.1, reading: 4.18, high: 4.26 }, day: days(8) })
    expect(late.doNow).toContain('measure-today-with-a-meter')
    expect(late.doNow).not.toContain('measure-early-with-a-meter')
  })
})

describe('whoever drank from a doubtful jar is told what to watch for', () => {
  test('also while the jar itself only waits', () => {
    const unclear = advice({ ...people('someone-drank'), 'surface-texture': 'unsure' })
    expect(unclear.verdict).toBe('wait-and-recheck')
    expect(unclear.doNow[0]).toBe('well-after-a-bad-batch')
    expect(advice(people('at-risk-drank')).doNow).toContain('watch-ten-days-or-weeks')
  })

  test('where nobody is sure how they are, that is asked before anything else', () => {
    const { doNow } = advice({
      'people-signs': { 'severe-symptoms': 'unsure' },
      drinkers: { 'at-risk-drank': 'yes' }
    })
    expect(doNow[0]).toBe('ask-how-everyone-feels')
  })
})

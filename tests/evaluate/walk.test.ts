import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import { effectiveChoice } from '../../src/tree/effective.ts'
import { noneOf, tell, unsureOf } from '../../src/tree/tell.ts'
import { sketch } from '../helpers/sketch.ts'

const at = (x: number, width = 0) => ({ low: x - width, reading: x, high: x + width })

describe('a raise speaks and the walk goes on', () => {
  const tree = sketch({
    lid: { '?!bulging': '+pressure-hazard', else: '→ color' },
    color: {
      pink: '+discard-and-sanitize = normal-growth',
      plain: '= normal-growth',
      unsure: '= wait-and-recheck'
    }
  })

  test('each track keeps its most cautious verdict beside the others', () => {
    const { outcome } = walk(tree, { lid: { bulging: 'yes' }, color: 'pink' })
    expect(outcome).toMatchObject({
      container: 'pressure-hazard',
      batch: 'discard-and-sanitize',
      use: 'never'
    })
  })

  test('the ceiling of one track lowers the use of a batch that looks fine', () => {
    expect(walk(tree, { lid: { bulging: 'yes' }, color: 'plain' }).outcome.use).toBe('never')
  })
})

describe('a settling observation counts as a second answer', () => {
  const tree = sketch(
    {
      texture: { '!fuzzy': '= likely-mold', wet: '= normal-growth', unsure: '→ light' },
      light: { unsure: '= wait-and-recheck' }
    },
    { settles: { light: { of: 'texture', as: { hairs: 'fuzzy', flat: 'wet' } } } }
  )
  const batch = (texture: string, light?: string) =>
    walk(tree, { texture, ...(light && { light }) }).outcome.batch

  test('it settles what was unsure', () => {
    expect(batch('unsure', 'hairs')).toBe('likely-mold')
    expect(batch('unsure', 'flat')).toBe('normal-growth')
  })

  test('the more worrying of the two counts, whichever it is', () => {
    expect(batch('wet', 'hairs')).toBe('likely-mold')
    expect(batch('fuzzy', 'flat')).toBe('likely-mold')
  })

  test('unsure counts only when both are', () => {
    expect(batch('unsure', 'unsure')).toBe('wait-and-recheck')
    expect(batch('wet', 'unsure')).toBe('normal-growth')
  })

  test('by itself it answers nothing: the settled observation is still asked', () => {
    expect(walk(tree, { light: 'hairs' }).asks?.observation).toBe('texture')
  })

  test('the trail says which of the two gave the answer', () => {
    expect(walk(tree, { texture: 'unsure', light: 'hairs' }).trail).toMatchObject([
      { question: 'texture', settledBy: { observation: 'light', answer: 'hairs' } }
    ])
    expect(
      effectiveChoice(tree, tree.observations.texture as never, { texture: 'wet', light: 'hairs' })
        ?.answer
    ).toBe('fuzzy')
  })
})

describe('a screen of signs is answered sign by sign', () => {
  const tree = sketch(
    {
      insects: {
        '?!inside': '+discard-and-sanitize',
        '?!inside unsure': '+wait-and-recheck',
        '?salty': '+discard-and-sanitize',
        else: '= normal-growth'
      }
    },
    { volunteered: ['salty'] }
  )
  const insects = tree.observations.insects as never

  test('a volunteered sign is never asked, and is heard when told', () => {
    expect(walk(tree, { insects: { inside: 'no' } }).outcome.batch).toBe('normal-growth')
    expect(walk(tree, { insects: { inside: 'no', salty: 'yes' } }).outcome.batch).toBe(
      'discard-and-sanitize'
    )
  })

  test('not sure about the screen does not erase a sign already seen', () => {
    const told = unsureOf({ insects: { inside: 'yes' } }, insects)
    expect(walk(tree, told).outcome.batch).toBe('discard-and-sanitize')
  })

  test('none of these leaves a sign already told as it is', () => {
    expect(noneOf({ insects: { inside: 'unsure' } }, insects).insects).toEqual({ inside: 'unsure' })
  })

  test('of yes, unsure and no told of one sign the more worrying counts', () => {
    const told = tell(tell({}, insects, { inside: 'no' }), insects, { inside: 'unsure' })
    expect(told.insects).toEqual({ inside: 'unsure' })
  })
})

describe('a measure that is only heard', () => {
  const tree = sketch(
    {
      ph: {
        '<= 4.6': '~not-yet = normal-growth',
        '> 4.6': '= discard-and-sanitize',
        between: '= wait-and-recheck',
        unsure: '~not-yet = normal-growth'
      }
    },
    { volunteered: ['ph'] }
  )

  test('is never asked, and counts as unsure', () => {
    expect(walk(tree, {})).toMatchObject({ finished: true, asks: null })
    expect(walk(tree, {}).outcome).toEqual(walk(tree, { ph: 'unsure' }).outcome)
  })

  test('counts when it is told', () => {
    expect(walk(tree, { ph: at(4.7) }).outcome.batch).toBe('discard-and-sanitize')
    expect(walk(tree, { ph: at(4.6, 0.05) }).outcome.batch).toBe('wait-and-recheck')
  })
})

describe('a measure takes the range that holds all of it', () => {
  const tree = sketch({
    ph: {
      '<= 4.2': '= normal-growth',
      '> 4.2': '= discard-and-sanitize',
      between: '= wait-and-recheck',
      unsure: '~not-yet = normal-growth',
      'taste < 2.5': '+quality-only ~never'
    }
  })
  const outcome = (x: number, width = 0) => walk(tree, { ph: at(x, width) }).outcome

  test('an interval across the limit is borderline', () => {
    expect(outcome(4, 0.1).batch).toBe('normal-growth')
    expect(outcome(4.2, 0.05).batch).toBe('wait-and-recheck')
    expect(outcome(4.5, 0.1).batch).toBe('discard-and-sanitize')
  })

  test('exactly at the limit is within it', () => {
    expect(outcome(4.2).batch).toBe('normal-growth')
  })

  test('a limit of taste compares the reading alone', () => {
    expect(outcome(2.6, 0.5)).toMatchObject({ batch: 'normal-growth', use: 'as-directed' })
    expect(outcome(2.4, 0.5)).toMatchObject({ batch: 'quality-only', use: 'never' })
  })
})

describe('words that come from outside are only ever ids', () => {
  test.each(['__proto__', 'constructor', 'toString', 'no-such-answer'])(
    'the answer %s answers nothing',
    id => {
      const tree = sketch({
        color: { pink: '= discard-and-sanitize', unsure: '= wait-and-recheck' }
      })
      expect(walk(tree, { color: id }).finished).toBe(false)
      expect(walk(tree, JSON.parse(`{"${id}": "pink"}`)).asks?.question).toBe('color')
    }
  )
})

describe('an emergency that another answer makes one counts where the walk comes to it', () => {
  const tree = sketch(
    {
      people: { '?!upset': '+poison-help', '?upset unsure': '~not-yet', else: '→ lid' },
      lid: { '?!spurted': '+possible-toxin', 'turn spurted': '→ ate', else: '= normal-growth' },
      ate: { asks: 'people', '?!upset': '+emergency', else: '= possible-toxin' }
    },
    { about: { people: 'person' }, onlyHere: ['ate'] }
  )

  test('it does not end a walk on which the food is sound', () => {
    const { outcome } = walk(tree, { people: { upset: 'yes' }, lid: { spurted: 'no' } })
    expect(outcome).toMatchObject({ person: 'poison-help', batch: 'normal-growth' })
  })

  test('with the food told in either order it is an emergency, and the food keeps its verdict', () => {
    const { outcome } = walk(tree, { lid: { spurted: 'yes' }, people: { upset: 'yes' } })
    expect(outcome).toMatchObject({ person: 'emergency', batch: 'possible-toxin', use: 'never' })
  })

  test('a doubt of the food alone is none', () => {
    const { outcome } = walk(tree, { lid: { spurted: 'yes' }, people: { upset: 'no' } })
    expect(outcome).toMatchObject({ person: null, batch: 'possible-toxin' })
  })
})

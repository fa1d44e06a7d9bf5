import { describe, expect, test } from 'vitest'
import { runCommand, UNTROUBLED, walkJson } from './run-command.ts'

describe('an untroubled jar comes to one object that says all of it', () => {
  test('it has the outcome, the words and the standing of the tree', async () => {
    const said = await walkJson(...UNTROUBLED)

    expect(said).toMatchObject({
      tree: 'kombucha-jar',
      draft: true,
      finished: true,
      verdict: 'normal-growth',
      also: [],
      use: 'as-directed',
      atLeast: { person: null, container: null, batch: 'normal-growth', use: 'as-directed' },
      asks: null,
      possible: { batch: ['normal-growth'], use: ['as-directed'] },
      review: { state: 'draft', overdue: false }
    })
    expect(said.fingerprint).toMatch(/^[0-9a-f]{64}$/)
    expect(said.doNow.length).toBeGreaterThan(0)
    expect(said.cautions.length).toBeGreaterThanOrEqual(5)
    expect(said.sources[0]).toHaveProperty('title')
    expect(said).not.toHaveProperty('stopped')
  })

  test('the trail names each question, its answer and its sources', async () => {
    const { trail } = await walkJson(...UNTROUBLED)

    expect(trail[0]).toEqual({
      question: 'people-signs',
      observation: 'people-signs',
      answer: expect.objectContaining({ 'severe-symptoms': 'no' }),
      because: expect.arrayContaining(['hrsa-poison-help']),
      raised: []
    })
    expect(trail.every(({ because }: { because: string[] }) => because.length > 0)).toBe(true)
  })

  test('nothing it says promises that a batch is harmless', async () => {
    const said = await walkJson(...UNTROUBLED)
    const sentences = [said.message, ...said.doNow, ...said.cautions].join(' ')
    expect(sentences).not.toMatch(/\bsafe(ly)?\b/i)
  })
})

describe('facts may come in any order', () => {
  test('the same facts backwards give the same object', async () => {
    const pairs = UNTROUBLED.flatMap((word, at) =>
      at % 2 === 0 ? [[word, UNTROUBLED[at + 1]]] : []
    )
    const backwards = pairs.reverse().flat() as string[]
    expect(await walkJson(...backwards)).toEqual(await walkJson(...UNTROUBLED))
  })

  test('of two readings each track and the use are as cautious as either alone', async () => {
    const at = UNTROUBLED.findIndex(word => word.startsWith('jar-ph='))
    const without = UNTROUBLED.filter((_, index) => index !== at && index !== at - 1)
    const sour = '--given jar-ph=2.4@meter'.split(' ')
    const passing = '--given jar-ph=3.2@meter'.split(' ')

    expect(await walkJson(...without, ...passing)).toMatchObject({ use: 'as-directed' })
    expect(await walkJson(...without, ...sour)).toMatchObject({ use: 'never' })
    expect(await walkJson(...without, ...passing, ...sour)).toMatchObject({ use: 'never' })
    expect(await walkJson(...without, ...sour, ...passing)).toMatchObject({ use: 'never' })
  })

  test('of two answers to a choice the more worrying counts', async () => {
    const said = await walkJson(...UNTROUBLED, '--given', 'surface-texture=dry-fuzzy')
    expect(said).toMatchObject({ verdict: 'likely-mold', use: 'never' })
  })

  test('a sign seen is not taken back by --none, nor by a no', async () => {
    const seen = ['--given', 'jar-signs=insects-inside', '--given', 'jar-signs=insects-inside:no']
    const said = await walkJson(...UNTROUBLED, ...seen)
    expect(said).toMatchObject({ verdict: 'discard-and-sanitize', use: 'never' })
  })
})

describe('an unfinished walk reassures nobody', () => {
  test('nothing told asks about people first and gives no verdict', async () => {
    expect(await walkJson()).toMatchObject({
      finished: false,
      verdict: null,
      use: null,
      message: null,
      asks: 'people-signs',
      doNow: []
    })
  })

  test('a danger sign already shows in what is possible', async () => {
    const { atLeast } = await walkJson('--given', 'jar-signs=insects-inside')
    expect(atLeast).toMatchObject({ batch: 'discard-and-sanitize', use: 'never' })
  })

  test('--strict tells it by the exit code, and only then', async () => {
    const strict = await runCommand(['walk', 'kombucha-jar', '--json', '--strict'])
    const plain = await runCommand(['walk', 'kombucha-jar', '--json'])
    expect([strict.code, plain.code]).toEqual([1, 0])
    const done = await runCommand(['walk', 'kombucha-jar', '--json', '--strict', ...UNTROUBLED])
    expect(done.code).toBe(0)
  })
})

describe('an emergency stands alone', () => {
  test('it ends the walk with its numbers and leaves the jar unspoken', async () => {
    const said = await walkJson('--given', 'people-signs=severe-symptoms')

    expect(said).toMatchObject({
      finished: true,
      verdict: 'emergency',
      also: [],
      stopped: 'emergency'
    })
    expect(said.referral[0]).toMatchObject({ to: 'emergency', phone: '911' })
    expect(said.referral[1]).toMatchObject({ to: 'poison-help', phone: '1-800-222-1222' })
  })
})

describe('not sure is heard sign by sign', () => {
  const jarIn = (trail: { observation: string; answer: unknown }[]) => {
    const step = trail.find(({ observation }) => observation === 'jar-signs')
    if (step === undefined) throw new Error('the jar was not asked about')
    return step
  }

  test('--unsure leaves a sign that was seen', async () => {
    const { trail } = await walkJson(
      ...['--none', 'people-signs', '--none', 'container-signs'],
      ...['--given', 'jar-signs=insects-inside', '--unsure', 'jar-signs']
    )
    expect(jarIn(trail).answer).toMatchObject({ 'insects-inside': 'yes', 'mold-removed': 'unsure' })
  })

  test('one sign can be unsure while --none rules out the rest', async () => {
    const { trail } = await walkJson(
      ...['--none', 'people-signs', '--none', 'container-signs'],
      ...['--given', 'jar-signs=tiny-eels:unsure', '--none', 'jar-signs']
    )
    expect(jarIn(trail).answer).toMatchObject({ 'tiny-eels': 'unsure', 'mold-removed': 'no' })
  })

  test('an unsure reading withholds drinking', async () => {
    const facts = UNTROUBLED.map(word => (word.startsWith('jar-ph=') ? 'jar-ph=unsure' : word))
    const said = await walkJson(...facts, '--given', 'starter-kind=mature-liquid')
    expect(said).toMatchObject({ finished: true, use: 'not-yet' })
  })

  test('a reading without an instrument counts as the widest', async () => {
    const facts = UNTROUBLED.map(word => (word.startsWith('jar-ph=') ? 'jar-ph=3.9' : word))
    const { trail } = await walkJson(...facts)
    const step = trail.find(({ observation }: { observation: string }) => observation === 'jar-ph')
    expect(step.answer).toEqual({ low: 3.4, reading: 3.9, high: 4.4 })
  })
})

import { describe, expect, test } from 'vitest'
import { isInterval } from '../../src/tree/answers.ts'
import { measured } from '../../src/tree/reading.ts'
import { offered, shippedReader, sureOf } from './shipped-reader.ts'

const { tree, reader } = shippedReader()
const facts = (line: string) =>
  offered(reader, line).map(({ observation, answer }) => ({ observation, answer }))
const readings = (line: string) => facts(line).filter(({ answer }) => isInterval(answer))

function reading(observation: string, value: number) {
  const measure = tree.observations[observation]
  if (measure?.kind !== 'measure') throw new Error(`${observation} is no measure`)
  return { observation, answer: measured(measure, value) }
}

describe('only words of the side or the light tell that look', () => {
  test.each([
    'flat and wet',
    'wet and flat',
    'shiny',
    'flat folds',
    'flat ridges',
    'brilla',
    'standing up',
    'hairs or powder'
  ])('%j is never taken as the look from the side', line => {
    expect(sureOf(reader, line).map(({ observation }) => observation)).not.toContain('side-light')
  })

  test.each(['flat and wet', 'shiny', 'flat folds'])('%j offers the surface first', line => {
    expect(facts(line)[0]?.observation).toBe('surface-texture')
    expect(sureOf(reader, line)).toEqual([])
  })

  test.each([
    ['shiny from the side', 'wet-and-flat'],
    ['it is shiny in the light', 'wet-and-flat'],
    ['flat folds from the side', 'flat-ridges'],
    ['se ven pelos de lado', 'hairs-or-powder']
  ])('%j is what the light showed', (line, answer) => {
    expect(sureOf(reader, line)).toEqual([{ observation: 'side-light', answer }])
  })
})

describe('an age, a fever or a count is no reading of the jar', () => {
  test.each([
    'my mom is 71',
    'my mom, 71',
    "I'm 67",
    'she is 70 years old',
    'fever 103',
    'fever of 103 F',
    'throwing up for 3 days',
    'since 3 am',
    '3 kids',
    '2 strips',
    'mi mamá tiene 71 años',
    'tengo 67'
  ])('%j', line => expect(readings(line)).toEqual([]))

  test('a school child offers the sign of the young, and a small one the graver sign first', () => {
    const signs = (line: string) =>
      facts(line).map(({ answer }) => Object.keys(answer as object)[0])
    expect(signs('my son is six')).toEqual(['young-drank', 'at-risk-will-drink'])
    expect(signs('my son is four')).toEqual(['at-risk-drank', 'young-drank', 'at-risk-will-drink'])
    expect(sureOf(reader, 'my son is six')).toEqual([])
  })

  test.each(['my mom is 71', "I'm 67", 'she is 70 years old', 'tengo 67'])(
    '%j offers both signs of a higher risk, and takes none',
    line => {
      expect(facts(line)).toEqual([
        { observation: 'drinkers', answer: { 'at-risk-drank': 'yes' } },
        { observation: 'drinkers', answer: { 'at-risk-will-drink': 'yes' } }
      ])
      expect(sureOf(reader, line)).toEqual([])
    }
  )

  test('between the two bounds an age offers nothing', () => {
    expect(facts('my mom is 40')).toEqual([])
    expect(facts('she is 64')).toEqual([])
  })
})

describe('small words around a fact leave it clear', () => {
  test.each([
    ['I started nine days ago', 9],
    ['nine days', 9],
    ['about nine days now', 9],
    ['lleva doce días', 12],
    ['empecé hace nueve días', 9],
    ['twenty-one days', 21],
    ['thirty one days', 31],
    ['veintiún días', 21],
    ['treinta y un días', 31]
  ])('%j', (line, days) => expect(sureOf(reader, line)).toEqual([reading('day', days)]))

  test.each(['strip 3.4', 'the strip says 3.4', 'la tira marca 3.4'])('%j', line => {
    expect(sureOf(reader, line)).toEqual([reading('jar-ph', 3.4)])
  })

  test.each([
    ['wet lumpy cream skin', 'surface-texture', 'wet-bumps-or-blisters'],
    ['my lid is tight', 'container-signs', { 'tight-lid': 'yes' }],
    ['there’s a cloth and rubber band on it', 'jar-cover', 'tight-cloth'],
    ['huele a podrido', 'smell-and-liquid', { putrid: 'yes' }],
    ['tiene pelitos encima', 'surface-texture', 'dry-fuzzy']
  ])('%j', (line, observation, answer) => {
    expect(sureOf(reader, line)).toEqual([{ observation, answer }])
  })

  test.each([
    ['day 9 or 10', reading('day', 9), reading('day', 10)],
    ['no tengo tiritas', { observation: 'jar-ph', answer: 'unsure' }],
    ['no it was 3.5', reading('jar-ph', 3.5)]
  ])('%j is offered', (line, ...expected) => {
    expect(facts(line)).toEqual(expect.arrayContaining(expected))
    expect(sureOf(reader, line)).toEqual([])
  })

  test.each([
    'if ph 3.4',
    'last time the strip said 3.4',
    'my neighbor started it nine days ago',
    'it started two days ago',
    'she is 9 days old',
    'my neighbor’s jar is hissing',
    'my mom’s jar is moldy',
    'el frasco de mi vecina tiene moho',
    'si tiene moho',
    'used to be moldy',
    'strip 2',
    'maybe the lid'
  ])('%j is never taken', line => {
    expect(facts(line).length).toBeGreaterThan(0)
    expect(sureOf(reader, line)).toEqual([])
  })

  test('what a sense tells before an “and” it tells after it', () => {
    expect(sureOf(reader, 'smells like vinegar and bread')).toEqual([])
  })
})

describe('a correction replaces what it corrects', () => {
  test('a number takes the place of the one before it', () => {
    expect(reader.read('no it was 3.5')[0]?.problem).toBeUndefined()
    expect(facts('no it was 3.5')[0]).toEqual(reading('jar-ph', 3.5))
    expect(sureOf(reader, 'ph 3.1, no wait, 3.4')).toEqual([reading('jar-ph', 3.4)])
    expect(readings('ph 3.1, no wait, 3.4')).toEqual([reading('jar-ph', 3.4)])
  })

  test.each([
    ['hairy, no wait, jelly', 'surface-texture', 'wet-film'],
    ['it’s fuzzy, sorry, I mean wrinkled', 'surface-texture', 'flat-wrinkled-film'],
    ['peluda, no, perdón, arrugada', 'surface-texture', 'flat-wrinkled-film']
  ])('%j', (line, observation, answer) => {
    expect(sureOf(reader, line)).toEqual([{ observation, answer }])
    expect(reader.read(line)[0]?.problem).toBe('taken-back')
    expect(reader.read(line)[1]?.corrects).toBe(true)
  })

  test.each([
    'no wait it was white sugar',
    'no, nobody had any',
    'no it smells like vinegar',
    'actually it’s fuzzy',
    'no, perdón, era arrugada'
  ])('%j corrects what was told before', line => {
    expect(reader.read(line).at(-1)?.corrects).toBe(true)
  })

  test.each(['no fuzz', 'no film yet', 'no era moho', 'not hairy', 'day 9'])(
    '%j only says what it says',
    line => expect(reader.read(line)[0]?.corrects).toBeUndefined()
  )

  test('who had none is told, and told again', () => {
    const none = { observation: 'drinkers', answer: { 'someone-drank': 'no' } }
    for (const line of ['nobody drank it', 'no, nobody had any', 'we haven’t tasted it']) {
      expect(sureOf(reader, line), line).toEqual([none])
    }
  })
})

describe('whoever asks tells nothing', () => {
  test.each([
    'can I scoop the mold off',
    'should I throw out the fuzzy part',
    'how long can moldy kombucha sit',
    'what if I have a fever',
    'do I need to worry about maggots',
    'is it safe if my kid drinks it',
    'I was wondering if the mold is dangerous',
    'could she give it to a baby',
    '¿puedo quitarle el moho?',
    'se puede tomar con moho',
    'cuánto dura con pelusa',
    'debo tirarla si tiene gusanos'
  ])('%j', line => {
    expect(reader.read(line).at(-1)?.problem).toBe('asked')
    expect(offered(reader, line)).toEqual([])
  })

  test('a question that follows without a mark is parted from what is told', () => {
    const [told, asked] = reader.read('it has white fuzz can I scoop it off')
    expect(told?.candidates[0]).toMatchObject({ answer: 'dry-fuzzy', sure: true })
    expect(asked?.problem).toBe('asked')
  })

  test.each(['she can’t breathe', 'no puede respirar', 'I can see fuzz'])(
    '%j is no question',
    line => expect(reader.read(line)[0]?.problem).toBeUndefined()
  )
})

import { describe, expect, test } from 'vitest'
import type { Fact } from '../../src/reader/fact.ts'
import { isDangerFact } from '../../src/reader/worry.ts'
import { offered, shippedReader, sureOf } from './shipped-reader.ts'

const { tree, said, reader } = shippedReader()
const person = (sign: string, value = 'yes') => ({
  observation: /-(?:drank|drink)$/.test(sign) ? 'drinkers' : 'people-signs',
  answer: { [sign]: value }
})
const facts = (line: string) =>
  offered(reader, line).map(({ observation, answer }) => ({ observation, answer }))

describe('a body that fails is heard as the sign that it is', () => {
  test.each([
    ["can't keep water down", 'illness-signs'],
    ['can’t keep anything down', 'illness-signs'],
    ['cant keep anything down', 'illness-signs'],
    ["can't see right", 'severe-symptoms'],
    ['not breathing right', 'severe-symptoms'],
    ["isn't breathing well", 'severe-symptoms'],
    ['isnt breathing well', 'severe-symptoms'],
    ['cannot breathe', 'severe-symptoms'],
    ['no puede respirar', 'severe-symptoms'],
    ['no puede tragar', 'severe-symptoms'],
    ['no ve bien', 'severe-symptoms'],
    ['no retiene nada', 'illness-signs']
  ])('%j', (line, sign) => {
    expect(sureOf(reader, line)).toEqual([person(sign)])
    expect(reader.read(line)[0]?.problem).toBeUndefined()
  })

  test.each([
    ["she can't really swallow", 'severe-symptoms'],
    ["isn't able to speak", 'severe-symptoms'],
    ['he does not keep any food down', 'illness-signs'],
    ['no she can’t breathe', 'severe-symptoms'],
    ['ya no puede casi tragar', 'severe-symptoms']
  ])('%j offers the sign before all else', (line, sign) => {
    expect(facts(line)[0]).toEqual(person(sign))
    expect(reader.read(line)[0]?.problem).toBeUndefined()
  })

  test('who sees no fuzz has no trouble seeing', () => {
    for (const line of ['I don’t see any fuzz', 'no se ve moho']) {
      expect(facts(line), line).not.toContainEqual(person('severe-symptoms'))
    }
  })

  test('a danger sign of a person is never offered as absent', () => {
    const phrases = said.filter(
      ({ observation, force }) => observation === 'people-signs' && force !== 'rules-out'
    )
    expect(phrases.length).toBeGreaterThan(100)
    const denials = ['no ', 'not ', 'never ', 'isn’t ', 'no tiene ', 'sin ']
    const denied = phrases.flatMap(({ phrase }) =>
      denials.flatMap(denial =>
        facts(denial + phrase).flatMap(({ observation, answer }) =>
          Object.entries(answer)
            .filter(([, value]) => value === 'no')
            .map(([sign]) => ({ observation, answer: { [sign]: 'yes' as const } }))
            .filter(fact => observation === 'people-signs' && isDangerFact(tree, fact))
        )
      )
    )
    expect(denied).toEqual([])
    expect(facts('no chest pain')).toEqual([])
  })

  test('but by words about everybody, and by those no more once they are turned round', () => {
    const all = said.filter(
      ({ answer, force }) => answer === 'illness-signs' && force === 'rules-out'
    )
    expect(all.length).toBeGreaterThan(40)
    for (const { phrase } of all) {
      expect(facts(phrase), phrase).toHaveLength(1)
      for (const line of [
        `not ${phrase}`,
        `it isn’t so that ${phrase}`,
        `${phrase} but one`,
        `${phrase} except the baby`,
        `${phrase}, except the baby`,
        `I hope ${phrase}`,
        `no creo que ${phrase}`,
        `${phrase}?`
      ]) {
        expect(facts(line).filter(isOfIll), line).toEqual([])
      }
    }
  })
})

describe('danger stands before what is harmless', () => {
  const lid = { observation: 'container-signs', answer: { 'lid-bulging-or-hissing': 'yes' } }

  test.each(['it exploded', 'the jar exploded', 'lid flew off'])(
    '%j is first of all a burst',
    line => {
      const burst = { observation: 'container-signs', answer: { 'burst-or-out-of-reach': 'yes' } }
      for (const { candidates } of reader.read(line)) expect(candidates[0]).toMatchObject(burst)
    }
  )

  test.each(['lid is domed up and I hear it fizzing', 'lid is bulging', 'fizzing', 'pressure'])(
    '%j is first of all the lid',
    line => {
      for (const { candidates } of reader.read(line)) expect(candidates[0]).toMatchObject(lid)
    }
  )

  test.each([
    ['dizzy', 'severe-symptoms'],
    ['feverish', 'illness-signs'],
    ['throwing up since 3 am', 'illness-signs'],
    ['diarrhea', 'illness-signs'],
    ['vomiting', 'illness-signs'],
    ['fever 103', 'illness-signs']
  ])('%j may be grave or mild, and neither is taken', (line, grave) => {
    expect(facts(line).slice(0, 2)).toEqual([person(grave), person('mild-upset')])
    expect(sureOf(reader, line)).toEqual([])
  })

  test.each(['up', 'off', 'down', 'in', '3 am', 'since 3 am'])('%j alone offers nothing', line => {
    expect(facts(line)).toEqual([])
  })

  test('a danger sign leads every list that holds one', () => {
    for (const { phrase } of said) {
      for (const { candidates } of reader.read(`${phrase} somewhere lately`)) {
        const open = candidates.filter(({ sure, matched }) => !sure && matched === phrase)
        const grave = open.findIndex(each => isDangerFact(tree, each))
        const mild = open.findIndex(each => !isDangerFact(tree, each))
        expect(grave < 0 || mild < 0 || grave < mild, phrase).toBe(true)
      }
    }
  })
})

describe('two signs that together are a graver one', () => {
  test.each([
    'pregnant and drank it',
    'I’m pregnant and had a glass',
    'I’m pregnant and I drank some',
    'pregnent and drank it',
    'my wife is pregnant, she drank some',
    'my grandma drank some',
    'embarazada y la tomó'
  ])('%j is taken as that', line => {
    expect(sureOf(reader, line)).toContainEqual(person('at-risk-drank'))
    expect(sureOf(reader, line)).not.toContainEqual(person('at-risk-will-drink'))
  })

  test.each(['my mom is 71 and had a sip', 'ambarazada y la tomó', 'drank it. She is pregnant'])(
    '%j offers it where that is not clear',
    line => {
      expect(facts(line)).toContainEqual(person('at-risk-drank'))
      expect(sureOf(reader, line)).not.toContainEqual(person('at-risk-drank'))
    }
  )

  test('of two people each keeps what was told of them', () => {
    for (const line of [
      'my daughter is pregnant, my husband drank some',
      'my husband drank it and my daughter is pregnant'
    ]) {
      const told = sureOf(reader, line)
      expect(told, line).toContainEqual(person('at-risk-will-drink'))
      expect(told, line).toContainEqual(person('someone-drank'))
      expect(told, line).not.toContainEqual(person('at-risk-drank'))
    }
  })

  test('"I" beside somebody of the family is another person, and is asked about', () => {
    const line = 'my daughter is pregnant and I had a glass'
    expect(sureOf(reader, line)).not.toContainEqual(person('at-risk-drank'))
    expect(facts(line)).toContainEqual(person('at-risk-drank'))
  })
})

const isOfIll = ({ answer }: Fact): boolean =>
  typeof answer === 'object' && Object.hasOwn(answer, 'illness-signs')

import { describe, expect, test } from 'vitest'
import { isDangerFact } from '../../../src/words/facts/worry.ts'
import { offered, shippedReader, sureOf } from './shipped-reader.ts'

const { tree, said, reader } = await shippedReader()
const person = (sign: string, value = 'yes') => ({
  observation: 'people-signs',
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
    const phrases = said.filter(({ observation }) => observation === 'people-signs')
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
    expect(facts(line)).toEqual([person(grave), person('mild-upset')])
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

describe('two parts that make a graver phrase are not taken apart', () => {
  test.each([
    'pregnent and drank it',
    'pregnnat and drank it',
    'I’m pregnant and I drank some',
    'drank it. She is pregnant',
    'ambarazada y la tomó'
  ])('%j offers the graver phrase and takes nothing', line => {
    expect(sureOf(reader, line)).toEqual([])
    for (const { candidates } of reader.read(line)) {
      expect(candidates[0]).toMatchObject(person('at-risk-drank'))
    }
    expect(reader.suggest(line)[0]).toMatchObject(person('at-risk-drank'))
  })

  test('the phrase itself is still taken', () => {
    expect(sureOf(reader, 'pregnant and drank it')).toEqual([person('at-risk-drank')])
  })
})

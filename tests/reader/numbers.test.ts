import { describe, expect, test } from 'vitest'
import { measured } from '../../src/tree/reading.ts'
import { offered, shippedReader, sureOf } from './shipped-reader.ts'

const { tree, reader } = shippedReader()

function reading(observation: string, value: number, instrument?: string) {
  const measure = tree.observations[observation]
  if (measure?.kind !== 'measure') throw new Error(`${observation} is no measure`)
  return { observation, answer: measured(measure, value, instrument) }
}

describe('a number with its unit is a reading', () => {
  test.each([
    ['day 9', 9],
    ['9 days', 9],
    ['d9', 9],
    ['9-day-old', 9],
    ['día 9', 9],
    ['dia 9', 9],
    ['hace 9 días', 9],
    ['nine days old', 9],
    ['two weeks', 14],
    ['2 wks', 14],
    ['a week', 7],
    ['dos semanas', 14],
    ['2.5 weeks', 17],
    ['two and a half weeks', 17],
    ['9½ days', 9],
    ['9.9 days', 9],
    ['36 hours', 1],
    ['3 months', 90],
    ['a month', 30],
    ['two months old', 60],
    ['tres meses', 90],
    ['0 days', 0]
  ])('%j is whole days', (line, days) => {
    expect(sureOf(reader, line)).toEqual([reading('day', days)])
  })

  test.each([
    ['ph 4.1', 4.1, undefined],
    ['4.1 ph', 4.1, undefined],
    ['pH is 4,1', 4.1, undefined],
    ['ph4.1', 4.1, undefined],
    ['acidity 3.2', 3.2, undefined],
    ['ph 4.1 strip', 4.1, undefined],
    ['ph 4.1 strips', 4.1, undefined],
    ['ph of 3.2 on a meter', 3.2, 'meter'],
    ['ph 4.1 narrow strip', 4.1, 'narrow-strip'],
    ['ph 4.1 on the wide strip', 4.1, 'wide-strip'],
    ['ph 3.2 medidor', 3.2, 'meter'],
    ['ph 3.2 on an uncalibrated meter', 3.2, 'uncalibrated-meter'],
    ['ph 3.2 medidor descalibrado', 3.2, 'uncalibrated-meter'],
    ['pH 3.2 tira de rango corto', 3.2, 'narrow-strip']
  ])('%j is a pH, with the instrument that it names', (line, ph, instrument) => {
    expect(sureOf(reader, line)).toEqual([reading('jar-ph', ph, instrument)])
  })

  test.each([
    ['75 F', 75],
    ['75f', 75],
    ['75 degrees F', 75],
    ['24 C', 75.2],
    ['24 °C', 75.2],
    ['24ºC', 75.2],
    ['24 grados centígrados', 75.2]
  ])('%j is a temperature in Fahrenheit', (line, fahrenheit) => {
    expect(sureOf(reader, line)).toEqual([reading('room-temperature', fahrenheit)])
  })

  test('a percentage is the share of starter', () => {
    expect(sureOf(reader, '15%')).toEqual([reading('starter-share', 15)])
    expect(sureOf(reader, '15 por ciento')).toEqual([reading('starter-share', 15)])
  })

  test('several readings without a comma are told apart by their units', () => {
    expect(sureOf(reader, 'day 9 ph 4.1 75 F')).toEqual([
      reading('jar-ph', 4.1),
      reading('day', 9),
      reading('room-temperature', 75)
    ])
  })
})

describe('a reading that is not clear is only offered', () => {
  test('a bare number lists every measure that can hold it', () => {
    expect(offered(reader, '9')).toEqual(
      [reading('jar-ph', 9), reading('day', 9), reading('starter-share', 9)].map(each => ({
        ...each,
        matched: '9',
        sure: false
      }))
    )
    expect(offered(reader, '75').map(({ observation }) => observation)).toEqual([
      'day',
      'starter-share',
      'room-temperature'
    ])
  })

  test('degrees alone are Fahrenheit and, where that can be, Celsius', () => {
    const values = (line: string) => offered(reader, line).map(({ answer }) => answer)
    expect(values('75 degrees')).toEqual([reading('room-temperature', 75).answer])
    expect(values('24 degrees')).toEqual([
      reading('room-temperature', 24).answer,
      reading('room-temperature', 75.2).answer
    ])
    expect(sureOf(reader, '75 degrees')).toEqual([])
  })

  test.each([
    'around 9 days',
    'ph under 4',
    'ph dropped from 4.1 to 3.2',
    'noticed it 2 days ago',
    'week 2',
    'ph 4.1?',
    'ph is not 4.1',
    'maybe day 9',
    'ph 4.1 strip meter',
    'day 4 ph 4.1 ph 3.2',
    '4-5 days',
    '75 F in the oven'
  ])('%j is not taken', line => {
    expect(offered(reader, line).length).toBeGreaterThan(0)
    expect(sureOf(reader, line)).toEqual([])
  })

  test.each(['half', '2 jars', '11/25', 'half a gallon'])('%j is no reading', line => {
    const measures = offered(reader, line).filter(({ answer }) => typeof answer === 'object')
    expect(measures.filter(({ answer }) => 'reading' in (answer as object))).toEqual([])
  })
})

describe('a reading that cannot be is told, with those that can', () => {
  test.each([
    ['pH 15', 0, 14],
    ['ph -1', 0, 14],
    ['day 4000', 0, 3650],
    ['day -3', 0, 3650],
    ['300 F', 20, 130],
    ['300 degrees', 20, 130],
    ['120 %', 0, 100],
    [`day ${'9'.repeat(400)}`, 0, 3650]
  ])('%j lies out of its span', (line, from, to) => {
    expect(reader.read(line)).toEqual([
      { text: line, candidates: [], problem: 'out-of-span', span: { from, to } }
    ])
  })
})

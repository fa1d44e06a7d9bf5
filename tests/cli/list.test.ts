import { describe, expect, test } from 'vitest'
import { runCommand } from './run-command.ts'

interface Listed {
  readonly id: string
  readonly kind: string
  readonly after: boolean
  readonly answers?: readonly { id: string; danger: boolean; usual: boolean; standsFor?: string }[]
  readonly signs?: readonly { id: string; danger: boolean; volunteered: boolean }[]
  readonly [key: string]: unknown
}

const listed = async (): Promise<Record<string, Listed>> => {
  const { output } = await runCommand(['list', '--json'])
  const { trees } = JSON.parse(output)
  const jar = trees.find(({ id }: { id: string }) => id === 'kombucha-jar')
  return Object.fromEntries(jar.observations.map((one: Listed) => [one.id, one]))
}

describe('the list says all that can be named on a command line', () => {
  test('answers stand most worrying first, with their marks', async () => {
    const { 'surface-texture': texture } = await listed()
    expect(texture?.answers?.[0]).toMatchObject({ id: 'dry-fuzzy', danger: true, usual: false })
    expect(texture?.answers?.at(-1)).toMatchObject({ id: 'wet-film', usual: true })
  })

  test('a settling observation says what it settles and what its answers stand for', async () => {
    const { 'side-light': light } = await listed()
    expect(light?.settles).toBe('surface-texture')
    expect(light?.answers?.[0]?.standsFor).toBe('dry-fuzzy')
  })

  test('a sign that is only told is marked so', async () => {
    const { 'smell-and-liquid': smell } = await listed()
    const told = smell?.signs?.filter(({ volunteered }) => volunteered).map(({ id }) => id)
    expect(told).toEqual(['soapy-or-salty', 'still-sweet'])
  })

  test('a measure says its unit, its span and how exact each instrument is', async () => {
    const { 'jar-ph': ph } = await listed()
    expect(ph).toMatchObject({ unit: 'ph', span: { from: 0, to: 14 } })
    expect(ph?.instruments).toContainEqual({ id: 'meter', plusMinus: 0.05 })
  })

  test('what is asked after the outcome is told apart', async () => {
    const observations = Object.values(await listed())
    const after = observations.filter(one => one.after).map(({ id }) => id)
    expect(after).toContain('room-temperature')
    expect(after).not.toContain('day')
  })

  test('as text it names every observation and every answer', async () => {
    const { code, output } = await runCommand(['list'])
    expect(code).toBe(0)
    for (const { id, answers = [], signs = [] } of Object.values(await listed())) {
      for (const name of [id, ...[...answers, ...signs].map(one => one.id)]) {
        expect(output).toContain(name)
      }
    }
    expect(output).toContain('dry-fuzzy  (danger)')
    expect(output).toContain('@narrow-strip  ±0.3')
  })
})

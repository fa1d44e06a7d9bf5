import { describe, expect, test } from 'vitest'
import { fieldsOf, givenIn, startValues, unitsOf } from '../../src/places/workbench/fields.ts'
import { CALCULATORS, type Calculator } from '../../src/words/reckoned/calculators.ts'
import { runCommand } from './run-command.ts'

const reckon = (...args: string[]) => runCommand(['reckon', ...args])
async function json(...args: string[]) {
  const { code, output } = await reckon(...args, '--json')
  expect(code).toBe(0)
  return JSON.parse(output)
}

describe('a calculator prints one object', () => {
  test('for a fresh mix: the interval, and whether it surely passes each limit', async () => {
    const found = await json(
      ...[
        'mix',
        '--starter-ph',
        '3.0',
        '--instrument',
        'meter',
        '--starter',
        '2cup',
        '--batch',
        '1gal'
      ]
    )
    expect(found).toMatchObject({ unit: 'pH', atMost46: 'yes', atMost42: 'not-known' })
    expect(found.low).toBeLessThan(found.mid)
    expect(found.mid).toBeLessThan(found.high)
    expect(found.high).toBeLessThanOrEqual(4.6)
    expect(found.says).toContain('A pH reading of the stirred mix beats all of this.')
    expect(found.sources.join()).toContain('21 CFR 114')
  })

  test('for a bottle: it could burst now, or that is not shown', async () => {
    const at = ['--at', '75F', '--bottle', 'swing-top', '--headspace', '5%']
    const many = await json('gas', '--sugar', '20g/L', '--days', '3', ...at)
    expect(many).toMatchObject({ unit: 'bar', verdict: 'could-burst-now', limit: 4 })
    const few = await json('gas', '--sugar', '4g/L', '--days', '1', ...at)
    expect(few.verdict).toBe('not-shown-below')
    expect(few.says).toContain('does not show')
    expect(`${many.says}${few.says}`).not.toMatch(/\bsafe\b|until day|in \d+ days/i)
  })

  test('for bleach: rounded down, with the plain rule and the warning', async () => {
    const found = await json('bleach', '--label', '8.25%', '--target', '200ppm', '--water', '1gal')
    expect(found).toMatchObject({ teaspoons: 1.75, plain: { teaspoons: 1.5 }, rinse: false })
    expect(found.ppm).toBeLessThanOrEqual(200)
    expect(found.says).toContain('Never with vinegar or ammonia')
    const strong = await json('bleach', '--label', '6%', '--target', '400ppm', '--water', '1gal')
    expect(strong.says).toContain('rinse')
  })

  test('for agreement: sensitivity first, with how many', async () => {
    const found = await json('agree', '20', '5', '10', '15')
    expect(found.mid).toBeCloseTo(0.4, 9)
    expect(found).toMatchObject({ n: 50, unit: 'kappa' })
    expect(found.says.startsWith('Of 30 that were to be thrown out')).toBe(true)
    const table = await json('agree', '--weights', 'linear', ...'75 1 4 5 4 1 0 0 10'.split(' '))
    expect(table.mid).toBeCloseTo(0.7222, 3)
  })

  test('for salt, sugar and a course', async () => {
    const salt = await json(
      ...[
        'salt',
        '--salt',
        '3tbsp',
        '--salt-kind',
        'canning',
        '--vegetables',
        '5lb',
        '--for',
        'kraut'
      ]
    )
    expect(salt).toMatchObject({ unit: '%', band: 'in-range' })
    const brix = await json('brix', '8', '4')
    expect(brix.alcoholCeiling).toBeCloseTo(2.85, 1)
    const course = await json(
      ...['course', '--at', '75F', '--readings', '8:4.4,0:4.5', '--instrument', 'meter']
    )
    expect(course.says.startsWith('Day 7 is past and the pH is above 4.2: throw it out.')).toBe(
      true
    )
    const cold = await json('course', '--at', '64F', '--day', '8')
    expect(cold).toMatchObject({ low: null, mid: null, high: null, standing: 'no-published-range' })
  })
})

describe('what cannot be worked out is said in one sentence', () => {
  test.each([
    [
      ['mix', '--starter', '2gal', '--batch', '1gal'],
      /starter is 7571; it has to be from 0 to 3785/
    ],
    [['mix', '--starter', '2lb', '--batch', '1gal'], /write it like `2cup`/],
    [['mix', '--batch', '1gal'], /`--starter` is missing/],
    [['mix', '--starter-ph', '15', '--starter', '1cup', '--batch', '1gal'], /from 1.5 to 7 pH/],
    [['gas', '--sugar', '20', '--at', '300F'], /from -1 to 45 °C/],
    [['gas', '--sugar=-3', '--at', '75F'], /from 0 to 400 g\/L/],
    [['agree', '1', '2', '3'], /4, 9, 16/],
    [['agree', '1', '2', '3', '4.5'], /has to be from 0/],
    [['bleech'], /Did you mean `bleach`/],
    [[], /Name a calculator/]
  ])('%o', async (args, sentence) => {
    const { code, errors, output } = await reckon(...args)
    expect(code).toBe(2)
    expect(output).toBe('')
    expect(errors).toMatch(sentence)
  })

  test('bleach that is not for dishes is refused with the reason', async () => {
    const { code, output } = await reckon('bleach', '--label', '6%', '--additive', 'scented')
    expect(code).toBe(0)
    expect(output).toMatch(/^Do not use scented bleach/)
  })
})

test('it speaks Spanish too', async () => {
  const { output } = await reckon('bleach', '--label', '7.5%', '--lang', 'es')
  expect(output).toContain('2 cucharaditas')
  expect(output).toContain('Nunca con vinagre ni amoníaco')
})

/** The command line that says what the workbench begins with. */
function argumentsOf(calculator: Calculator): readonly string[] {
  const values = startValues(calculator, new URLSearchParams())
  const isUnnamed = ['brix', 'agree'].includes(calculator.id)
  return fieldsOf(calculator).flatMap(input => {
    const value = values[input.id] ?? ''
    if (isUnnamed) return [value]
    if (value === '' || (input.kind === 'choice' && value === input.leftOut)) return []
    if (input.kind === 'readings') {
      return ['--readings', value.replaceAll('\t', ':').replaceAll('\n', ',')]
    }
    return [`--${input.id}`, `${value}${unitsOf(input)[0] ?? ''}`]
  })
}

test.each(CALCULATORS.map(calculator => [calculator.id, calculator] as const))(
  'the command and the workbench work out the same: %s',
  async (id, calculator) => {
    const page = calculator.reckon(givenIn(startValues(calculator, new URLSearchParams())))
    const { low, mid, high } = await json(id, ...argumentsOf(calculator))
    expect(page.span).not.toBeNull()
    expect({ low, mid, high }).toEqual(page.span)
  }
)

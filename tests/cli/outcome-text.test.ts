import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { runCommand, UNTROUBLED } from './run-command.ts'

const mold = ['walk', 'kombucha-jar', '--unsure', 'people-signs', '--none', 'container-signs']
const facts = ['--none', 'jar-signs', '--none', 'drinkers', '--given', 'surface-texture=dry-fuzzy']

describe('an outcome is told in the order in which it is needed', () => {
  test('the message, what to do, cleaning, whom to call, sources, standing', async () => {
    const { output } = await runCommand([...mold, ...facts])
    const titles = [
      'WARNING',
      'Do now',
      'What your answers mean',
      'The rest of this batch',
      'Clean up',
      'Start again'
    ]
    const later = ['Who must not have any', 'When to get medical help']
    const last = ['Who to call', 'Sources', 'But what about', 'Edition 1', 'Draft']
    const found = [...titles, ...later, ...last].map(title => output.indexOf(title))

    expect(found).not.toContain(-1)
    expect(found).toEqual([...found].sort((a, b) => a - b))
    expect(output).toMatch(/^1\. /m)
  })
})

describe('advice past its review date still stands, and says so', () => {
  test('it is not overdue on its last day, and is on the next', async () => {
    const walk = ['walk', 'kombucha-jar', ...UNTROUBLED]
    const due = await runCommand(walk, { today: '2027-11-01T23:00:00Z' })
    const over = await runCommand(walk, { today: '2027-11-02T00:00:00Z' })

    expect(due.output).not.toContain('Review was due')
    expect(over.output).toContain('Review was due on 2027-11-01')
    expect(over.output).toContain('Growth looks normal')
  })
})

describe('an office that cannot be relied on is said to be so', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-'))
  beforeAll(() => {
    for (const part of ['shared', 'trees', 'locales']) {
      cpSync(part, join(folder, part), { recursive: true })
    }
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  test('without a pack the two fixed numbers are shown with the reason', async () => {
    const { output } = await runCommand(['walk', 'kombucha-jar', ...UNTROUBLED, '--in', folder])
    expect(output).toContain('This copy has no office number')
    expect(output).toContain('911')
    expect(output).toContain('1-800-222-1222')
    expect(output).not.toContain('555-01')
  })

  test('with an old pack its number is shown together with the doubt', async () => {
    const ask = [...UNTROUBLED.map(word => (word.startsWith('jar-ph=') ? 'jar-ph=4.2' : word))]
    const { output } = await runCommand(
      ['walk', 'kombucha-jar', ...ask, '--given', 'looked-before=first-look'],
      {
        today: '2028-01-15T00:00:00Z'
      }
    )
    expect(output).toContain('555-0110')
    expect(output).toContain('has not been checked lately')
    expect(output).toContain('1-800-222-1222')
  })

  test('a pack cannot put its own number in place of 911', async () => {
    const pack = JSON.parse(readFileSync('public/office.json', 'utf8'))
    pack.referrals = pack.referrals.map((referral: object) => ({
      ...referral,
      number: 'front-desk'
    }))
    const at = join(folder, 'public')
    cpSync('public', at, { recursive: true })
    writeFileSync(join(at, 'office.json'), JSON.stringify(pack))
    const { output } = await runCommand([
      ...['walk', 'kombucha-jar', '--json', '--in', folder],
      ...['--given', 'people-signs=severe-symptoms']
    ])
    const phones = JSON.parse(output).referral.map(({ phone }: { phone: string }) => phone)
    expect(phones).toEqual(['911', '1-800-222-1222'])
  })
})

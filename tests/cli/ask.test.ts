import { describe, expect, test } from 'vitest'
import { runCommand } from './run-command.ts'

describe('a how-to question is answered', () => {
  test('with its sources, whom else to ask, and that it is a draft', async () => {
    const { code, output } = await runCommand(['ask', 'how', 'warm', 'kombucha'])
    expect(code).toBe(0)
    expect(output).toContain('75 to 85 °F')
    expect(output).toContain('- Common practice among experienced home brewers')
    expect(output).toContain('Beyond this answer, ask: Larkspur County Outreach Office')
    expect(output).toContain('Draft: not yet reviewed by a specialist')
    expect(output).toContain('To be reviewed by 2027-11-01.')
  })

  test('asked in Spanish, answered in the language that is wished', async () => {
    const spanish = await runCommand(['ask', 'cuánta sal lleva el chucrut', '--lang', 'es'])
    expect(spanish.output).toContain('Chucrut: 3 cucharadas de sal')
    const english = await runCommand(['ask', 'cuánta sal lleva el chucrut'])
    expect(english.output).toContain('Sauerkraut: 3 tablespoons')
  })

  test('as one object it has the ids, the sources and the numbers to call', async () => {
    const { output } = await runCommand(['ask', 'garlic in oil', '--json'])
    const { lead, answers } = JSON.parse(output)
    expect(lead).toBe(null)
    expect(answers[0]).toMatchObject({ id: 'garlic-in-oil', draft: expect.any(String) })
    expect(answers[0].sources.map(({ id }: { id: string }) => id)).toContain('cdc-garlic-oil')
    expect(answers[0].beyond).toContainEqual(
      expect.objectContaining({ to: 'poison-help', phone: '1-800-222-1222' })
    )
  })

  test('past its day of review it says so', async () => {
    const { output } = await runCommand(['ask', 'how warm kombucha'], {
      today: '2028-01-01T12:00:00Z'
    })
    expect(output).toContain('The review was due on 2027-11-01.')
  })
})

describe('what no answer may settle', () => {
  test('a question about one jar names its tree', async () => {
    const { code, output } = await runCommand(['ask', 'is my sauerkraut ok'])
    expect(code).toBe(0)
    expect(output).toContain('Look at it with me')
    expect(output).toContain('jarside walk brined-vegetables')
  })

  test('words of an emergency get its number and nothing else', async () => {
    const { output } = await runCommand(['ask', 'she has double vision after the pickles'])
    expect(output).toBe('Call 911 now. Answers here can wait.\n')
  })

  test('what is not answered here names the office, and ends with 1', async () => {
    const { code, output } = await runCommand(['ask', 'who won the football game'])
    expect(code).toBe(1)
    expect(output).toContain('Larkspur County Outreach Office')
  })
})

describe('a command line that does not fit', () => {
  test.each([
    [['ask'], 'Ask something'],
    [['ask', 'salt', '--lang', 'xx'], 'There is no language `xx`. Languages: ar, en, es, vi, zh.']
  ])('%j', async (args, message) => {
    const { code, errors } = await runCommand(args)
    expect(code).toBe(2)
    expect(errors).toContain(message)
  })
})

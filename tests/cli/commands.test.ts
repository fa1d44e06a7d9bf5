import { describe, expect, test } from 'vitest'
import { COMMANDS, commandNamed } from '../../src/cli/commands.ts'
import { runCommand } from './run-command.ts'

describe('a command is imported when it is wanted', () => {
  test.each(Object.keys(COMMANDS))('%s is found by the name that it has itself', async name => {
    expect((await commandNamed(name))?.name).toBe(name)
  })

  test('what every object has is no command', async () => {
    expect(await commandNamed('constructor')).toBeUndefined()
  })

  test('the manual lists each with its summary', async () => {
    const { code, output } = await runCommand(['--help'])
    expect(code).toBe(0)
    for (const name of Object.keys(COMMANDS)) {
      const command = await commandNamed(name)
      expect(output).toContain(`\n  ${name.padEnd(9)}${command?.summary}\n`)
    }
  })
})

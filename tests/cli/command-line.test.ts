import { spawnSync } from 'node:child_process'
import { describe, expect, test } from 'vitest'

/** The command as a shell runs it: a real process, its streams piped. */
const jarside = (...args: string[]) =>
  spawnSync(process.execPath, ['tools/jarside.mjs', ...args], {
    encoding: 'utf8',
    input: ''
  })

describe('the command works as a process of its own', () => {
  test('it prints one object, nothing else, and passes its exit code through', () => {
    const { status, stdout, stderr } = jarside(
      ...['walk', 'kombucha-jar', '--json', '--strict', '--given', 'surface-texture=dry-fuzzy']
    )
    expect(JSON.parse(stdout)).toMatchObject({
      finished: false,
      atLeast: { batch: 'likely-mold', use: 'never' }
    })
    expect(stderr).toBe('')
    expect(status).toBe(1)
  })

  test('bad use goes to the error stream and ends with 2', () => {
    const { status, stdout, stderr } = jarside('walk', 'kombucha-jar', '--given', 'dey=9')
    expect([status, stdout]).toEqual([2, ''])
    expect(stderr).toContain('`day`')
  })
})

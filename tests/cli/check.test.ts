import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type CheckedProperty, checkedLines, checkedTree } from '../../src/cli/checked-tree.ts'
import { PROPERTIES } from '../../src/prove/prove.ts'
import { standing, undecided } from '../../src/prove/proved.ts'
import { faultyProject, projectWhere, wholeProject } from '../load/project-files.ts'
import { type Ran, runCommand } from './run-command.ts'

describe('the shipped project is checked whole', () => {
  let asJson: Ran
  beforeAll(async () => {
    asJson = await runCommand(['check', '--json'])
  })

  test('it has no findings and everything is proved', () => {
    const { code, output } = asJson
    const { ok, findings, trees } = JSON.parse(output)

    expect(findings).toEqual([])
    expect(ok).toBe(true)
    expect(trees.map(({ tree }: { tree: string }) => tree)).toContain('kombucha-jar')
    expect(code).toBe(0)
  })

  test('each property of each tree is told with its counts', () => {
    const all: { tree: string; proved: boolean; properties: CheckedProperty[] }[] = JSON.parse(
      asJson.output
    ).trees
    const jar = all.find(({ tree }) => tree === 'kombucha-jar')
    if (jar === undefined) throw new Error('the jar was not checked')
    const { proved, properties } = jar
    expect(proved).toBe(true)
    expect(properties.map(({ property }: CheckedProperty) => property)).toEqual([
      ...PROPERTIES.map(({ id }) => id),
      'know-how-is-no-looser'
    ])
    for (const { standing, counts } of properties as CheckedProperty[]) {
      expect([standing, counts.refuted]).toEqual(['proved', 0])
      expect(counts.proved).toBeGreaterThan(0)
    }
  })

  test('as text there is a line for each property', async () => {
    const { output } = await runCommand(['check'])
    for (const { id } of PROPERTIES) {
      expect(output).toMatch(
        new RegExp(`^kombucha-jar: ${id}: [1-9]\\d* proved(?:, \\d+ open)?$`, 'm')
      )
    }
    expect(output).toMatch(
      /No findings\. Everything is proved(?: but \d+ cases that `open-cases:` lists)?\.\n$/
    )
  })
})

const TREE = 'trees/jar/tree.yaml'

describe('a project with a fault fails the check', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-'))
  beforeAll(() => {
    for (const { path, text } of projectWhere(TREE, 'then: growth', 'then: grwoth')) {
      mkdirSync(dirname(join(folder, path)), { recursive: true })
      writeFileSync(join(folder, path), text)
    }
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  test('the finding is printed with its place and its remedy', async () => {
    const { code, output } = await runCommand(['check', '--in', folder])
    expect(code).toBe(1)
    expect(output).toMatch(/^trees\/jar\/tree\.yaml:\d+:\d+ {2}[a-z-]+$/m)
    expect(output).toContain('Fix:')
    expect(output).toContain('Did you mean `growth`?')
  })

  test('the tree cannot be walked, and its findings say why', async () => {
    const { code, output, errors } = await runCommand(['walk', 'jar', '--in', folder])
    expect([code, output]).toEqual([1, ''])
    expect(errors).toContain('Fix:')
  })

  test('the list leaves it out and says so', async () => {
    const { code, errors } = await runCommand(['list', '--in', folder])
    expect(code).toBe(1)
    expect(errors).toContain('jarside check')
  })
})

describe('a tree that breaks a property fails the check', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-'))
  beforeAll(() => {
    for (const { path, text } of faultyProject('idle-sign').files) {
      mkdirSync(dirname(join(folder, path)), { recursive: true })
      writeFileSync(join(folder, path), text)
    }
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  test('it is counted apart, and its finding is printed', async () => {
    const { code, output } = await runCommand(['check', '--in', folder])
    expect(code).toBe(1)
    expect(output).toContain('jar: no-idle-sign: 1 proved, 1 refuted\n')
    expect(output).toContain(readFileSync('tests/bad/idle-sign.txt', 'utf8'))
  })

  test('as one object it has its standing and its counts', async () => {
    const { code, output } = await runCommand(['check', '--in', folder, '--json'])
    const { ok, trees, findings } = JSON.parse(output)
    expect([code, ok, trees[0].proved]).toEqual([1, false, false])
    expect(trees[0].properties).toContainEqual({
      property: 'no-idle-sign',
      kind: 'shape',
      standing: 'refuted',
      counts: { proved: 1, refuted: 1 }
    })
    expect(findings).toMatchObject([{ code: 'idle-sign', facts: { sign: 'cloudy' } }])
  })
})

describe('what seeded faults found is written down and told', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-'))
  const file = join(folder, 'trees/fault-scores.json')
  const UNSEEN = 'removed raise: start-vessel cloudy unsure: wait'
  const rules = (reason: string) => `rules: []\nunfound-faults:\n  '${UNSEEN}': ${reason}\n`
  beforeAll(() => {
    for (const { path, text } of wholeProject()) {
      mkdirSync(dirname(join(folder, path)), { recursive: true })
      writeFileSync(join(folder, path), text)
    }
    writeFileSync(join(folder, 'trees/jar/rules.yaml'), rules('the guide says nothing of clouds'))
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  test('before anything was measured it says so', async () => {
    const { code, output } = await runCommand(['check', '--in', folder])
    expect(code).toBe(0)
    expect(output).toContain(
      'jar: seeded faults: not measured yet: run jarside check --faults --record\n'
    )
  })

  test('a slip that nothing finds is named, with its reason where one is listed', async () => {
    const { code, output } = await runCommand(['check', '--faults', '--record', '--in', folder])
    expect(code).toBe(0)
    expect(output).toContain(`jar: known: ${UNSEEN} (the guide says nothing of clouds)\n`)
    expect(output).toContain('jar: not found: dropped unsure: start-vessel cloudy unsure\n')
  })

  test('afterwards the check tells the score in one line', async () => {
    const { faults, found, unfound, advice } = JSON.parse(readFileSync(file, 'utf8')).jar
    expect(found + unfound.length).toBe(faults)
    const { output } = await runCommand(['check', '--in', folder])
    expect(output).toContain(
      `jar: seeded faults: ${found} of ${faults} found, 1 known, ${unfound.length - 1} without a reason; advice faults: ${advice.found} of ${advice.faults} found, ${advice.faults - advice.found} without a reason\n`
    )
  })

  test('of a tree that was changed since it says so, and that is no finding', async () => {
    const tree = join(folder, 'trees/jar/tree.yaml')
    const before = readFileSync(tree, 'utf8')
    writeFileSync(tree, before.replace('under: 7, end: wait', 'under: 7, end: discard'))
    const { code, output } = await runCommand(['check', '--in', folder])
    writeFileSync(tree, before)
    expect(code).toBe(0)
    expect(output).toMatch(
      /^jar: seeded faults: .+ \(measured on an earlier edition: run jarside check --faults --record\)$/m
    )
  })

  test('a score of some faults alone is not written down', async () => {
    const part = ['check', '--faults', '--every', '2', '--record', '--in', folder]
    const { code, errors } = await runCommand(part)
    expect(code).toBe(2)
    expect(errors).toContain('`--every`')
  })

  test('a listed slip that is found fails the check', async () => {
    const listed = rules('nothing of clouds').replace(
      UNSEEN,
      'removed raise: growth fuzzy: discard'
    )
    writeFileSync(join(folder, 'trees/jar/rules.yaml'), listed)
    const { code, output } = await runCommand(['check', '--faults', '--in', folder])
    expect(code).toBe(1)
    expect(output).toContain('  fault-found\n')
  })
})

describe('only proved is proved', () => {
  const proved = standing('rules-hold', 'rule', [[], []])
  const open = undecided('no-idle-sign', 'shape', 'too many')

  test('a property that is not decided is told with its reason', () => {
    const checked = checkedTree('jar', [proved, open])
    expect(checked.proved).toBe(false)
    expect(checkedLines(checked)).toEqual([
      'jar: rules-hold: 2 proved',
      'jar: no-idle-sign: not decided (too many)'
    ])
  })

  test('a tree of which nothing was proved is not proved', () => {
    expect(checkedTree('jar', []).proved).toBe(false)
  })
})

import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { diagramsOf } from '../../src/diagrams/tree-diagrams.ts'
import type { Finding } from '../../src/findings/finding.ts'
import { type AuthoredFile, load } from '../../src/load/load.ts'
import { closedFaults, unknownFaults } from '../../src/prove/faults/unfound.ts'
import { PROPERTIES, proveWith } from '../../src/prove/prove.ts'
import { FAULTY, faultyProject, reportOn, wholeProject } from '../load/project-files.ts'

describe('a faulty project is reported word for word', () => {
  test('nothing is reported of a project in which nothing is wrong', async () => {
    const { trees } = await load(wholeProject())
    expect(await foundIn(wholeProject())).toEqual([])
    expect(trees.map(({ id }) => id)).toEqual(['jar'])
  })

  // Reports are changed one by one, and read like prose when they are: nothing here rewrites them.
  test.each(FAULTY)('%s', async code => {
    const { files } = faultyProject(code)
    const findings = await foundIn(files)
    expect(findings.map(finding => finding.code)).toContain(code)
    expect(reportOn(files, { findings })).toBe(readFileSync(`tests/bad/${code}.txt`, 'utf8'))
  })

  test.each(FAULTY)('%s names no library and no word for machines', code => {
    const report = readFileSync(`tests/bad/${code}.txt`, 'utf8')
    expect(report).not.toMatch(
      /\b(zod|TypeScript|undefined|NaN|invalid|object|array|null pointer)\b/i
    )
  })
})

/** What loading finds, or, where that is nothing, what proving each tree finds, its list of slips too. */
async function foundIn(files: readonly AuthoredFile[]): Promise<readonly Finding[]> {
  const { findings, trees, places, sources } = await load(files)
  if (findings.length > 0) return findings
  const all = PROPERTIES
  return trees.flatMap(tree => {
    const at = places[tree.id] ?? {}
    const proved = proveWith(diagramsOf(tree), at, sources, all).flatMap(
      ({ property, standing, because, findings }) => {
        if (standing === 'not-decided') throw new Error(`${property} is not decided: ${because}`)
        return findings
      }
    )
    return [...proved, ...unknownFaults(tree, at), ...closedFaults(tree, at, sources)]
  })
}

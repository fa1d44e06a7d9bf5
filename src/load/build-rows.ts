import type { Answer, Answers } from '../tree/answers.ts'
import type { Observation } from '../tree/observation.ts'
import { TRACKS } from '../tree/observation.ts'
import { measured } from '../tree/reading.ts'
import type { Tree } from '../tree/tree.ts'
import type { Authored, Keys } from './authored.ts'
import { unknownName } from './linking.ts'
import type { AuthoredProject, Shaped } from './project.ts'
import type { FindingReport } from './report.ts'
import type { AuthoredRowGroup, AuthoredRows, AuthoredTold } from './schemas/rows.ts'

/** One row of the guidance: what a caller tells, all else as in an ordinary jar, and what must come out. */
export interface GuidanceRow {
  /** Its number and what was found. */
  readonly title: string
  readonly told: Answers
  /** A track or `use` that the row does not settle is left out. */
  readonly expect: AuthoredRowGroup['expect']
  readonly source: string
}

/** The rows of a tree, with those of `shared/rows` that hold for it too; names that refer to nothing are reported. */
export function rowsOf(
  tree: Pick<Tree, 'id' | 'observations' | 'verdicts'>,
  project: AuthoredProject,
  report: FindingReport
): readonly GuidanceRow[] {
  const own = project.rows.get(tree.id)
  if (own === undefined) return []
  const usual = toldIn(tree, own.doc, own.value.usual ?? {}, ['usual'], report)
  const shared = (own.value.with ?? []).flatMap((name, index) => {
    const rows = project.sharedRows.get(name)
    if (rows !== undefined) return rows
    const place = own.doc.place(['with', index], 'value')
    const file = `shared/rows/${name}.yaml`
    report.add('missing-file', place, { file, holds: 'rows that several trees share' })
    return []
  })
  const all = [own, ...shared].flatMap(rows => rowsIn(tree, rows, report))
  return all.map(row => ({ ...row, told: { ...usual, ...row.told } }))
}

function rowsIn(
  tree: Pick<Tree, 'observations' | 'verdicts'>,
  rows: Shaped<AuthoredRows>,
  report: FindingReport
): readonly GuidanceRow[] {
  return (['rows', 'limits'] as const).flatMap(part =>
    (rows.value[part] ?? []).flatMap(({ expect, source, told }, position) => {
      for (const track of TRACKS) {
        const verdict = expect[track]
        if (
          verdict == null ||
          tree.verdicts.some(({ id, track: of }) => id === verdict && of === track)
        )
          continue
        const place = rows.doc.place([part, position, 'expect', track], 'value')
        const names = tree.verdicts.filter(({ track: of }) => of === track).map(({ id }) => id)
        unknownName(report, 'unknown-verdict', place, verdict, names)
      }
      return told.flatMap((row, index) =>
        Object.entries(row).map(
          ([title, answers]): GuidanceRow => ({
            title,
            told: toldIn(tree, rows.doc, answers, [part, position, 'told', index, title], report),
            expect,
            source
          })
        )
      )
    })
  )
}

/** What is told of each observation; a name that refers to nothing, or an answer that cannot be, is reported. */
export function toldIn(
  { observations }: Pick<Tree, 'observations'>,
  doc: Authored,
  authored: AuthoredTold,
  keys: Keys,
  report: FindingReport
): Answers {
  return Object.fromEntries(
    Object.entries(authored).flatMap(([id, said]): readonly (readonly [string, Answer])[] => {
      const observation = observations[id]
      const place = doc.place([...keys, id], 'value')
      if (observation === undefined) {
        unknownName(report, 'unknown-observation', place, id, Object.keys(observations))
        return []
      }
      const answer = answerOf(observation, said)
      if (answer !== null) return [[id, answer]]
      report.add('wrong-kind', place, {
        key: id,
        has: JSON.stringify(said),
        wants: WANTS[observation.kind]
      })
      return []
    })
  )
}

const WANTS = {
  choice: 'one of its answers, or `unsure`',
  signs: 'a sign, a list of signs, or a group of signs each with `yes`, `no` or `unsure`',
  measure: 'a number, a number with its instrument like `3.2@meter`, or `unsure`'
}

/** What is told of an observation; null where it cannot be told of it. */
function answerOf(observation: Observation, said: AuthoredTold[string]): Answer | null {
  if (said === 'unsure' && observation.kind !== 'signs') return said
  switch (observation.kind) {
    case 'choice':
      return typeof said === 'string' && observation.answers.some(({ id }) => id === said)
        ? said
        : null
    case 'signs': {
      const signs = typeof said === 'string' ? [said] : said
      if (typeof signs !== 'object') return null
      const group = Array.isArray(signs)
        ? Object.fromEntries(signs.map(sign => [sign, 'yes'] as const))
        : signs
      const isKnown = Object.keys(group).every(sign =>
        observation.signs.some(({ id }) => id === sign)
      )
      return isKnown ? group : null
    }
    case 'measure': {
      const { from, to } = observation.span
      const isWithin = (reading: number) => reading >= from && reading <= to
      if (typeof said === 'number') {
        return isWithin(said) ? { low: said, reading: said, high: said } : null
      }
      const [, reading, instrument = ''] =
        typeof said === 'string' ? (/^(-?[\d.]+)@(.+)$/.exec(said) ?? []) : []
      const isKnown = observation.instruments.some(({ id }) => id === instrument)
      if (!isKnown || !isWithin(Number(reading))) return null
      const { low, high } = measured(observation, Number(reading), instrument)
      return { low, reading: Number(reading), high }
    }
  }
}

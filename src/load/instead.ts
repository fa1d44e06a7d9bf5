import { reachedFrom } from '../tree/circuit.ts'
import type { Condition, Question } from '../tree/tree.ts'
import type { Keys } from './authored.ts'
import type { Draft, DraftQuestion } from './expand.ts'
import { linkCondition } from './link-condition.ts'
import { type Linking, unknownName } from './linking.ts'
import { readerOf } from './reader-of.ts'
import type { FindingReport } from './report.ts'
import type { AuthoredBranch, AuthoredQuestion } from './schemas/question.ts'
import type { AuthoredConjunction } from './schemas/rules.ts'

/**
 * Writes out what `instead:` means: questions that read once more what was told, one for each part
 * of a `when:`. They are named after their branch, `lid_tight-lid_1`: a name that no author can write.
 */
export function unfoldInstead(
  draft: Draft,
  linking: Pick<Linking, 'observations' | 'report'>
): Draft {
  const questions = new Map<string, DraftQuestion>()
  for (const question of draft.questions.values()) {
    for (const each of unfold(question, linking)) questions.set(each.id, each)
  }
  return { ...draft, questions }
}

/** Reports what `instead:` reads and some walk has not asked by then. */
export function checkTold(
  { start, questions: drafts }: Draft,
  questions: ReadonlyMap<string, Question>,
  report: FindingReport
): void {
  for (const { id, reads, place, because } of drafts.values()) {
    const reader = questions.get(id)
    if (!reads || !reader) continue
    const counts = (question: Question) =>
      question.asks === reader.asks &&
      !drafts.get(question.id)?.reads &&
      !('volunteered' in question && question.volunteered)
    const untold = new Map([...questions].filter(([, question]) => !counts(question)))
    if (!reachedFrom(untold, start).has(id)) continue
    report.add('read-before-told', place([]), { observation: reader.asks }, because)
  }
}

/** What follows, and where its author wrote it. */
export interface Following {
  readonly branch: AuthoredBranch
  readonly keys: Keys
}

/** One part of a `when:`, which a question of its own reads. */
export interface Part {
  readonly condition: Condition
  readonly keys: Keys
}

function unfold(
  question: DraftQuestion,
  linking: Pick<Linking, 'observations' | 'report'>
): readonly DraftQuestion[] {
  const readers: DraftQuestion[] = []
  const leads = new Map(question.leads)

  /** The branch, or what leads to the questions that tell its cases apart. */
  function fork<B extends AuthoredBranch>(
    written: B,
    name: string,
    keys: Keys
  ): Omit<B, keyof AuthoredBranch> & AuthoredBranch {
    const { instead, raise, use, note, to, end, ...rest } = written
    if (instead === undefined) return written
    const cases = instead.map(({ when, ...branch }, index) => {
      const place = [...keys, 'instead', index]
      const goesOn = branch.to !== undefined || branch.end !== undefined
      const follows = { branch: { ...(goesOn ? {} : { to, end }), ...branch }, keys: place }
      return { follows, parts: partsOf(question, when, [...place, 'when'], linking) }
    })
    let next: Following = { branch: { raise, use, note, to, end }, keys }
    let count = cases.flatMap(({ parts }) => parts).length
    for (const { follows, parts } of cases.reverse()) {
      const otherwise = next
      next = follows
      for (const part of [...parts].reverse()) {
        const id = `${question.id}_${name}_${count--}`
        leads.set(id, id)
        readers.unshift(readerOf(question, id, part, next, otherwise, leads))
        next = { branch: { to: id }, keys: follows.keys }
      }
    }
    return { ...rest, ...next.branch }
  }

  const { body } = question
  const { answers, unsure, borderline, ranges, branch, ...rest } = body
  const forked: AuthoredQuestion = {
    ...fork(rest, 'otherwise', []),
    ...(answers && {
      answers: Object.fromEntries(
        Object.entries(answers).map(([id, each]) => [id, fork(each, id, ['answers', id])])
      )
    }),
    ...(unsure && { unsure: fork(unsure, 'unsure', ['unsure']) }),
    ...(borderline && { borderline: fork(borderline, 'borderline', ['borderline']) }),
    ...(ranges && {
      ranges: ranges.map((each, index) => fork(each, `range-${index + 1}`, ['ranges', index]))
    }),
    ...(branch && {
      branch: branch.map((each, index) => fork(each, each.signs.join('-'), ['branch', index]))
    })
  }
  return readers.length === 0 ? [question] : [{ ...question, body: forked, leads }, ...readers]
}

function partsOf(
  { id: name, place, because }: DraftQuestion,
  when: AuthoredConjunction,
  keys: Keys,
  linking: Pick<Linking, 'observations' | 'report'>
): readonly Part[] {
  const { observations, report } = linking
  return Object.entries(when).flatMap(([id, authored]) => {
    const spot = [...keys, id]
    if (observations.has(id)) {
      const before = report.findings.length
      const conditions = linkCondition(linking, { body: { id: name }, place }, id, authored, spot)
      // What was found wrong in it is not found once more in the question that would read it.
      if (report.findings.length > before) return []
      return conditions.map(condition => ({ condition, keys: spot }))
    }
    unknownName(report, 'unknown-observation', place(spot), id, observations.keys(), because)
    return []
  })
}

import type { Loaded } from '../load/load.ts'
import type { WalkReport } from '../report/report.ts'
import { CAUTIONS } from '../tree/cautions.ts'
import { alarmsOf } from '../words/alarms.ts'
import { saidCall } from '../words/said-call.ts'
import { citedBy } from '../words/sources.ts'
import { cautionText } from '../words/tree-texts.ts'
import { verdictText } from '../words/verdict-text.ts'
import type { Words } from '../words/words.ts'

/** A report as one object for other programs: ids for them, sentences for people. */
export function reportJson(report: WalkReport, words: Words, sources: Loaded['sources']) {
  const { tree, advice, evaluation } = report
  const { walk, settled } = evaluation
  const { person, container, batch, use, atLeast } = evaluation.possible
  const texts = (steps: readonly string[] = []) => steps.map(step => words.t(`steps:${step}`))
  const verdict = advice?.verdict ?? null
  return {
    tree: tree.id,
    edition: tree.edition,
    fingerprint: tree.fingerprint,
    draft: tree.review.state === 'draft',
    review: { ...tree.review, overdue: report.overdue },
    finished: walk.finished,
    verdict,
    also: advice?.also ?? [],
    use: walk.finished ? walk.outcome.use : null,
    atLeast,
    asks: walk.asks?.observation ?? null,
    // Nothing still open could change the verdicts, the use, a step, a call or a day.
    settled: settled !== null,
    possible: { person: ids(person), container: ids(container), batch: ids(batch), use },
    // What cannot wait for the end: of a finished walk the verdict says it.
    alarms: walk.finished
      ? []
      : alarmsOf(tree, atLeast, words).map(({ id, message }) => ({ id, message })),
    trail: walk.trail.map(({ question, observation, answer, because, raised, settledBy }) => ({
      question,
      observation,
      // Null where a question reads only what was volunteered, and nothing was.
      answer: answer ?? null,
      because,
      raised,
      ...(settledBy && { settledBy })
    })),
    notes: advice ? [...advice.notes, ...advice.change] : walk.outcome.notes,
    // The sentences of the notes, in the same order.
    noteTexts: (advice ? [...advice.notes, ...advice.change] : walk.outcome.notes).map(note =>
      words.t(`notes:${note}`)
    ),
    doNow: texts(advice?.doNow),
    later: texts(report.emergency ? [] : advice?.later),
    clean: texts(advice?.clean),
    keep: texts(advice?.keep),
    startAgain: texts(advice?.startAgain),
    referral: report.referrals.map(referral => saidCall(referral, words)),
    message:
      verdict &&
      verdictText(words, tree.id, verdict, 'message', {
        use: walk.outcome.use,
        manner: advice?.manner ?? 'plain'
      }),
    cautions: CAUTIONS.map(caution => cautionText(words, tree.id, caution)),
    followUps: (advice?.followUps ?? []).map(({ id, because }) => ({
      id,
      ask: words.t(`follow-ups:${id}.ask`),
      answer: words.t(`follow-ups:${id}.answer`),
      because
    })),
    recheck: advice?.recheck ?? null,
    sources: citedBy(report, sources).map(({ id, title, publisher, year, address }) => ({
      id,
      title,
      publisher,
      year,
      address
    })),
    // What ended the walk while questions were still open.
    ...(report.emergency && { stopped: 'emergency' })
  }
}

/** That a track can also stay silent is told by `atLeast`. */
const ids = (list: readonly (string | null)[]) => list.filter(id => id !== null)

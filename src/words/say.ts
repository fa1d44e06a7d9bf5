import { isDiscarded, type SpokenAdvice } from '../evaluate/advice.ts'
import type { Report } from '../report/report.ts'
import { verdict } from '../tree/caution.ts'
import { type Caution, HOWEVER_IT_LOOKS } from '../tree/cautions.ts'
import type { Track } from '../tree/observation.ts'
import type { Recheck, Signal } from '../tree/tree.ts'
import { knownLines } from './known.ts'
import { reasonFor } from './reason.ts'
import { type SaidBringIn, type SaidCall, saidBringIn, saidCall } from './said-call.ts'
import { type CitedSource, citedBy, entriesOf, type SourceLedger } from './sources.ts'
import type { TextKey } from './text-key.ts'
import { cautionText, rulesOfThumb } from './tree-texts.ts'
import { verdictText } from './verdict-text.ts'
import type { Words } from './words.ts'

/** A finished walk in one language, in the order in which it is needed; every form arranges this. */
export interface Said {
  /** Person, container, batch: the first is said first. */
  readonly verdicts: readonly SaidVerdict[]
  /** What may be drunk; null in an emergency, where nobody asks. */
  readonly use: string | null
  readonly doNow: readonly string[]
  /** What is done once that is done. */
  readonly later: readonly string[]
  readonly recheck: string | null
  readonly sections: readonly Section[]
  readonly calls: readonly SaidCall[]
  /** Where what is still to be measured can be brought, in a heading and its lines. */
  readonly bringIn: SaidBringIn | null
  /** What is wrong with the office's numbers, when something is. */
  readonly officeDoubt: string | null
  /** What callers ask next, each with its answer. */
  readonly followUps: readonly SaidFollowUp[]
  readonly sources: readonly CitedSource[]
  readonly standing: Standing
  readonly emergency: boolean
}

export interface SaidVerdict {
  readonly id: string
  readonly track: Track
  readonly signal: Signal
  /** The signal word; null for a gentle verdict. */
  readonly signalWord: string | null
  readonly name: string
  /** Null where nobody is to act on it: inside a jar that may burst. */
  readonly message: string | null
  readonly why: string | null
}

export interface SaidFollowUp {
  readonly id: string
  readonly ask: string
  readonly answer: string
  readonly sources: readonly CitedSource[]
}

export interface Section {
  readonly id: SectionId
  readonly title: string
  readonly lines: readonly string[]
  /** What stays in sight on a screen that folds the rest: one of the lines, or all of them in one sentence. */
  readonly brief?: string
}

export type SectionId =
  | 'clean-up'
  | 'keep'
  | 'start-again'
  | 'what-it-means'
  | 'what-to-change'
  | 'rules-of-thumb'
  | 'who-must-not'
  | 'medical-help'
  | 'keep-in-mind'
  | 'what-is-known'

/** Which tree speaks, and how far it is reviewed. */
export interface Standing {
  readonly title: string
  readonly edition: string
  readonly draft: string | null
  readonly overdue: string | null
  readonly due: string
}

/** Words a finished report. @throws Error for an unfinished one: half a walk could reassure too early. */
export function say(report: Report, words: Words, ledger: SourceLedger): Said {
  const { advice, emergency, tree } = report
  if (advice === null) throw new Error(`the walk of ${tree.id} is not finished`)
  return {
    verdicts: saidVerdicts(report, advice, words),
    use: emergency ? null : useText(report, words),
    doNow: advice.doNow.map(step => words.t(`steps:${step}`)),
    later: (emergency ? [] : advice.later).map(step => words.t(`steps:${step}`)),
    recheck: advice.recheck && recheckText(words, advice.recheck),
    sections: sectionsOf(report, advice, words, ledger),
    calls: report.referrals.map(referral => saidCall(referral, words)),
    bringIn: report.bringIn && saidBringIn(report.bringIn, words),
    officeDoubt:
      emergency || report.office === 'current'
        ? null
        : words.t(`ui:referral.office-${report.office}.say`),
    followUps: advice.followUps.map(({ id, because }) => ({
      id,
      ask: words.t(`follow-ups:${id}.ask`),
      answer: words.t(`follow-ups:${id}.answer`),
      sources: entriesOf(because, ledger)
    })),
    sources: emergency ? [] : citedBy(report, ledger),
    standing: standingOf(report, words),
    emergency
  }
}

/** What may be drunk: in a batch's own words for this use where it has some. */
function useText({ tree, outcome, general }: Report, words: Words): string {
  // Where no jar was looked at, the check that is missing is named in full.
  const check: TextKey = `${tree.id}:use.${outcome.use}-in-general`
  if (general && words.has(check)) return words.t(check)
  const own: TextKey = `${tree.id}:verdicts.${outcome.batch}.use-${outcome.use}`
  const others = outcome.container !== null || !words.has(own)
  return words.t(others ? `${tree.id}:use.${outcome.use}` : own)
}

function saidVerdicts(report: Report, advice: SpokenAdvice, words: Words): readonly SaidVerdict[] {
  const { tree, outcome, emergency } = report
  const ids = verdictsIn(advice)
  const occasion = { use: outcome.use, manner: advice.manner }
  return ids.map(id => {
    const { track, signal } = verdict(tree, id)
    const idle = advice.manner === 'leave-it' && track === 'batch'
    return {
      id,
      track,
      signal,
      signalWord: signal === 'none' ? null : words.t(`ui:signal.${signal}`),
      name: verdictText(words, tree.id, id, 'name'),
      message: idle ? null : verdictText(words, tree.id, id, 'message', occasion),
      // What would show more of a batch is nothing to do where nobody goes back to it.
      why: emergency || idle ? null : whyText(report, advice, id, words)
    }
  })
}

const verdictsIn = ({ verdict, also }: SpokenAdvice): readonly string[] =>
  [verdict, ...also].filter(id => id !== null)

/** Why, of the caller's own jar where an answer said it; else of the verdict. */
function whyText({ tree }: Report, advice: SpokenAdvice, id: string, words: Words): string {
  const reason = reasonFor(tree, id, advice.notes)
  return reason === null ? verdictText(words, tree.id, id, 'why') : words.t(`notes:${reason}`)
}

/** The notes that no verdict has said as its reason. */
function notesBeside({ tree, emergency }: Report, advice: SpokenAdvice): readonly string[] {
  if (emergency || advice.manner === 'leave-it') return advice.notes
  const said = new Set(verdictsIn(advice).map(id => reasonFor(tree, id, advice.notes)))
  return advice.notes.filter(note => !said.has(note))
}

function sectionsOf(
  report: Report,
  advice: SpokenAdvice,
  words: Words,
  ledger: SourceLedger
): readonly Section[] {
  const { tree, outcome, emergency, general } = report
  // An amount beside "do not drink it yet" would be read as leave to drink that much.
  const howMuch: readonly Caution[] = outcome.use === 'as-directed' ? ['how-much'] : []
  // "Throw it out" must not stand beside "keep it" for somebody who needs help; and what goes leaves no doubt.
  const discarded = isDiscarded(tree, outcome)
  const doubted = outcome.person === null && !discarded
  const inDoubt: readonly Caution[] = doubted ? ['when-in-doubt'] : []
  const gentle =
    advice.manner === 'plain' &&
    outcome.batch !== null &&
    verdict(tree, outcome.batch).ceiling === 'as-directed'
  const only: readonly SectionId[] | null = emergency ? (general ? ['medical-help'] : []) : null
  const steps = (ids: readonly string[]) => ids.map(id => words.t(`steps:${id}`))
  const notes = (ids: readonly string[]) => ids.map(id => words.t(`notes:${id}`))
  const cautions = (ids: readonly Caution[]) => ids.map(id => cautionText(words, tree.id, id))
  // The lists of signs would be read as a warning of a batch that looks well, and nobody is ill.
  const medicalHelp =
    gentle && outcome.person === null
      ? [words.t('ui:medical-help-in-brief')]
      : cautions(['call-911', 'call-doctor', 'call-poison-help'])
  const asks = tree.advice.unsureNote.person
  const mayBeIll = outcome.person !== null || (asks !== undefined && outcome.notes.includes(asks))
  const however: TextKey = `${tree.id}:cautions.${HOWEVER_IT_LOOKS}`
  const looksMislead = !discarded && words.has(however) ? [words.t(however)] : []
  const who = cautionText(words, tree.id, 'who-must-not')
  // Beside a look that is normal it stands in sight: there it could be read as leave to drink.
  const whoMustNot = gentle ? [[who, ...looksMislead].join(' ')] : [who, ...looksMislead]
  const briefs: Readonly<Partial<Record<SectionId, string>>> = {
    'who-must-not': whoMustNot[0] ?? who,
    ...(!mayBeIll && !emergency && { 'medical-help': words.t('ui:medical-help-in-brief') })
  }
  const all: [SectionId, readonly string[]][] = [
    ['what-it-means', notes(notesBeside(report, advice))],
    ['keep', steps(advice.keep)],
    ['clean-up', steps(advice.clean)],
    ['start-again', steps(advice.startAgain)],
    ['what-to-change', notes(advice.change)],
    // For whoever brews on; beside a batch that goes they would only be in the way.
    ['rules-of-thumb', gentle ? rulesOfThumb(words, tree.id) : []],
    ['who-must-not', [...whoMustNot, ...cautions([...howMuch, 'acid-lowers-the-risk'])]],
    ['medical-help', medicalHelp],
    ['keep-in-mind', cautions(['not-proof', 'no-tested-recipe', ...inDoubt])],
    ['what-is-known', knownLines(report, ledger, words)]
  ]
  return all
    .filter(([id, lines]) => lines.length > 0 && (only === null || only.includes(id)))
    .map(([id, lines]) => {
      const brief = briefs[id]
      return { id, title: words.t(`ui:${id}`), lines, ...(brief !== undefined && { brief }) }
    })
}

/** When to look again, in words. */
export function recheckText(words: Words, recheck: Recheck): string {
  if ('day' in recheck) return words.t('ui:recheck-day', { day: recheck.day })
  const [from, to] = recheck.hours
  if (from === to && to >= 72) return words.t('ui:recheck-days', { days: Math.round(to / 24) })
  if (from === to) return words.t('ui:recheck-hours-exact', { to })
  // Nobody counts two days and more in hours.
  if (from >= 48) return words.t('ui:recheck-between-days', { from: from / 24, to: to / 24 })
  return words.t(`ui:recheck-hours${from === 0 ? '-within' : ''}`, { from, to })
}

export function standingOf(
  { tree, overdue }: Pick<Report, 'tree' | 'overdue'>,
  words: Words
): Standing {
  const { id, edition, review } = tree
  return {
    title: words.t(`${id}:title`),
    edition: words.t('ui:edition', { edition }),
    draft: review.state === 'draft' ? words.t('ui:draft') : null,
    overdue: overdue ? words.t('ui:overdue', { due: review.due }) : null,
    due: review.due
  }
}

import { numbersOf } from '../office/constants.ts'
import type { Referral } from '../office/referral.ts'
import type { Report } from '../office/report.ts'
import type { SpokenAdvice } from '../tree/advice.ts'
import { verdict } from '../tree/caution.ts'
import type { Track } from '../tree/observation.ts'
import type { Recheck, Signal } from '../tree/tree.ts'
import { type CitedSource, citedBy, type SourceLedger } from './sources.ts'
import { type Caution, cautionText, rulesOfThumb } from './tree-texts.ts'
import { verdictText } from './verdict-text.ts'
import type { Words } from './words.ts'

/** A finished walk in one language, in the order in which it is needed; every form arranges this. */
export interface Said {
  /** Person, container, batch: the first is said first. */
  readonly verdicts: readonly SaidVerdict[]
  /** What may be drunk; null in an emergency, where nobody asks. */
  readonly use: string | null
  readonly doNow: readonly string[]
  readonly recheck: string | null
  readonly sections: readonly Section[]
  readonly calls: readonly SaidCall[]
  /** What is wrong with the office's numbers, when something is. */
  readonly officeDoubt: string | null
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

export interface Section {
  readonly id: SectionId
  readonly title: string
  readonly lines: readonly string[]
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

export interface SaidCall {
  readonly to: string
  readonly name: string
  readonly phone: string | null
  readonly say: string
}

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
    use: emergency ? null : words.t(`${tree.id}:use.${report.walk.outcome.use}`),
    doNow: advice.doNow.map(step => words.t(`steps:${step}`)),
    recheck: advice.recheck && recheckText(words, advice.recheck),
    sections: emergency ? [] : sectionsOf(report, advice, words),
    calls: report.referrals.map(referral => saidCall(referral, words)),
    officeDoubt:
      emergency || report.office === 'current'
        ? null
        : words.t(`ui:referral.office-${report.office}.say`),
    sources: emergency ? [] : citedBy(report, ledger),
    standing: standingOf(report, words),
    emergency
  }
}

function saidVerdicts(report: Report, advice: SpokenAdvice, words: Words): readonly SaidVerdict[] {
  const { tree, walk, emergency } = report
  const ids = [advice.verdict, ...advice.also].filter(id => id !== null)
  const occasion = { use: walk.outcome.use, manner: advice.manner }
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
      why: emergency ? null : verdictText(words, tree.id, id, 'why')
    }
  })
}

function sectionsOf({ tree }: Report, advice: SpokenAdvice, words: Words): readonly Section[] {
  const steps = (ids: readonly string[]) => ids.map(id => words.t(`steps:${id}`))
  const notes = (ids: readonly string[]) => ids.map(id => words.t(`notes:${id}`))
  const cautions = (ids: readonly Caution[]) => ids.map(id => cautionText(words, tree.id, id))
  const all: [SectionId, readonly string[]][] = [
    ['clean-up', steps(advice.clean)],
    ['keep', steps(advice.keep)],
    ['start-again', steps(advice.startAgain)],
    ['what-it-means', notes(advice.notes)],
    ['what-to-change', notes(advice.change)],
    ['rules-of-thumb', advice.startAgain.length > 0 ? rulesOfThumb(words, tree.id) : []],
    ['who-must-not', cautions(['who-must-not', 'how-much'])],
    ['medical-help', cautions(['call-911', 'call-doctor', 'call-poison-help'])],
    ['keep-in-mind', cautions(['not-proof', 'no-tested-recipe', 'when-in-doubt'])]
  ]
  return all
    .filter(([, lines]) => lines.length > 0)
    .map(([id, lines]) => ({ id, title: words.t(`ui:${id}`), lines }))
}

/** When to look again, in words. */
export function recheckText(words: Words, recheck: Recheck): string {
  if ('day' in recheck) return words.t('ui:recheck-day', { day: recheck.day })
  const [from, to] = recheck.hours
  if (from === to) return words.t('ui:recheck-hours-exact', { to })
  return words.t(`ui:recheck-hours${from === 0 ? '-within' : ''}`, { from, to })
}

/** The two numbers that stand at the foot of every screen, whatever the office. */
export function footNumbers(
  words: Words,
  country: string | undefined
): readonly { readonly name: string; readonly phone: string }[] {
  const { emergency, poisonHelp } = numbersOf(country)
  return [
    { name: words.t('ui:referral.emergency.name'), phone: emergency },
    { name: words.t('ui:referral.poison-help.name'), phone: poisonHelp }
  ]
}

export function saidCall({ to, name, phone, say: told }: Referral, words: Words): SaidCall {
  return {
    to,
    name: name ?? words.t(`ui:referral.${to}.name`),
    phone,
    say: told ?? words.t(`ui:referral.${to}.say`)
  }
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

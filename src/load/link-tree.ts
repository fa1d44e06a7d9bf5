import { inputsOf } from '../tree/derived.ts'
import { must } from '../tree/must.ts'
import { TRACKS } from '../tree/observation.ts'
import type { Question, Rule, SpokenRule, Tree } from '../tree/tree.ts'
import { buildAdvice } from './build-advice.ts'
import { inWalkOrder } from './circuit.ts'
import { checkCountedDays } from './counted-days.ts'
import { type Draft, expand } from './expand.ts'
import { checkTold, unfoldInstead } from './instead.ts'
import { leadToLast } from './lead-to-last.ts'
import { linkLaws } from './link-laws.ts'
import { linkAfter, linkQuestion } from './link-question.ts'
import { type DraftRule, linkRule, type Sayable } from './link-rule.ts'
import { type Linking, unknownName } from './linking.ts'
import { withoutUsual } from './never-applies.ts'
import type { AuthoredProject, Shaped } from './project.ts'
import { type FindingReport, openReport } from './report.ts'
import type { AuthoredRules } from './schemas/rules.ts'
import type { AuthoredDeeds } from './schemas/steps.ts'
import type { AuthoredTree } from './schemas/tree.ts'
import type { AuthoredVerdicts } from './schemas/verdicts.ts'
import { checkUse } from './unused.ts'

/** A tree but for its fingerprints, with its draft, which knows the places of its parts. */
export interface LinkedTree {
  readonly tree: Omit<Tree, 'fingerprint' | 'wordsFingerprint'>
  readonly draft: Draft
  readonly rules: readonly DraftRule[]
}

type Catalogue = Pick<Linking, 'observations' | 'verdicts' | 'sources'>

/** What all trees say alike, and what each step does. */
interface SharedAdvice {
  readonly verdicts: Shaped<AuthoredVerdicts>
  readonly steps: Shaped<AuthoredDeeds>
}

/** Expands one tree, links its names and looks at it as a whole. Null when a finding was reported. */
export function linkTree(
  authored: Shaped<AuthoredTree>,
  project: AuthoredProject,
  shared: SharedAdvice,
  catalogue: Catalogue,
  to: FindingReport
): LinkedTree | null {
  const report = openReport()
  const { observations } = catalogue
  const draft = unfoldInstead(expand(authored, project.pieces, report), { observations, report })
  const notes = new Set(draft.notes.keys())
  const linking: Linking = { ...catalogue, report, notes, notesAdded: new Set() }
  const rules = draftRules(authored, project, report)
  const unfound = project.rules.get(authored.value.id)?.value['unfound-faults'] ?? {}
  const linked = link(linking, authored, shared, draft, rules, unfound)
  to.findings.push(...report.findings)
  return report.findings.length > 0 ? null : linked
}

function link(
  linking: Linking,
  authored: Shaped<AuthoredTree>,
  shared: SharedAdvice,
  draft: Draft,
  draftedRules: readonly DraftRule[],
  unfound: Tree['unfoundFaults']
): LinkedTree | null {
  const { report, observations } = linking
  const written = new Map<string, Question>()
  for (const each of draft.questions.values()) {
    const question = linkQuestion(linking, each)
    if (question) written.set(each.id, question)
  }
  const questions = draft.last === undefined ? written : leadToLast(written, draft.last)
  const after = draft.after.flatMap(each => linkAfter(linking, each) ?? [])
  const asked = new Set([...questions.values()].map(({ asks }) => asks))
  const advice = buildAdvice(linking, shared.verdicts, shared.steps, authored, draft.notes)
  checkUnsureNotes(linking, shared.verdicts, asked)
  checkCountedDays(linking, authored, asked, draft.notes)
  const allRules = linkRules(linking, draftedRules, asked, {
    here: new Set(Object.keys(advice.does)),
    anywhere: new Set(Object.keys(shared.steps.value.steps))
  })
  const rules = allRules.flatMap(rule => ('claim' in rule ? [rule] : []))
  const spokenRules = allRules.flatMap(rule => ('claim' in rule ? [] : [rule]))
  const laws = linkLaws(linking, authored, shared.steps, advice, asked)
  checkUsual(linking, allRules, asked, draft)
  // What is unreachable or unused is a guess while names are wrong.
  if (report.findings.length > 0) return null
  const order = inWalkOrder(questions, draft.start, draft.questions, report)
  checkUse(linking, [...questions.values()], asked, draft)
  checkTold(draft, questions, report)
  if (!order || report.findings.length > 0) return null
  const shown = [...order, ...after].map(({ asks }) => asks)
  // What something asked is worked out from can be told as well, though no question asks it.
  const inOrder = new Set([...shown, ...shown.flatMap(name => inputsOf(observations.get(name)))])
  const { id, edition, review, picture, order: rank, 'counts-days': countsDays } = authored.value
  return {
    tree: {
      id,
      edition,
      review,
      ...(picture !== undefined && { picture }),
      ...(rank !== undefined && { order: rank }),
      ...(countsDays !== undefined && { countsDays }),
      verdicts: [...linking.verdicts.values()],
      observations: Object.fromEntries(
        [...inOrder].map(name => [name, must(observations.get(name), 'observation')])
      ),
      start: draft.start,
      questions: Object.fromEntries(order.map(question => [question.id, question])),
      after,
      rules,
      spokenRules,
      ...laws,
      unfoundFaults: unfound,
      advice
    },
    draft,
    rules: draftedRules
  }
}

/**
 * The rules of a tree, in its file or in one of their own, those of `shared/rules` that it takes in, and those of
 * its pieces under their prefix.
 */
function draftRules(
  { value, doc }: Shaped<AuthoredTree>,
  project: AuthoredProject,
  report: FindingReport
): readonly DraftRule[] {
  const apart = project.rules.get(value.id)
  const pieces = Object.keys(value.pieces ?? {}).flatMap(id => project.pieces.get(id) ?? [])
  return [
    ...pieces.map(piece => ({
      doc: piece.doc,
      prefix: `${piece.value.id}-`,
      rules: piece.value.rules ?? []
    })),
    { doc, prefix: '', rules: value.rules ?? [] },
    ...(apart ? [...sharedRules(apart, project, report), apart] : []).map(each => ({
      doc: each.doc,
      prefix: '',
      rules: each.value.rules
    }))
  ].flatMap(({ doc, prefix, rules }) =>
    rules.map((body, index) => ({
      body: { ...body, id: `${prefix}${body.id}` },
      place: (keys, part) => doc.place(['rules', index, ...keys], part)
    }))
  )
}

function sharedRules(
  { value, doc }: Shaped<AuthoredRules>,
  project: AuthoredProject,
  report: FindingReport
): readonly Shaped<AuthoredRules>[] {
  return (value.with ?? []).flatMap((name, index) => {
    const rules = project.sharedRules.get(name)
    if (rules !== undefined) return rules
    const file = `shared/rules/${name}.yaml`
    const facts = { file, holds: 'rules that several trees share' }
    report.add('missing-file', doc.place(['with', index], 'value'), facts)
    return []
  })
}

/** Reports each thing asked of which nothing is usual, once, and not at every rule that trips over it. */
function checkUsual(
  { report, observations }: Linking,
  rules: readonly (Rule | SpokenRule)[],
  asked: ReadonlySet<string>,
  draft: Draft
): void {
  for (const observation of withoutUsual(observations, asked)) {
    const stuck = rules.filter(
      rule => rule.restUsual && rule.when.every(each => each.observation !== observation)
    )
    const question = [...draft.questions.values()].find(({ body }) => body.asks === observation)
    if (stuck.length === 0 || question === undefined) continue
    const facts = { observation, rules: stuck.length }
    report.add('no-usual-answer', question.place(['asks'], 'value'), facts, question.because)
  }
}

function linkRules(
  linking: Linking,
  drafts: readonly DraftRule[],
  asked: ReadonlySet<string>,
  steps: Sayable
): readonly (Rule | SpokenRule)[] {
  const first = new Map<string, DraftRule>()
  return drafts.flatMap(draft => {
    const { id } = draft.body
    const before = first.get(id)
    if (before) {
      linking.report.add('duplicate-id', draft.place(['id'], 'value'), { what: 'rule', id }, [
        { label: 'First here', place: before.place(['id'], 'value') }
      ])
    } else first.set(id, draft)
    return linkRule(linking, draft, asked, steps) ?? []
  })
}

/** Where a tree asks about a track whose unsure note is named, it must have that note. */
function checkUnsureNotes(
  { report, observations, notes }: Linking,
  { value, doc }: Shaped<AuthoredVerdicts>,
  asked: ReadonlySet<string>
): void {
  for (const track of TRACKS) {
    const note = value['unsure-note'][track]
    const asks = [...asked].some(id => observations.get(id)?.about === track)
    if (note === undefined || !asks || notes.has(note)) continue
    unknownName(report, 'unknown-note', doc.place(['unsure-note', track], 'value'), note, notes)
  }
}

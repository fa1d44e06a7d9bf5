import type { Place } from '../findings/place.ts'
import { ANY_FERMENT, type KnowHow } from '../tree/know-how.ts'
import type { Rule } from '../tree/tree.ts'
import type { Keys } from './authored.ts'
import { asRead, limitsAt, measuresOf, NAMES, numbersIn, PATTERNS } from './check-numbers.ts'
import { SOURCE_TAG } from './check-words.ts'
import { treeAt } from './kinds-of-file.ts'
import { linkConjunction } from './link-rule.ts'
import type { LinkedTree } from './link-tree.ts'
import { unknownName } from './linking.ts'
import { neverApplies } from './never-applies.ts'
import type { AuthoredProject, Shaped } from './project.ts'
import type { FindingReport } from './report.ts'
import { listed } from './schemas/common.ts'
import type { AuthoredAnswer, AuthoredKnowHow } from './schemas/know-how.ts'
import { textsIn } from './texts.ts'

/** An answer says no more than this: it is read aloud while somebody waits. */
const MOST_SENTENCES = 3
const SENTENCE = /(?<=[.!?]”?)\s+/

/** The answers to how-to questions, and what has to hold of the trees for them. */
export interface LoadedKnowHow {
  readonly answers: readonly KnowHow[]
  /** What callers call each food, by ferment, in every language at once. */
  readonly called: Readonly<Record<string, readonly string[]>>
  /** By tree: for each answer that allows its food, the rule by which the tree allows it as well. */
  readonly allowed: Readonly<Record<string, readonly Rule[]>>
  /** The place of each such rule, as places of a tree name it: `rules/<id>`. */
  readonly places: Readonly<Record<string, Place>>
}

/** One answer as authored, and where its parts stand. */
interface Draft {
  readonly id: string
  readonly body: AuthoredAnswer
  place(keys: Keys, part?: 'key' | 'value'): Place
}

/** Reads the answers, and reports names that refer to nothing. */
export function knowHowOf(
  project: AuthoredProject,
  linked: readonly LinkedTree[],
  paths: ReadonlySet<string>,
  report: FindingReport
): LoadedKnowHow {
  const sources = Object.keys(project.sources?.value ?? {})
  // A tree that is there but out of shape has its own findings: it is not unknown.
  const trees = [...paths].flatMap(path => treeAt(path) ?? [])
  const first = new Map<string, Place>()
  const answers: KnowHow[] = []
  const allowed = new Map<string, Rule[]>()
  const places: Record<string, Place> = {}
  for (const [ferment, file] of project.knowHow) {
    if (ferment !== ANY_FERMENT && !trees.includes(ferment)) {
      unknownName(report, 'unknown-tree', file.doc.place(['answers']), ferment, trees)
    }
    for (const draft of draftsOf(file)) {
      const { id, body, place } = draft
      const before = first.get(id)
      if (before) {
        const because = [{ label: 'First here', place: before }]
        report.add('duplicate-id', place([]), { what: 'answer', id }, because)
      }
      first.set(id, before ?? place([]))
      const because = listed(body.because)
      for (const [index, name] of because.entries()) {
        if (project.sources && !sources.includes(name))
          unknownName(report, 'unknown-source', place(['because', index], 'value'), name, sources)
      }
      for (const key of ['limits', 'allows'] as const) {
        for (const tree of Object.keys(body[key] ?? {})) {
          if (!trees.includes(tree))
            unknownName(report, 'unknown-tree', place([key, tree]), tree, trees)
        }
      }
      for (const { tree } of linked) {
        const rule = allowedBy(draft, tree, report)
        if (rule === null) continue
        allowed.set(tree.id, [...(allowed.get(tree.id) ?? []), rule])
        places[`rules/${rule.id}`] = place(['allows', tree.id])
      }
      const { basis, beyond, review = file.value.review, warns = false } = body
      const inClass = body.class === true
      const pictures = body.pictures ?? []
      answers.push({ id, ferment, because, basis, beyond, review, warns, inClass, pictures })
    }
  }
  const called = [...project.knowHow].flatMap(([ferment, { value }]) =>
    value.called ? [[ferment, Object.values(value.called).flat()] as const] : []
  )
  return {
    answers,
    called: Object.fromEntries(called),
    allowed: Object.fromEntries(allowed),
    places
  }
}

const draftsOf = ({ value, doc }: Shaped<AuthoredKnowHow>): readonly Draft[] =>
  Object.entries(value.answers).map(([id, body]) => ({
    id,
    body,
    place: (keys, part) => doc.place(['answers', id, ...keys], part)
  }))

/** What an answer allows, as a rule of the tree: then it may be had, if all else looks ordinary. */
function allowedBy(
  { id, body, place }: Draft,
  tree: LinkedTree['tree'],
  report: FindingReport
): Rule | null {
  const allows = body.allows?.[tree.id]
  if (allows === undefined) return null
  const before = report.findings.length
  const observations = new Map(Object.entries(tree.observations))
  const asked = new Set(Object.values(tree.questions).map(({ asks }) => asks))
  const name = `know-how-${id}`
  const linking = {
    report,
    observations,
    verdicts: new Map(tree.verdicts.map(verdict => [verdict.id, verdict])),
    sources: new Set<string>(),
    notes: new Set<string>(),
    notesAdded: new Set<string>()
  }
  const when = linkConjunction(
    linking,
    { body: { id: name }, place },
    allows,
    ['allows', tree.id],
    asked
  )
  const rule: Rule = {
    id: name,
    when,
    unless: [],
    restUsual: true,
    claim: { kind: 'use-at-least', use: 'as-directed' },
    basis: body.basis,
    because: listed(body.because)
  }
  if (report.findings.length > before) return null
  const why = neverApplies(rule, observations)
  if (why !== null)
    report.add('rule-never-applies', place(['allows', tree.id]), { rule: name, why })
  return why === null ? rule : null
}

/**
 * Holds what the answers say against what the trees decide: a limit of a tree that an answer says is bound
 * to it, so that neither can be moved alone. A pH or a day that no tree decides by is listed.
 */
export function checkKnowHow(
  { knowHow, words }: AuthoredProject,
  linked: readonly LinkedTree[],
  report: FindingReport
): void {
  const english = words.get(SOURCE_TAG)?.get('know-how')
  const texts = textsIn(english?.value)
  for (const file of knowHow.values()) {
    for (const draft of draftsOf(file)) {
      const key = `${draft.id}.answer`
      const text = texts.get(key)
      if (text === undefined || english === undefined) continue
      const sentences = text.split(SENTENCE).length
      const place = english.doc.place(key.split('.'))
      if (sentences > MOST_SENTENCES) {
        report.add('answer-too-long', place, { answer: draft.id, sentences, most: MOST_SENTENCES })
      }
      const bound = checkLimits(draft, text, linked, report)
      for (const kind of ['ph', 'day'] as const) {
        for (const number of numbersIn(text, PATTERNS[kind])) {
          if (bound.has(number) || draft.body.states?.includes(number)) continue
          report.add('limit-not-bound', place, {
            answer: draft.id,
            number: `${NAMES[kind]} ${number}`
          })
        }
      }
    }
  }
}

/** The numbers that an answer binds, with what an instrument has to read for them. */
function checkLimits(
  { id, body, place }: Draft,
  text: string,
  linked: readonly LinkedTree[],
  report: FindingReport
): ReadonlySet<number> {
  const bound = new Set<number>()
  for (const [name, measures] of Object.entries(body.limits ?? {})) {
    const tree = linked.find(each => each.tree.id === name)?.tree
    if (!tree) continue
    const asked = measuresOf(tree)
    for (const [measure, numbers] of Object.entries(measures)) {
      const observation = asked.find(each => each.id === measure)
      if (!observation) {
        const spot = place(['limits', name, measure])
        unknownName(
          report,
          'unknown-observation',
          spot,
          measure,
          asked.map(each => each.id)
        )
        continue
      }
      const limits = limitsAt(tree, measure)
      for (const [index, number] of numbers.entries()) {
        const spot = place(['limits', name, measure, index], 'value')
        const facts = { answer: id, number, tree: name, measure }
        if (!limits.has(number)) {
          report.add('limit-not-decided', spot, { ...facts, known: [...limits].map(String) })
        }
        if (!says(text, number, observation.unit)) report.add('limit-not-said', spot, facts)
        for (const each of asRead(number, observation)) bound.add(each)
      }
    }
  }
  return bound
}

/** Whether a text says a number: `5` as `5.0` too, and whole weeks of days. */
function says(text: string, number: number, unit: string): boolean {
  const weeks = number / 7
  const said = [String(number), number.toFixed(1)]
  const numbers = [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([each]) => each)
  if (numbers.some(each => said.includes(each))) return true
  return unit === 'day' && Number.isInteger(weeks) && new RegExp(`\\b${weeks} weeks?\\b`).test(text)
}

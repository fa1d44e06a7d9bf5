import { spaceOf, type Variable, withValue } from '../../src/diagrams/space.ts'
import { walk } from '../../src/evaluate/walk.ts'
import {
  type Answer,
  type Answers,
  choiceOf,
  isInterval,
  type SignValue,
  signsOf
} from '../../src/tree/answers.ts'
import { join, level, NOTHING_YET, type Outcome, useLevel } from '../../src/tree/caution.ts'
import { decide } from '../../src/tree/decide.ts'
import { effectiveChoice } from '../../src/tree/effective.ts'
import { type Observation, TRACKS } from '../../src/tree/observation.ts'
import { holdsAll } from '../../src/tree/range.ts'
import type { Question, Rule, Tree } from '../../src/tree/tree.ts'
import { everySet, speaks } from '../helpers/brute-force.ts'

// The second opinion on the properties about answers: every set tried, judged by `walk()` alone.

/** The questions that lie on some walk. */
export function reachedQuestions(tree: Tree): ReadonlySet<string> {
  const reached = new Set<string>()
  for (const answers of everySet(tree)) {
    for (const { question } of walk(tree, answers).trail) reached.add(question)
  }
  return reached
}

/** The verdicts that some walk comes to. */
export function givenVerdicts(tree: Tree): ReadonlySet<string | null> {
  const given = new Set<string | null>()
  for (const answers of everySet(tree)) {
    const { outcome } = walk(tree, answers)
    for (const track of TRACKS) given.add(outcome[track])
  }
  return given
}

/** The questions on some walk at which another answer would make a difference. */
export function questionsThatMatter(tree: Tree): ReadonlySet<string> {
  const matter = new Set<string>()
  const variables = spaceOf(tree)
  for (const answers of everySet(tree)) {
    let outcome = NOTHING_YET
    for (const { question: id } of walk(tree, answers).trail) {
      const question = tree.questions[id] as Question
      const asked = variables.filter(({ observation }) => observation === question.asks)
      const own = said(from(tree, id, answers, outcome))
      const differs = (variable: Variable) =>
        variable.values.some(
          value => said(from(tree, id, withValue(answers, variable, value), outcome)) !== own
        )
      if (!matter.has(id) && asked.some(differs)) matter.add(id)
      const branch = decide(tree, question, answers)?.branch
      if (branch) outcome = join(tree, outcome, branch)
    }
  }
  return matter
}

/** What comes of the answers from a question on, after what was met before it. */
function from(tree: Tree, start: string, answers: Answers, before: Outcome): Outcome {
  let outcome = before
  for (let at = start; ; ) {
    const { branch } = decide(tree, tree.questions[at] as Question, answers) ?? {}
    if (branch === undefined) throw new Error(`${at} was not told`)
    const { leads } = branch
    if ('end' in leads) return join(tree, outcome, branch, leads.end)
    outcome = join(tree, outcome, branch)
    at = leads.to
  }
}

/** The signs of which another value would change some outcome or note. */
export function signsThatMatter(tree: Tree): ReadonlySet<string> {
  const matter = new Set<string>()
  const signs = spaceOf(tree).filter(({ sign }) => sign !== undefined)
  for (const answers of everySet(tree)) {
    const own = said(walk(tree, answers).outcome)
    for (const variable of signs) {
      const differs = variable.values.some(
        value => said(walk(tree, withValue(answers, variable, value)).outcome) !== own
      )
      if (differs) matter.add(`${variable.observation} ${variable.sign}`)
    }
  }
  return matter
}

const said = (outcome: Outcome): string =>
  JSON.stringify({ ...outcome, notes: [...outcome.notes].sort() })

/** Whether not knowing never lets the batch be used where another answer would not. */
export function unsureNeverReassures(tree: Tree): boolean {
  const use = (answers: Answers) => useLevel(walk(tree, answers).outcome.use)
  for (const answers of everySet(tree)) {
    if (use(answers) > 0) continue
    const { trail } = walk(tree, answers)
    const passed = trail.map(({ question }) => tree.questions[question] as Question)
    for (const variable of spaceOf(tree)) {
      if (!inDoubt(passed, variable.observation, valueIn(answers, variable))) continue
      if (variable.values.some(value => use(withValue(answers, variable, value)) > 0)) return false
    }
  }
  return true
}

/** Unsure, or a reading that no range holds of some question on the walk. */
function inDoubt(
  passed: readonly Question[],
  id: string,
  told: Answer | SignValue | undefined
): boolean {
  if (told === 'unsure') return true
  return passed.some(
    question =>
      question.kind === 'measure' &&
      question.asks === id &&
      typeof told === 'object' &&
      isInterval(told) &&
      !question.ranges.some(({ range }) => holdsAll(range, told))
  )
}

const valueIn = (answers: Answers, { observation, sign }: Variable) =>
  sign === undefined ? answers[observation] : signsOf(answers, observation)[sign]

/** Whether every unsure danger sign waits, minds the pressure, or asks after the person. */
export function unsureDangerIsMet(tree: Tree): boolean {
  const { person: note = '' } = tree.advice.unsureNote
  for (const answers of everySet(tree)) {
    const { batch, container, use, notes } = walk(tree, answers).outcome
    const waits = level(tree, 'batch', batch) >= level(tree, 'batch', 'wait-and-recheck')
    const met = {
      batch: waits,
      container: waits && container !== null,
      person: use !== 'as-directed' && notes.includes(note)
    }
    for (const variable of spaceOf(tree)) {
      if (valueIn(answers, variable) !== 'unsure') continue
      const { observation: id, sign } = variable
      const settling = Object.values(tree.observations).filter(
        one => one.kind === 'choice' && one.settles === id && asks(tree, one.id)
      )
      for (const observation of [tree.observations[id] as Observation, ...settling]) {
        if (isDanger(observation, sign) && !met[observation.about]) return false
      }
    }
  }
  return true
}

const asks = (tree: Tree, id: string): boolean =>
  Object.values(tree.questions).some(question => question.asks === id)

function isDanger(observation: Observation, sign: string | undefined): boolean {
  if (observation.kind === 'choice') return observation.answers.some(({ danger }) => danger)
  return observation.kind === 'signs' && observation.signs.some(s => s.danger && s.id === sign)
}

/** The danger signs that some rule forbids to end gently, whatever else is told. */
export function coveredDangers(tree: Tree): ReadonlySet<string> {
  const bare = new Set<string>()
  const all = new Set<string>()
  for (const answers of everySet(tree)) {
    for (const { name, observation, answer } of dangersTold(tree, answers)) {
      all.add(name)
      const held = tree.rules.some(
        rule =>
          speaks(tree, rule, answers) &&
          forbids(tree, rule, observation) &&
          rule.when.some(
            one =>
              one.kind !== 'measure' &&
              one.observation === observation.id &&
              (one.kind === 'choice'
                ? one.among.includes(answer)
                : one.sign === answer && one.among.includes('yes'))
          )
      )
      if (!held) bare.add(name)
    }
  }
  return new Set([...all].filter(name => !bare.has(name)))
}

function dangersTold(tree: Tree, answers: Answers) {
  return Object.values(tree.observations)
    .filter(({ id }) => asks(tree, id))
    .flatMap(observation => {
      if (observation.kind === 'measure') return []
      const marked = observation.kind === 'choice' ? observation.answers : observation.signs
      return marked
        .filter(({ danger }) => danger)
        .filter(({ id }) =>
          observation.kind === 'choice'
            ? effectiveChoice(tree, observation, answers)?.answer === id
            : signsOf(answers, observation.id)[id] === 'yes'
        )
        .map(({ id }) => ({ name: `${observation.id} ${id}`, observation, answer: id }))
    })
}

function forbids(tree: Tree, { claim }: Rule, { about }: Observation): boolean {
  switch (claim.kind) {
    case 'use-at-most':
    case 'use-is':
      return claim.use !== 'as-directed'
    case 'at-least': {
      const { track, ceiling } = tree.verdicts.find(({ id }) => id === claim.verdict) ?? {}
      return track === about && (track !== 'batch' || ceiling !== 'as-directed')
    }
    default:
      return false
  }
}

/** Whether a second answer beside a known one never makes any side gentler. */
export function secondAnswerNeverReassures(tree: Tree): boolean {
  const levels = ({ person, container, batch, use }: Outcome) => [
    level(tree, 'person', person),
    level(tree, 'container', container),
    level(tree, 'batch', batch),
    useLevel(use)
  ]
  for (const settler of Object.values(tree.observations)) {
    if (settler.kind !== 'choice' || settler.settles === undefined) continue
    for (const answers of everySet(tree)) {
      if (choiceOf(answers, settler.settles) === 'unsure') continue
      const before = levels(walk(tree, answers).outcome)
      for (const { id } of settler.answers) {
        const after = levels(walk(tree, { ...answers, [settler.id]: id }).outcome)
        if (after.some((at, side) => at < (before[side] as number))) return false
      }
    }
  }
  return true
}

import { verdict, verdictsOf } from '../../tree/caution.ts'
import { at, must, observationOf } from '../../tree/must.ts'
import type { Range } from '../../tree/observation.ts'
import {
  type Branch,
  type Effect,
  type MeasureQuestion,
  type Question,
  type Tree,
  USES
} from '../../tree/tree.ts'

export const KINDS = [
  'deleted branch',
  'swapped verdict',
  'moved limit',
  'dropped unsure',
  'removed raise',
  'loosened use'
] as const

/** A slip that an author can make, and the tree with it. */
export interface Fault {
  readonly kind: (typeof KINDS)[number]
  readonly at: string
  /** The question or, of advice, the verdict or note that it is made in. */
  readonly tree: Tree
}

/** Every fault of every kind that can be made in one place of a tree. */
export function faultsOf(tree: Tree): readonly Fault[] {
  return Object.values(tree.questions).flatMap(question =>
    [
      ...deletedBranches(question),
      ...editedEffects(tree, question),
      ...movedLimits(tree, question),
      ...droppedUnsure(question)
    ].map(({ kind, at, question: faulty }) => ({
      kind,
      at: `${question.id} ${at}`,
      tree: { ...tree, questions: { ...tree.questions, [question.id]: faulty } }
    }))
  )
}

interface Edit {
  readonly kind: Fault['kind']
  readonly at: string
  readonly question: Question
}

/** An answer is served by the next one, a turn is not taken, a range is joined to the one before. */
function deletedBranches(question: Question): readonly Edit[] {
  const kind = 'deleted branch'
  switch (question.kind) {
    case 'choice': {
      const ids = Object.keys(question.answers)
      return ids.slice(0, -1).map((id, index) => {
        const served = must(question.answers[must(ids[index + 1], 'id')], 'branch')
        return {
          kind,
          at: id,
          question: { ...question, answers: { ...question.answers, [id]: served } }
        }
      })
    }
    case 'signs':
      return question.turns.map((turn, index) => ({
        kind,
        at: `turn ${turn.signs.join('+')}`,
        question: { ...question, turns: question.turns.filter((_, other) => other !== index) }
      }))
    case 'measure':
      return inOrder(question)
        .slice(1)
        .map((range, index) => {
          const before = at(inOrder(question), index)
          const joined = { ...before, range: joinedRange(before.range, range.range) }
          const rest = question.ranges.filter(one => one !== before && one !== range)
          return {
            kind,
            at: textOf(range.range),
            question: { ...question, ranges: [joined, ...rest] }
          }
        })
  }
}

const bottom = ({ atLeast, over }: Range) => atLeast ?? over ?? Number.NEGATIVE_INFINITY
const inOrder = ({ ranges }: MeasureQuestion) =>
  [...ranges].sort((a, b) => bottom(a.range) - bottom(b.range))

const joinedRange = (low: Range, high: Range): Range => ({
  ...(low.atLeast !== undefined && { atLeast: low.atLeast }),
  ...(low.over !== undefined && { over: low.over }),
  ...(high.under !== undefined && { under: high.under }),
  ...(high.atMost !== undefined && { atMost: high.atMost })
})

/** Verdicts one step gentler and one stricter, raises left out, uses one step freer. */
function editedEffects(tree: Tree, question: Question): readonly Edit[] {
  return placesIn(question).flatMap(({ at, effect, put }) => [
    ...effect.raise.flatMap(raised =>
      neighbors(tree, raised).map(other => ({
        kind: 'swapped verdict' as const,
        at: `${at}: ${raised} → ${other}`,
        question: put(one => ({ ...one, raise: one.raise.map(id => (id === raised ? other : id)) }))
      }))
    ),
    ...effect.raise.map(raised => ({
      kind: 'removed raise' as const,
      at: `${at}: ${raised}`,
      question: put(one => ({ ...one, raise: one.raise.filter(id => id !== raised) }))
    })),
    ...endOf(effect).flatMap(end =>
      neighbors(tree, end).map(other => ({
        kind: 'swapped verdict' as const,
        at: `${at}: end ${end} → ${other}`,
        question: put(one => ('leads' in one ? { ...one, leads: { end: other } } : one))
      }))
    ),
    ...(effect.use === 'as-directed'
      ? []
      : [
          {
            kind: 'loosened use' as const,
            at: `${at}: ${effect.use}`,
            question: put(one => ({
              ...one,
              use: USES[USES.indexOf(one.use) - 1] ?? 'as-directed'
            }))
          }
        ])
  ])
}

const endOf = (effect: Effect | Branch): readonly string[] =>
  'leads' in effect && 'end' in effect.leads ? [effect.leads.end] : []

function neighbors(tree: Tree, id: string): readonly string[] {
  const all = verdictsOf(tree, verdict(tree, id).track)
  const place = all.indexOf(id)
  // An emergency is no neighbor: it would end walks instead of standing beside others.
  return [all[place - 1], all[place + 1]].flatMap(other =>
    other === undefined || other === 'emergency' || id === 'emergency' ? [] : [other]
  )
}

/** Another effect in place of one, with all that the place has besides. */
type Change = <E extends Effect>(effect: E) => E

interface PlaceIn {
  readonly at: string
  readonly effect: Effect | Branch
  /** The question with another effect in this place. */
  readonly put: (change: Change) => Question
}

/** Every effect of a question. */
function placesIn(question: Question): readonly PlaceIn[] {
  switch (question.kind) {
    case 'choice':
      return Object.entries(question.answers).map(([id, effect]) => ({
        at: id,
        effect,
        put: change => ({
          ...question,
          answers: { ...question.answers, [id]: change(effect) }
        })
      }))
    case 'signs':
      return [
        ...Object.entries(question.signs).flatMap(([sign, both]) =>
          (['yes', 'unsure'] as const).map(value => ({
            at: `${sign} ${value}`,
            effect: both[value],
            put: (change: Change): Question => ({
              ...question,
              signs: { ...question.signs, [sign]: { ...both, [value]: change(both[value]) } }
            })
          }))
        ),
        {
          at: 'otherwise',
          effect: question.otherwise,
          put: change => ({ ...question, otherwise: change(question.otherwise) })
        }
      ]
    case 'measure':
      return [
        ...question.ranges.map((effect, index) => ({
          at: textOf(effect.range),
          effect,
          put: (change: Change): Question => ({
            ...question,
            ranges: question.ranges.map((one, i) => (i === index ? change(one) : one))
          })
        })),
        ...question.taste.map((effect, index) => ({
          at: `taste ${textOf(effect.range)}`,
          effect,
          put: (change: Change): Question => ({
            ...question,
            taste: question.taste.map((one, i) => (i === index ? change(one) : one))
          })
        })),
        ...(['borderline', 'unsure'] as const).map(key => ({
          at: key,
          effect: question[key],
          put: (change: Change): Question => ({ ...question, [key]: change(question[key]) })
        }))
      ]
  }
}

/** Each limit a little lower and a little higher, in both ranges that meet there. */
function movedLimits(tree: Tree, question: Question): readonly Edit[] {
  if (question.kind !== 'measure') return []
  const { instruments } = observationOf(tree.observations, question.asks, 'measure')
  const step = instruments.length === 0 ? 1 : 0.1
  const limits = new Set(question.ranges.flatMap(({ range }) => Object.values(range)))
  return [...limits].flatMap(limit =>
    [-step, step].map(by => ({
      kind: 'moved limit' as const,
      at: `${limit} by ${by}`,
      question: {
        ...question,
        ranges: question.ranges.map(one => ({
          ...one,
          range: Object.fromEntries(
            Object.entries(one.range).map(([key, number]) => [
              key,
              number === limit ? limit + by : number
            ])
          )
        }))
      }
    }))
  )
}

/** Not knowing is served like the gentlest answer: the last one, no sign, the range after borderline. */
function droppedUnsure(question: Question): readonly Edit[] {
  const kind = 'dropped unsure'
  switch (question.kind) {
    case 'choice': {
      const last = Object.keys(question.answers)
        .filter(id => id !== 'unsure')
        .at(-1)
      const served = last === undefined ? undefined : question.answers[last]
      return served === undefined
        ? []
        : [
            {
              kind,
              at: 'unsure',
              question: { ...question, answers: { ...question.answers, unsure: served } }
            }
          ]
    }
    case 'signs':
      return Object.entries(question.signs).map(([sign, both]) => ({
        kind,
        at: `${sign} unsure`,
        question: {
          ...question,
          signs: {
            ...question.signs,
            [sign]: { ...both, unsure: { raise: [], use: 'as-directed', notes: [] } }
          }
        }
      }))
    case 'measure':
      return question.ranges.map(({ range, ...served }) => ({
        kind,
        at: `unsure as ${textOf(range)}`,
        question: { ...question, unsure: served }
      }))
  }
}

const textOf = (range: Range): string =>
  Object.entries(range)
    .map(([key, limit]) => `${key} ${limit}`)
    .join(' ') || 'any'

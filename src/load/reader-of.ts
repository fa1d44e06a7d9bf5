import type { Condition } from '../tree/tree.ts'
import type { Keys } from './authored.ts'
import type { DraftQuestion } from './expand.ts'
import type { Following, Part } from './instead.ts'
import type { AuthoredBranch, AuthoredQuestion } from './schemas/question.ts'

/** One way on from a reader: where it is in its body, with what its key holds besides, and what follows. */
interface Way {
  readonly keys: Keys
  readonly fits?: object
  readonly holds: boolean
}

/** The question that reads one part of a `when:`: one thing follows where it holds, another where not. */
export function readerOf(
  question: DraftQuestion,
  id: string,
  { condition, keys: written }: Part,
  holds: Following,
  fails: Following,
  leads: DraftQuestion['leads']
): DraftQuestion {
  const ways = waysOf(condition)
  const follows = (way: Way): Following => (way.holds ? holds : fails)
  const branchesIn = (group: string): readonly (readonly [string, AuthoredBranch])[] =>
    ways
      .filter(({ keys }) => keys[0] === group)
      .map(way => [String(way.keys[1]), { ...way.fits, ...follows(way).branch }])
  const listed = (group: string) => branchesIn(group).map(([, branch]) => branch)
  const body = {
    asks: condition.observation,
    because: question.body.because,
    ...(condition.kind === 'choice' && { answers: Object.fromEntries(branchesIn('answers')) }),
    ...(condition.kind === 'sign' && { branch: listed('branch') }),
    ...(condition.kind === 'measure' && {
      ranges: listed('ranges'),
      borderline: listed('borderline')[0],
      unsure: listed('unsure')[0]
    })
  }
  const none = ways.find(({ keys }) => keys.length === 0)
  return {
    id,
    body: body as AuthoredQuestion,
    because: question.because,
    leads,
    reads: none ? { none: follows(none).branch } : {},
    place: (keys, part) => {
      const own = ways.find(
        way => way.keys.length > 0 && way.keys.every((key, i) => key === keys[i])
      )
      const way = own ?? none
      const inside = own ? keys.slice(own.keys.length) : keys
      // What is said of the whole question is said of the part of `when:` that it reads.
      if (inside.length === 0 || way === undefined) return question.place(written, part)
      return question.place([...follows(way).keys, ...inside], part)
    }
  }
}

function waysOf(condition: Condition): readonly Way[] {
  switch (condition.kind) {
    case 'choice': {
      const { among } = condition
      const named = among.filter(answer => answer !== 'unsure')
      return [
        ...named.map(answer => ({ keys: ['answers', answer], holds: true })),
        { keys: ['answers', 'others'], holds: false },
        { keys: ['answers', 'unsure'], holds: among.includes('unsure') }
      ]
    }
    case 'sign': {
      const { among, sign } = condition
      const fits = { signs: [sign] }
      return [
        { keys: ['branch', 0], fits, holds: among.includes('yes') },
        {
          keys: ['branch', 1],
          fits: { ...fits, 'or-unsure': true },
          holds: among.includes('unsure')
        },
        { keys: [], holds: among.includes('no') }
      ]
    }
    case 'measure':
      return waysOfMeasure(condition.is)
  }
}

function waysOfMeasure(is: Extract<Condition, { kind: 'measure' }>['is']): readonly Way[] {
  const isUnsure = is === 'unsure'
  const straddled = !isUnsure && 'straddles' in is ? is.straddles : undefined
  const rest = [
    { keys: ['borderline'], holds: straddled !== undefined },
    { keys: ['unsure'], holds: isUnsure }
  ]
  const outside = (fits: object, index: number) => ({ keys: ['ranges', index], fits, holds: false })
  if (isUnsure) return [outside({}, 0), ...rest]
  if (!('within' in is)) {
    const sides = [{ under: straddled }, { 'at-least': straddled }]
    return [...sides.map(outside), ...rest]
  }
  const { atLeast, over, under, atMost } = is.within
  const within = { 'at-least': atLeast, over, under, 'at-most': atMost }
  const beyond = [
    { under: atLeast },
    { 'at-most': over },
    { 'at-least': under },
    { over: atMost }
  ].filter(fits => Object.values(fits)[0] !== undefined)
  return [
    { keys: ['ranges', 0], fits: within, holds: true },
    ...beyond.map((fits, index) => outside(fits, index + 1)),
    ...rest
  ]
}

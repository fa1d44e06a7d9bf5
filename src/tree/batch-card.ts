import { groupOf } from './group.ts'
import type { Range } from './observation.ts'
import type { Rule, Tree } from './tree.ts'

/** What the record of one batch asks for, by the ids of its texts, and when it may be used. */
export interface BatchCard {
  readonly fields: readonly string[]
  readonly checks: readonly string[]
  readonly lines: readonly PassLine[]
}

/** From when and below which pH a batch may be used, once a test shows it. */
export interface PassLine {
  /** The kinds of food that it holds for, as answers; empty where it holds for all. */
  readonly kinds: readonly { readonly observation: string; readonly answer: string }[]
  /** From this day; null at the other end where nothing ends it. */
  readonly day: number
  readonly lastDay: number | null
  /** At most this pH; null at the other end where none is too low. */
  readonly ph: number
  readonly lowestPh: number | null
}

/**
 * The card of a ferment by its own English texts and by the rules that its how-to answers allow use by;
 * null where it has none.
 */
export function batchCardOf(
  tree: Tree,
  texts: unknown,
  allowed: readonly Rule[] = []
): BatchCard | null {
  const { fields, checks } = groupOf(groupOf(texts).card)
  const lines = passLines(tree, allowed)
  if (fields === undefined || lines.length === 0) return null
  return { fields: Object.keys(groupOf(fields)), checks: Object.keys(groupOf(checks)), lines }
}

/** The limits by which the how-to answers let a batch be used, which the tree is proved to share. */
export function passLines(tree: Tree, allowed: readonly Rule[]): readonly PassLine[] {
  const all = allowed.flatMap(({ when }) => {
    const within = (unit: 'day' | 'ph'): Range | undefined =>
      when.flatMap(condition => {
        if (condition.kind !== 'measure' || condition.is === 'unsure') return []
        const observation = tree.observations[condition.observation]
        const fits = observation?.kind === 'measure' && observation.unit === unit
        return fits && 'within' in condition.is ? [condition.is.within] : []
      })[0]
    const days = within('day')
    const acid = within('ph')
    const day = days?.atLeast
    const ph = acid?.atMost
    if (day === undefined || ph === undefined) return []
    const kinds = when.flatMap(condition =>
      condition.kind === 'choice'
        ? condition.among.map(answer => ({ observation: condition.observation, answer }))
        : []
    )
    return [{ kinds, day, lastDay: days?.atMost ?? null, ph, lowestPh: acid?.atLeast ?? null }]
  })
  // Foods that pass alike share a line.
  return all
    .filter((line, index) => all.findIndex(other => isAlike(line, other)) === index)
    .map(line => ({
      ...line,
      kinds: all.filter(other => isAlike(line, other)).flatMap(({ kinds }) => kinds)
    }))
}

const isAlike = (one: PassLine, other: PassLine) =>
  one.day === other.day &&
  one.lastDay === other.lastDay &&
  one.ph === other.ph &&
  one.lowestPh === other.lowestPh

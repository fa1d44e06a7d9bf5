import type { Goes, Key, Lead, LeadTakes } from '../../key/key.ts'
import type { Words } from '../../words/words.ts'
import { type Line, linesOf } from '../key-lines.ts'

/** One lead of the key as a box of the chart, in words. */
export interface DecisionBox {
  readonly lead: Lead
  /** Taken of all that apply; in the box. */
  readonly marks: readonly MarkedLines[]
  /** Each way on, its answers with it. */
  readonly exits: readonly DecisionExit[]
}

/** A way on from a box. */
export interface DecisionExit {
  readonly goes: Goes
  /** Where several could apply, the first that does counts: they carry letters. */
  readonly letter: string | null
  readonly lines: readonly MarkedLines[]
}

/** Answers that take the same, but for remarks, which each has of its own. */
export interface MarkedLines {
  readonly labels: readonly MarkedLabel[]
  readonly takes: Pick<LeadTakes, 'sheets' | 'use'>
  /** Whoever finds this puts everything else down. */
  readonly stops: boolean
}

export interface MarkedLabel {
  /** Null where it always counts. */
  readonly label: string | null
  readonly notes: readonly string[]
}

/** The boxes of a key, in the order of its leads: each line of a lead stands on one of them once. */
export const decisionBoxes = (words: Words, { leads }: Key): readonly DecisionBox[] =>
  leads.map(lead => boxOf(words, lead))

function boxOf(words: Words, lead: Lead): DecisionBox {
  const lines = linesOf(words, lead)
  const taken = lines.filter(({ goes }) => goes === null || isStopOfMany(lead, goes))
  const onward = lines.flatMap(line =>
    line.goes === null || isStopOfMany(lead, line.goes) ? [] : [{ ...line, goes: line.goes }]
  )
  const inOrder = lead.turns.filter(({ when }) => when.kind === 'any-sign').length > 1
  const groups = inOrder ? neighbors(onward) : alike(onward)
  return {
    lead,
    marks: together(taken),
    exits: groups.map((group, index) => ({
      goes: group.goes,
      letter: inOrder && groups.length > 1 ? (LETTERS[index] ?? null) : null,
      lines: together(group.lines)
    }))
  }
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz'

/** An emergency sign stops beside what the others take; an emergency answer is a way of its own. */
const isStopOfMany = ({ rows }: Lead, goes: Goes): boolean => 'stop' in goes && rows.length > 0

type Onward = Line & { readonly goes: Goes }
interface Group {
  readonly goes: Goes
  readonly lines: readonly Onward[]
}

const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other)

/** Answers exclude each other: all that lead the same way are one way. */
function alike(lines: readonly Onward[]): readonly Group[] {
  const ways: Goes[] = []
  for (const { goes } of lines) if (!ways.some(way => same(way, goes))) ways.push(goes)
  return ways.map(goes => ({ goes, lines: lines.filter(line => same(line.goes, goes)) }))
}

/** Where the first that applies counts, only neighbors are one way. */
function neighbors(lines: readonly Onward[]): readonly Group[] {
  const groups: Group[] = []
  for (const line of lines) {
    const last = groups.at(-1)
    if (last !== undefined && same(last.goes, line.goes)) {
      groups[groups.length - 1] = { ...last, lines: [...last.lines, line] }
    } else groups.push({ goes: line.goes, lines: [line] })
  }
  return groups
}

/** Lines that take the same, once. */
function together(lines: readonly Line[]): readonly MarkedLines[] {
  const groups: MarkedLines[] = []
  for (const { label, sheets, use, notes, goes } of lines) {
    const takes = { sheets, use }
    const stops = goes !== null && 'stop' in goes
    const index = groups.findIndex(group => group.stops === stops && same(group.takes, takes))
    const group = groups[index] ?? { labels: [], takes, stops }
    const labels = [...group.labels, { label, notes }]
    if (index < 0) groups.push({ ...group, labels })
    else groups[index] = { ...group, labels }
  }
  return groups
}

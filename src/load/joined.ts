import { type Group, groupOf, isGroup } from '../tree/group.ts'
import type { Authored, Keys } from './authored.ts'
import type { Shaped } from './project.ts'
import type { FindingReport } from './report.ts'

/** How a format names its parts: at the top of the file, or in sections. */
const FORMATS = {
  observations: { what: 'observation', sections: false },
  steps: { what: 'step', sections: true },
  said: { what: 'observation', sections: true },
  words: { what: 'text', sections: false },
  'look-alikes': { what: 'pair', sections: false },
  'follow-ups': { what: 'follow-up', sections: false }
} as const

/** The sections in which a name of two files adds up, with the way from the name to its list. */
const ADDS_UP: Readonly<Record<string, readonly string[]>> = {
  foods: [],
  presumptions: ['ruled-out-by']
}

/**
 * Two files of one format as one: what all trees share, and what a tree alone has in its folder. Each part
 * keeps its place; a name that both define is reported, and the first one counts.
 */
export function joined<T extends object>(
  format: keyof typeof FORMATS,
  before: Shaped<T> | null,
  more: Shaped<T> | null,
  report: FindingReport
): Shaped<T> | null {
  if (before === null || more === null) return before ?? more
  const { what, sections } = FORMATS[format]
  const [first, second] = [groupOf(before.value), groupOf(more.value)]
  const merge = (one: Group, other: Group, place: Keys): Group => {
    const way = ADDS_UP[`${place[0]}`]
    const twice = Object.keys(other).filter(id => Object.hasOwn(one, id))
    for (const id of way === undefined ? twice : []) {
      const because = { label: 'First here', place: before.doc.place([...place, id]) }
      report.add('duplicate-id', more.doc.place([...place, id]), { what, id }, [because])
    }
    const added = twice.map(id => [id, way === undefined ? one[id] : sum(one[id], other[id], way)])
    return { ...one, ...other, ...Object.fromEntries(added) }
  }
  const value = sections
    ? Object.fromEntries(
        [...new Set([...Object.keys(first), ...Object.keys(second)])].map(section => [
          section,
          merge(groupOf(first[section]), groupOf(second[section]), [section])
        ])
      )
    : merge(first, second, [])
  const doc: Authored = {
    file: before.doc.file,
    value,
    place(keys, part) {
      const held = partAt(first, keys.slice(0, sections ? 2 : 1))
      if (held === undefined) return more.doc.place(keys, part)
      const way = sections ? ADDS_UP[`${keys[0]}`] : undefined
      const index = way && keys[2 + way.length]
      const count = way ? listAt(held, way).length : 0
      if (way === undefined || typeof index !== 'number' || index < count) {
        return before.doc.place(keys, part)
      }
      return more.doc.place(keys.with(2 + way.length, index - count), part)
    }
  }
  return { value: value as T, doc }
}

const partAt = (value: Group, keys: Keys): unknown =>
  keys.reduce<unknown>(
    (inside, key) => (isGroup(inside) && Object.hasOwn(inside, key) ? inside[`${key}`] : undefined),
    value
  )

function listAt(value: unknown, way: readonly string[]): readonly unknown[] {
  const list = way.reduce<unknown>((inside, key) => groupOf(inside)[key], value)
  return Array.isArray(list) ? list : []
}

/** One list after the other, at the end of the way. */
function sum(one: unknown, other: unknown, way: readonly string[]): unknown {
  const both = [...listAt(one, way), ...listAt(other, way)]
  const [key] = way
  return key === undefined ? both : { ...groupOf(one), [key]: both }
}

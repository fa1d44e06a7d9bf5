import { type Group, groupOf } from '../tree/group.ts'
import type { Authored } from './authored.ts'
import { joined } from './joined.ts'
import type { Shaped } from './project.ts'
import type { FindingReport } from './report.ts'

type Files = Map<string, Shaped<unknown>>

/** What a tree's file of words may hold for itself alone, by the file that holds it for all. */
const OWN = ['observations', 'steps', 'notes'] as const

/**
 * Puts the words that a tree's file holds for what it alone observes and says beside those that all trees
 * share. Of an observation that has common words those of the tree stand in their place, in this tree alone:
 * they stay where they are.
 */
export function liftOwnWords(files: Files, trees: Iterable<string>, report: FindingReport): void {
  const common = new Map(OWN.map(stem => [stem, groupOf(files.get(stem)?.value)]))
  for (const tree of trees) {
    const own = files.get(tree)
    if (own === undefined) continue
    const rest: Record<string, unknown> = { ...groupOf(own.value) }
    for (const stem of OWN) {
      const section = groupOf(rest[stem])
      const isCommon = (id: string) =>
        stem === 'observations' && Object.hasOwn(common.get(stem) ?? {}, id)
      const among = (wanted: boolean) =>
        Object.fromEntries(Object.entries(section).filter(([id]) => isCommon(id) === wanted))
      const lifted = { value: among(false), doc: within(own.doc, stem) }
      const all = joined('words', grouped(files.get(stem)), lifted, report)
      if (all !== null && Object.keys(lifted.value).length > 0) files.set(stem, all)
      delete rest[stem]
      if (Object.keys(among(true)).length > 0) rest[stem] = among(true)
    }
    files.set(tree, { value: rest, doc: own.doc })
  }
}

const grouped = (file: Shaped<unknown> | undefined): Shaped<Group> | null =>
  file ? { value: groupOf(file.value), doc: file.doc } : null

const within = (doc: Authored, section: string): Authored => ({
  file: doc.file,
  value: groupOf(doc.value)[section],
  place: (keys, part) => doc.place([section, ...keys], part)
})

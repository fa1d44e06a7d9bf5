import { startOf } from '../findings/place.ts'
import type { Tree } from '../tree/tree.ts'
import type { AuthoredFile } from './authored.ts'
import { changedIn, type PublishedEdition, readEdition } from './edition.ts'
import { fileKind } from './kinds-of-file.ts'
import type { AuthoredProject } from './project.ts'
import type { FindingReport } from './report.ts'

/** Opens every published edition, and reports one that is no longer what was published. */
export async function readEditions(
  files: readonly AuthoredFile[],
  report: FindingReport
): Promise<readonly PublishedEdition[]> {
  const found: PublishedEdition[] = []
  for (const { path, text } of files) {
    const what = fileKind(path)
    if (what?.kind !== 'edition') continue
    const edition = readEdition(text)
    const named = edition?.tree.id === what.stem && edition.tree.edition === what.edition
    if (edition === null || !named) {
      report.add('edition-unreadable', startOf(path), { file: path })
      continue
    }
    const changed = await changedIn(edition)
    for (const part of changed) {
      report.add('edition-changed', startOf(path), {
        tree: what.stem,
        edition: what.edition,
        part: part === 'meaning' ? 'meaning' : 'words, sources or pictures'
      })
    }
    if (changed.length === 0) found.push(edition)
  }
  return found
}

/** Reports a tree that means something else than what was published under its number, or an older one. */
export function checkEditions(
  trees: readonly Tree[],
  editions: readonly PublishedEdition[],
  project: AuthoredProject,
  report: FindingReport
): void {
  for (const tree of trees) {
    const own = editions.filter(edition => edition.tree.id === tree.id)
    const latest = Math.max(0, ...own.map(edition => edition.tree.edition))
    const same = own.find(edition => edition.tree.edition === tree.edition)
    const changed = same !== undefined && same.tree.fingerprint !== tree.fingerprint
    if (!changed && tree.edition >= latest) continue
    const place = project.trees.get(tree.id)?.doc.place(['edition'], 'value') ?? null
    report.add('edition-not-raised', place, {
      tree: tree.id,
      edition: tree.edition,
      next: latest + 1
    })
  }
}

/** Reports a withdrawal of a tree that is not there: what it was meant for is still shown. */
export function checkWithdrawn(
  trees: readonly Tree[],
  project: AuthoredProject,
  report: FindingReport
): void {
  const { withdrawn } = project
  if (withdrawn === null) return
  for (const id of Object.keys(withdrawn.value)) {
    if (trees.some(tree => tree.id === id)) continue
    const near = report.near(
      id,
      trees.map(tree => tree.id)
    )
    report.add('withdrawn-unknown', withdrawn.doc.place([id]), { tree: id, near })
  }
}

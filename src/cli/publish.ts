import { createHash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { editionPath, readEdition } from '../load/edition.ts'
import type { Loaded } from '../load/load.ts'
import { editionFile, publishedEdition } from '../load/publish.ts'
import { prove } from '../prove/prove.ts'
import type { Tree } from '../tree/tree.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { PROJECT } from './read-project.ts'
import { say } from './terminal.ts'
import { treeNamed } from './tree-named.ts'
import { makeFolder, oneAtATime, writeWhole } from './write-file.ts'

const MANUAL = `NAME
  jarside publish - freeze an edition of a tree, with its words

USAGE
  jarside publish <tree> [--in <folder>]

  Writes trees/editions/<tree>@<edition>.json: what the tree means, everything that it says in
  every language, its sources, and fingerprints of its meaning and of its words and pictures. It is
  never edited again: jarside check finds it when it changed, and finds a tree that means something
  else than what was published under its number. Open it again with <tree>@<edition>.

  Only what has no findings and is proved is published. An edition that no specialist has signed
  stays a draft wherever it is shown.

OPTIONS
  --in <folder>  publish from this folder, into it
  --help         show this page

EXIT CODES
  0  published, or already published just so
  1  findings, something not proved, or another meaning under a number that is published
  2  an unknown tree, or an option that does not fit`

/** `jarside publish`: freezes the edition that a tree calls itself. */
export const publish: Command = {
  name: 'publish',
  summary: 'freeze an edition of a tree, with its words',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const project = await open(values.in)
    const tree = treeNamed(project, positionals, terminal)
    if (tree === undefined) return 1
    const { loaded } = project
    const unproved = prove(tree, loaded.places[tree.id], loaded.sources).filter(
      ({ standing }) => standing !== 'proved'
    )
    if (loaded.findings.length > 0 || unproved.length > 0) {
      say(terminal.errors, 'There are findings, or something is not proved. See: jarside check')
      return 1
    }
    const folder = values.in ?? PROJECT
    const path = editionPath(tree.id, tree.edition)
    const on = terminal.today.toISOString().slice(0, 10)
    const edition = await publishedEdition(tree, loaded, drawingsOf(tree, loaded, folder), on)
    return oneAtATime(folder, () => {
      const file = join(folder, path)
      const before = existsSync(file) ? readEdition(readFileSync(file, 'utf8')) : null
      if (before !== null && before.spoken !== edition.spoken) {
        throw new BadUse(
          `Edition ${tree.edition} is published with other words. Write \`edition: ${tree.edition + 1}\` in trees/${tree.id}/tree.yaml.`
        )
      }
      if (before !== null) {
        say(terminal.output, `${path} is published already, just so.`)
        return 0
      }
      makeFolder(dirname(file))
      writeWhole(file, editionFile(edition))
      say(
        terminal.output,
        `${path}: edition ${tree.edition}, ${tree.review.state}, meaning ${tree.fingerprint.slice(0, 12)}`
      )
      return 0
    })
  }
}

/** SHA-256 of each drawing that a tree shows. */
function drawingsOf(tree: Tree, { pictures }: Loaded, folder: string) {
  const ids = Object.keys(tree.observations).flatMap(id => {
    const shown = pictures[id]
    return shown === undefined ? [] : [shown.own, ...Object.values(shown.answers)]
  })
  const files = [...new Set(ids)]
    .filter(id => id !== null)
    .map(id => [id, join(folder, `shared/pictures/${id}.svg`)] as const)
  return Object.fromEntries(
    files
      .filter(([, file]) => existsSync(file))
      .map(([id, file]) => [id, createHash('sha256').update(readFileSync(file)).digest('hex')])
  )
}

import { createHash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { formatFinding } from '../findings/format-finding.ts'
import { editionPath, type PublishedEdition, readEdition } from '../load/edition.ts'
import { canonicalJson } from '../load/fingerprint.ts'
import type { Loaded } from '../load/load.ts'
import { editionFile, publishedEdition } from '../load/publish.ts'
import { prove } from '../prove/prove.ts'
import type { Proved } from '../prove/proved.ts'
import type { Tree } from '../tree/tree.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { PROJECT, type Project } from './read-project.ts'
import { type TakenReview, takeReview } from './take-review.ts'
import { say, type Terminal } from './terminal.ts'
import { treeNamed } from './tree-named.ts'
import { makeFolder, oneAtATime, writeWhole } from './write-file.ts'

const MANUAL = `NAME
  jarside publish - freeze an edition of a tree, with its words

USAGE
  jarside publish <tree> [--review <file>] [--in <folder>]

  Writes trees/editions/<tree>@<edition>.json: what the tree means, everything that it says in
  every language, its sources, and fingerprints of its meaning and of its words and pictures. It is
  never edited again: jarside check finds it when it changed, and finds a tree that means something
  else than what was published under its number. Open it again with <tree>@<edition>.

  Only what has no findings and is proved is published. An edition that no specialist has signed
  stays a draft wherever it is shown. A review packet that came back signed is given with --review:
  it is taken only when it is of the tree just as it stands, decides every item, asks for no change,
  and every role that must sign has signed. The edition keeps roles and days, and nobody's name.

OPTIONS
  --review <file>  the review file that came back, see: jarside packet --help
  --in <folder>    publish from this folder, into it
  --help           show this page

EXIT CODES
  0  published, or already published just so
  1  findings, something not proved, another meaning under a number that is published, or a review
     that does not allow it
  2  an unknown tree, or an option that does not fit`

/** `jarside publish`: freezes the edition that a tree calls itself. */
export const publish: Command = {
  name: 'publish',
  summary: 'freeze an edition of a tree, with its words',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      review: { type: 'string' },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const project = await open(values.in)
    const authored = treeNamed(project, positionals, terminal)
    if (authored === undefined) return 1
    const { loaded } = project
    const today = terminal.today.toISOString().slice(0, 10)
    const taken =
      values.review === undefined ? null : takeReview(project, authored, values.review, today)
    if (taken !== null && 'refusals' in taken) {
      say(terminal.errors, ...taken.refusals)
      return 1
    }
    const tree = taken === null ? authored : { ...authored, review: taken.review }
    const unproved = prove(tree, loaded.places[tree.id], loaded.sources).filter(
      ({ standing }) => standing !== 'proved'
    )
    if (loaded.findings.length > 0 || unproved.length > 0) {
      say(terminal.errors, 'There are findings, or something is not proved. See: jarside check')
      // What the review itself brings no check of the authored files can show.
      if (taken !== null) say(terminal.errors, ...findingsOf(unproved, project))
      return 1
    }
    const folder = values.in ?? PROJECT
    const path = editionPath(tree.id, tree.edition)
    const frozen = await publishedEdition(tree, loaded, drawingsOf(tree, loaded, folder), today)
    const edition = taken === null ? frozen : { ...frozen, signed: taken.signed }
    return oneAtATime(folder, () => {
      const file = join(folder, path)
      const before = existsSync(file) ? readEdition(readFileSync(file, 'utf8')) : null
      const raised = `Write \`edition: ${tree.edition + 1}\` in trees/${tree.id}/tree.yaml.`
      if (before !== null && before.spoken !== edition.spoken) {
        throw new BadUse(`Edition ${tree.edition} is published with other words. ${raised}`)
      }
      if (before !== null && taken !== null && !isSignedAlike(before, edition)) {
        throw new BadUse(
          `Edition ${tree.edition} is published without this review, and is never changed. ${raised} The review holds for it.`
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
      if (taken !== null) sayReview(terminal, tree, taken)
      return 0
    })
  }
}

const isSignedAlike = (before: PublishedEdition, edition: PublishedEdition): boolean =>
  canonicalJson(before.signed ?? []) === canonicalJson(edition.signed ?? [])

const findingsOf = (unproved: readonly Proved[], { files }: Project): readonly string[] =>
  unproved
    .flatMap(({ findings }) => findings)
    .map(finding => formatFinding(finding, path => files.find(file => file.path === path)?.text))

/** What has to be written so that the tree itself says what its edition says. */
function sayReview(terminal: Terminal, { id, review }: Tree, { notJudged }: TakenReview): void {
  const { by, reviewed, due } = review
  if (notJudged > 0) {
    const items = notJudged === 1 ? 'item stays' : 'items stay'
    say(terminal.output, `${notJudged} ${items} unconfirmed: the reviewer cannot judge.`)
  }
  say(
    terminal.output,
    `In trees/${id}/tree.yaml write: review: { state: signed, by: [${by.join(', ')}], reviewed: ${reviewed}, due: ${due} }`
  )
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

import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { PROJECT } from './read-project.ts'
import { say } from './terminal.ts'
import { oneAtATime, writeWhole } from './write-file.ts'

const MANUAL = `NAME
  jarside withdraw - take a tree away from everybody until a new edition

USAGE
  jarside withdraw <tree> --because <why> [--in <folder>]

  When guidance turns out to be wrong and a fix takes time. In every place the tree is replaced by
  "withdrawn": the emergency numbers and the office, nothing else; no walk, no sheet. It holds from the
  next build: put that up at once. A kiosk that stands without a network goes on with the copy it
  has until it is connected.

  It ends when the tree's edition is raised. Written to trees/withdrawn.json.

OPTIONS
  --because <why>  for those who fix it; it is not shown to callers
  --in <folder>    withdraw in this folder
  --help           show this page

EXIT CODES
  0  withdrawn     2  an unknown tree, no reason, or an option that does not fit`

/** `jarside withdraw`: the way to stop at once. */
export const withdraw: Command = {
  name: 'withdraw',
  summary: 'take a tree away from everybody until a new edition',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      because: { type: 'string' },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const { loaded } = await open(values.in)
    const [name, ...rest] = positionals
    const tree = loaded.trees.find(({ id }) => id === name)
    if (tree === undefined || rest.length > 0) {
      throw new BadUse(`Name one tree: ${loaded.trees.map(({ id }) => id).join(', ')}.`)
    }
    const because = values.because?.trim()
    if (!because) throw new BadUse('Say why, for those who fix it: `--because <why>`.')
    const on = terminal.today.toISOString().slice(0, 10)
    const folder = values.in ?? PROJECT
    const path = 'trees/withdrawn.json'
    await oneAtATime(folder, () => {
      const file = join(folder, path)
      // Read anew: another tree may have been withdrawn meanwhile.
      const before = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {}
      const all = { ...before, [tree.id]: { edition: tree.edition, because, on } }
      writeWhole(file, `${JSON.stringify(all, null, 2)}\n`)
    })
    say(
      terminal.output,
      `${tree.id} is withdrawn up to edition ${tree.edition} (${path}). Build and put it up now.`,
      `It ends with \`edition: ${tree.edition + 1}\` in trees/${tree.id}/tree.yaml.`
    )
    return 0
  }
}

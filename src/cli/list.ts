import { treeAt } from '../load/kinds-of-file.ts'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { listedTree, listText } from './listed-tree.ts'
import { say } from './terminal.ts'

const MANUAL = `NAME
  jarside list - show every tree, its observations and their answers

USAGE
  jarside list [--json] [--in <folder>]

  Answers stand most worrying first. After an answer: danger, a sign that must never end
  gently; usual, what an untroubled jar shows; told only, never asked; stands for, the answer of
  another observation that it settles.

OPTIONS
  --json         print one object: { trees: [ { id, observations: [ … ] } ] }
  --in <folder>  read trees from this folder
  --help         show this page

EXIT CODES
  0  listed
  1  a tree has findings and is left out: jarside check
  2  an option that does not fit`

/** `jarside list`: what can be named on a command line. */
export const list: Command = {
  name: 'list',
  summary: 'show trees, observations and their answers',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      json: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    if (positionals.length > 0) {
      throw new BadUse('`jarside list` takes no names: it shows every tree.')
    }
    const { loaded, files } = await open(values.in)
    const words = createWords(loaded.words, SOURCE_TAG)
    const trees = loaded.trees.map(tree => listedTree(tree))
    if (values.json) say(terminal.output, JSON.stringify({ trees }, null, 2))
    else say(terminal.output, ...loaded.trees.flatMap(tree => listText(listedTree(tree), words)))
    const authored = files.filter(({ path }) => treeAt(path) !== null).length
    if (loaded.trees.length === authored) return 0
    say(terminal.errors, 'A tree with findings is left out. See: jarside check')
    return 1
  }
}

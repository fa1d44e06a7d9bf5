import { figuresOf } from '../figures/figures.ts'
import { clean } from '../findings/wording.ts'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import { type Command, readArguments } from './command.ts'
import { readShares, sharesText } from './figures-shares.ts'
import { sheetsOf, sheetsText } from './figures-sheets.ts'
import { figuresText } from './figures-text.ts'
import { createPaint } from './paint.ts'
import { print, say } from './terminal.ts'
import { treeNamed } from './tree-named.ts'
import { wordsOfTree } from './words-of-tree.ts'

const MANUAL = `NAME
  jarside figures - how many screens a tree asks, and where walks end

USAGE
  jarside figures <tree> [--sheets] [--shares <file>] [--json] [--in <folder>]

  Screens on a walk: mean, longest, by the verdict said first, and until the verdict is settled;
  beside it the fewest that any order of asking needs on average. What is never asked. How many walks
  end with something open. Which observation, asked first, would settle walks soonest.

  Unless a file says otherwise every answer of a choice, none or one sign of a screen, every run of
  bands of a measure, and unsure, are equally likely.

OPTIONS
  --sheets         what the outcomes say instead: how many differ in a word, how long they are in words,
                   and how many steps stand under "do now"
  --shares <file>  how often each answer was given, as JSON:
                   { "<observation>": { "<answer>": count } }
                   Answers are written as after --given: 3.2@meter, 9, unsure. Signs: none,
                   unsure, a sign, or several joined by +. What is left out is answered evenly.
  --json           print one object: { tree, edition, screens, settled, byVerdict, … }
  --in <folder>    read trees from this folder
  --help           show this page

EXIT CODES
  0  told
  1  the tree has findings: jarside check
  2  an unknown tree, a file that does not fit, or an option that does not fit`

/** `jarside figures`: what a tree costs its callers in questions. */
export const figures: Command = {
  name: 'figures',
  summary: 'how many screens a tree asks, and where walks end',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      sheets: { type: 'boolean', default: false },
      shares: { type: 'string' },
      json: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const project = await open(values.in)
    const tree = treeNamed(project, positionals, terminal)
    if (tree === undefined) return 1
    const file = values.shares
    const { counted, faults } =
      file === undefined ? { counted: {}, faults: [] } : readShares(tree, sharesText(file))
    if (faults.length > 0) {
      // They repeat what the file says, which may hold what steers a terminal.
      say(terminal.errors, ...faults.map(clean))
      return 2
    }
    if (values.sheets) {
      const { texts, sources } = wordsOfTree(tree, project.loaded)
      const { office } = project
      const words = createWords(texts, SOURCE_TAG)
      const sheets = sheetsOf(tree, counted, { words, sources, office, today: terminal.today })
      if (values.json) say(terminal.output, JSON.stringify(sheets, null, 2))
      else print(terminal, ...sheetsText(sheets, createPaint(terminal.colors)))
      return 0
    }
    const result = figuresOf(tree, counted)
    if (values.json) say(terminal.output, JSON.stringify(result, null, 2))
    else print(terminal, ...figuresText(result, createPaint(terminal.colors)))
    return 0
  }
}

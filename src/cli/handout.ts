import { couldBeTogether } from '../evaluate/could-be.ts'
import { nearestNames } from '../findings/nearest-name.ts'
import { type HandoutOf, PAPERS, type Paper } from '../paper/handout.tsx'
import type { Tree } from '../tree/tree.ts'
import { SOURCE_TAG } from '../words/words.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { drawingsOf } from './drawings.ts'
import { HANDOUT_MANUAL } from './handout-manual.ts'
import { paperStyle } from './paper-style.ts'
import { say } from './terminal.ts'
import { treeNamed } from './tree-named.ts'
import { writeHandouts } from './write-handouts.ts'

/** `jarside handout`: the general sheets of a tree's verdicts, as PDF and HTML. */
export const handout: Command = {
  name: 'handout',
  summary: 'write the sheet of a verdict, or of all of them, as PDF and HTML',
  manual: HANDOUT_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      verdict: { type: 'string', multiple: true, default: [] },
      lang: { type: 'string', multiple: true, default: [] },
      paper: { type: 'string', default: 'letter' },
      all: { type: 'boolean', default: false },
      out: { type: 'string' },
      address: { type: 'string' },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const project = await open(values.in)
    const tree = treeNamed(project, positionals, terminal)
    if (tree === undefined) return 1
    const { loaded, office } = project
    const paper = paperNamed(values.paper)
    if (values.out === undefined) throw new BadUse('Say where to: `--out <folder>`.')
    const verdicts = verdictsNamed(tree, values.verdict, values.all)
    const every = Object.keys(loaded.words)
    const languages = languagesNamed(every, values.lang, values.all)
    const home = homeNamed(values.address ?? office?.address ?? undefined)
    const style = paperStyle()
    const texts = loaded.words
    const { pictures, lookAlikes, sources } = loaded
    const drawings = drawingsOf(values.in, pictures, lookAlikes)
    const drawn = { pictures, lookAlikes, drawings }
    const shared = { tree, texts, sources, office, home, paper, style, ...drawn }
    const all = languages.flatMap(language =>
      verdicts.map(
        (verdict): HandoutOf => ({ ...shared, verdict, language, today: terminal.today })
      )
    )
    const tooLong: string[] = []
    for await (const { name, fitted } of writeHandouts(all, values.out)) {
      say(terminal.output, `${name}.pdf  ${name}.html`)
      if (!fitted) tooLong.push(name)
    }
    if (tooLong.length === 0) return 0
    say(terminal.errors, `More than one side: ${tooLong.join(', ')}. Shorten the texts.`)
    return 1
  }
}

function paperNamed(name: string): Paper {
  const paper = PAPERS.find(each => each === name)
  if (paper === undefined) {
    throw new BadUse(`There is no paper \`${name}\`. Papers: ${PAPERS.join(', ')}.`)
  }
  return paper
}

function verdictsNamed(tree: Tree, named: readonly string[], all: boolean): readonly string[] {
  // Of a verdict that no answers come to there is nothing to hand out.
  const names = tree.verdicts.map(({ id }) => id).filter(id => couldBeTogether(tree, [id]))
  if (all && named.length > 0) throw new BadUse('Give `--all` or `--verdict`, not both.')
  if (all) return names
  if (named.length === 0) {
    throw new BadUse(`Name a verdict, or give \`--all\`. Verdicts: ${names.join(', ')}.`)
  }
  const strange = named.find(id => !names.includes(id))
  if (strange === undefined) return named
  const near = didYouMean(nearestNames(strange, names))
  throw new BadUse(
    `\`${tree.id}\` never gives \`${strange}\`.${near} Verdicts: ${names.join(', ')}.`
  )
}

function languagesNamed(names: readonly string[], named: readonly string[], all: boolean) {
  const strange = named.find(tag => !names.includes(tag))
  if (strange !== undefined) {
    throw new BadUse(`There are no words in \`${strange}\`. Languages: ${names.join(', ')}.`)
  }
  if (named.length > 0) return named
  return all ? names : [SOURCE_TAG]
}

function homeNamed(address: string | undefined): string {
  if (address === undefined) {
    throw new BadUse(
      'The sheet carries a web address: write `address` in public/office.json, or give `--address`.'
    )
  }
  if (!/^https?:\/\/[^\s#?]+$/.test(address)) {
    throw new BadUse(
      `\`${address}\` is no web address, like \`https://jarside.larkspur.example/\`.`
    )
  }
  return address.replace(/\/?$/, '/')
}

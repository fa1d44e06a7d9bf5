import { existsSync, readFileSync } from 'node:fs'
import type { OfficePack } from '../office/office-pack.ts'
import { readOfficePack } from '../office/read-office.ts'
import { PAPERS, type Paper, type Print } from '../paper/paper-page.ts'
import type { SheetOf } from '../paper/verdict-sheet.tsx'
import type { Tree } from '../tree/tree.ts'
import { SOURCE_TAG } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { drawingsOf } from './drawings.ts'
import { HANDOUT_MANUAL } from './handout-manual.ts'
import { languageNamed, namedOne } from './named-one.ts'
import { paperStyle } from './paper-style.ts'
import {
  SHEET_KINDS,
  type SheetKind,
  type SheetToPrint,
  sheetsToPrint,
  verdictsToHandOut
} from './sheets-to-print.ts'
import { say, type Terminal } from './terminal.ts'
import { treeNamed } from './tree-named.ts'
import { wordsOfTree } from './words-of-tree.ts'
import { writeSheets } from './write-sheets.ts'

const KINDS = Object.keys(SHEET_KINDS).filter((kind): kind is SheetKind => kind in SHEET_KINDS)

/** `jarside handout`: the sheets of a tree, as PDF and HTML. */
export const handout: Command = {
  name: 'handout',
  summary: 'write sheets for callers and for the wall, as PDF and HTML',
  manual: HANDOUT_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      sheet: { type: 'string', multiple: true, default: [] },
      verdict: { type: 'string', multiple: true, default: [] },
      lang: { type: 'string', multiple: true, default: [] },
      paper: { type: 'string', default: 'letter' },
      large: { type: 'boolean', default: false },
      all: { type: 'boolean', default: false },
      out: { type: 'string' },
      office: { type: 'string' },
      address: { type: 'string' },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const project = await open(values.in)
    const { loaded } = project
    const everyTree = values.all && positionals.length === 0
    const one = everyTree ? undefined : treeNamed(project, positionals, terminal)
    const trees = one === undefined ? loaded.trees : [one]
    if (!everyTree && one === undefined) return 1
    if (values.out === undefined) throw new BadUse('Say where to: `--out <folder>`.')
    const paper = namedOne(values.paper, PAPERS, `There is no paper \`${values.paper}\`.`, 'Papers')
    const print: Print = values.large ? 'large' : 'standard'
    const kinds = kindsNamed(values.sheet, values.all, print)
    refuseStrangePaper(kinds, values.sheet, paper)
    const office = values.office === undefined ? project.office : officeIn(values.office)
    const { pictures, lookAlikes, knowHow } = loaded
    const shared: Omit<SheetOf, 'tree' | 'language' | 'style' | 'texts' | 'sources'> = {
      office,
      home: homeNamed(values.address ?? office?.address ?? undefined),
      today: terminal.today,
      paper,
      print,
      pictures,
      lookAlikes,
      knowHow,
      drawings: drawingsOf(values.in, pictures, lookAlikes)
    }
    const languages = languagesNamed(Object.keys(loaded.words), values.lang, values.all)
    const styles = new Map(languages.map(language => [language, paperStyle(language)]))
    const all = trees.flatMap(tree => {
      // Where a ferment asks in words of its own, its paper says them too.
      const own = wordsOfTree(tree, loaded)
      const verdicts = kinds.includes('verdict')
        ? verdictsNamed(tree, values.verdict, values.all)
        : []
      return languages.flatMap(language => {
        const sheet = { ...shared, ...own, tree, language, style: styles.get(language) ?? '' }
        return kinds.flatMap(kind => sheetsToPrint(kind, sheet, verdicts))
      })
    })
    return written(all, values.out, terminal)
  }
}

/** Writes them, says the name of each, and which of them do not fit on their side. */
async function written(
  all: readonly SheetToPrint[],
  folder: string,
  terminal: Terminal
): Promise<number> {
  const tooLong = await writeSheets(all, folder, terminal)
  if (tooLong.length === 0) return 0
  say(terminal.errors, `More than one side: ${tooLong.join(', ')}. Shorten the texts.`)
  return 1
}

/** Of every kind at once those that are not made in such a print are left out; one that was named is refused. */
function kindsNamed(named: readonly string[], all: boolean, print: Print): readonly SheetKind[] {
  const isMade = (kind: SheetKind) => {
    const prints: readonly Print[] = SHEET_KINDS[kind].prints
    return prints.includes(print)
  }
  const kinds = named.map(name => namedOne(name, KINDS, `There is no sheet \`${name}\`.`, 'Sheets'))
  const strange = kinds.find(kind => !isMade(kind))
  if (strange !== undefined) {
    throw new BadUse(`A \`${strange}\` sheet is not made in large print. \`key\` says the same.`)
  }
  if (kinds.length > 0) return kinds
  return all ? KINDS.filter(isMade) : ['verdict']
}

/** Of every kind at once those that have no such paper are left out; one that was named is refused. */
function refuseStrangePaper(
  kinds: readonly SheetKind[],
  named: readonly string[],
  paper: Paper
): void {
  for (const kind of kinds.filter(each => named.includes(each) || named.length === 0)) {
    const papers: readonly Paper[] = SHEET_KINDS[kind].papers
    if (!papers.includes(paper)) {
      throw new BadUse(
        `A \`${kind}\` sheet is made for: ${papers.join(', ')}; not for \`${paper}\`.`
      )
    }
  }
}

function verdictsNamed(tree: Tree, named: readonly string[], all: boolean): readonly string[] {
  const names = verdictsToHandOut(tree)
  if (all && named.length > 0) throw new BadUse('Give `--all` or `--verdict`, not both.')
  if (all) return names
  if (named.length === 0) {
    throw new BadUse(`Name a verdict, or give \`--all\`. Verdicts: ${names.join(', ')}.`)
  }
  return named.map(name =>
    namedOne(name, names, `\`${tree.id}\` never gives \`${name}\`.`, 'Verdicts')
  )
}

function languagesNamed(names: readonly string[], named: readonly string[], all: boolean) {
  if (named.length > 0) return named.map(tag => languageNamed(tag, names))
  return all ? names : [SOURCE_TAG]
}

/** The office pack in a file, field by field: what is wrong in it is dropped. */
function officeIn(file: string): OfficePack | null {
  if (!existsSync(file)) throw new BadUse(`There is no file \`${file}\`. Name an office pack.`)
  try {
    return readOfficePack(JSON.parse(readFileSync(file, 'utf8')))
  } catch (error) {
    if (error instanceof SyntaxError) throw new BadUse(`\`${file}\` is no JSON: ${error.message}`)
    throw error
  }
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

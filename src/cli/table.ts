import { join } from 'node:path'
import { nearestNames } from '../findings/nearest-name.ts'
import { lensesOf } from '../tables/tables.ts'
import { lensName } from '../tree/lens.ts'
import { must } from '../tree/must.ts'
import type { Tree } from '../tree/tree.ts'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { languageNamed } from './named-one.ts'
import { FORMATS, type Format, type TableFile, tableFiles } from './table-files.ts'
import { TABLE_MANUAL } from './table-manual.ts'
import { say } from './terminal.ts'
import { treeNamed } from './tree-named.ts'
import { wordsOfTree } from './words-of-tree.ts'
import { makeFolder, writeWhole } from './write-file.ts'

/** `jarside table`: a tree as complete decision tables, for reviewers and for other programs. */
export const table: Command = {
  name: 'table',
  summary: 'write a tree as complete decision tables: DMN, CSV or HTML',
  manual: TABLE_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      format: { type: 'string' },
      only: { type: 'string', multiple: true, default: [] },
      lang: { type: 'string' },
      out: { type: 'string' },
      bom: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const project = await open(values.in)
    const tree = treeNamed(project, positionals, terminal)
    if (tree === undefined) return 1
    const { loaded, office } = project
    const format = formatNamed(values.format)
    if (values.bom && format !== 'csv') throw new BadUse('`--bom` goes with `--format csv`.')
    if (values.lang !== undefined && format === 'dmn') {
      throw new BadUse('A DMN document holds ids, not words: leave `--lang` out.')
    }
    const { texts } = wordsOfTree(tree, loaded)
    const words = createWords(texts, languageNamed(values.lang ?? SOURCE_TAG, Object.keys(texts)))
    const files = tableFiles({
      format,
      tree,
      lenses: lensesNamed(tree, values.only),
      words,
      sources: loaded.sources,
      country: office?.country,
      today: terminal.today,
      mark: values.bom
    })
    if (values.out === undefined) {
      const only = files.next().value
      if (only === undefined || files.next().value !== undefined) {
        throw new BadUse(
          'That is more than one file: give `--out <folder>`, or `--only <table>` for one of them.'
        )
      }
      terminal.output.write(only.text)
      return 0
    }
    for (const { name, rows } of writeTables(files, values.out)) {
      say(terminal.output, `${name}  ${rows.join(' + ')} rows`)
    }
    return 0
  }
}

function formatNamed(given: string | undefined): Format {
  const format = FORMATS.find(each => each === given)
  if (format !== undefined) return format
  const named = given === undefined ? 'Say in which format' : `There is no format \`${given}\``
  throw new BadUse(`${named}: \`--format ${FORMATS.join('|')}\`.`)
}

function lensesNamed(tree: Tree, named: readonly string[]) {
  const all = lensesOf(tree)
  const names = all.map(lens => (typeof lens === 'object' ? lens.note : lensName(lens)))
  const strange = named.find(name => !names.includes(name))
  if (strange !== undefined) {
    const near = didYouMean(nearestNames(strange, names))
    throw new BadUse(
      `\`${tree.id}\` has no table \`${strange}\`.${near} Tables: ${names.join(', ')}.`
    )
  }
  return named.length === 0 ? all : all.filter((_, i) => named.includes(must(names[i], 'name')))
}

/** Writes files into a folder as they are made, and gives each back once it is there. */
function* writeTables(files: Iterable<TableFile>, folder: string): Generator<TableFile> {
  makeFolder(folder)
  for (const file of files) {
    writeWhole(join(folder, file.name), file.text)
    yield file
  }
}

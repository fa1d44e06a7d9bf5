import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { groupOf } from '../tree/group.ts'
import { SOURCE_TAG } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { languageNamed } from './named-one.ts'
import { PACK_MANUAL } from './pack-manual.ts'
import { shownTrees } from './plain.ts'
import { PROJECT, type Project } from './read-project.ts'
import { type Chosen, chosenOf, inOneFile, printsOf } from './single-file.ts'
import { say, type Terminal } from './terminal.ts'
import { noSuchTree } from './tree-named.ts'
import { writeWhole } from './write-file.ts'

const OFFICE = 'public/office.json'

/** `jarside pack`: the kiosk as one file. */
export const pack: Command = {
  name: 'pack',
  summary: 'write the kiosk as one file that needs no server',
  manual: PACK_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      'single-file': { type: 'boolean', default: false },
      tree: { type: 'string', multiple: true, default: [] },
      lang: { type: 'string', multiple: true, default: [] },
      out: { type: 'string' },
      built: { type: 'string' },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    if (positionals.length > 0) throw new BadUse('Name a ferment with `--tree`.')
    if (!values['single-file']) throw new BadUse('Say in which form: `--single-file`.')
    if (values.out === undefined) throw new BadUse('Say where to: `--out <file.html>`.')
    const project = await open(values.in)
    const built = values.built ?? join(values.in ?? PROJECT, 'dist')
    return packed(project, built, chosen(project, values.tree, values.lang), values.out, terminal)
  }
}

function chosen(project: Project, trees: readonly string[], tags: readonly string[]): Chosen {
  const shown = shownTrees(project).map(({ id }) => id)
  const every = Object.keys(project.loaded.words)
  for (const tree of trees) if (!shown.includes(tree)) throw noSuchTree(tree, shown)
  const named = tags.map(tag => languageNamed(tag, every))
  return {
    trees: trees.length > 0 ? shown.filter(id => trees.includes(id)) : shown,
    tags: named.length > 0 ? [...new Set([SOURCE_TAG, ...named])] : every
  }
}

function packed(
  { loaded, files, office }: Project,
  built: string,
  of: Chosen,
  out: string,
  terminal: Terminal
): number {
  const folder = join(built, 'single-file')
  if (!existsSync(join(folder, 'trees.json'))) {
    say(terminal.errors, `There is no build in \`${built}\`. Make one: npm run build.`)
    return 1
  }
  const whole = groupOf(JSON.parse(readFileSync(join(folder, 'trees.json'), 'utf8')))
  const prints = printsOf(whole)
  const other = loaded.trees.filter(
    ({ id, fingerprint }) => of.trees.includes(id) && prints.get(id) !== fingerprint
  )
  if (other.length > 0) {
    const names = other.map(({ id }) => `\`${id}\``).join(', ')
    say(terminal.errors, `The build has ${names} as it was before. Build again: npm run build.`)
    return 1
  }
  const text = inOneFile({
    whole: chosenOf(whole, of),
    chosen: of,
    office: files.find(({ path }) => path === OFFICE)?.text ?? '{}',
    packedOn: terminal.today.toISOString().slice(0, 10),
    licenses: licensesIn(join(built, 'licenses')),
    read: name => readFileSync(join(folder, name))
  })
  writeWhole(out, text)
  const size = (Buffer.byteLength(text) / 1e6).toFixed(1)
  say(terminal.output, `${out}  ${of.trees.length} ferments  ${of.tags.join(', ')}  ${size} MB`)
  if (!office?.address) {
    const lacks = `${OFFICE} has no \`address\`: the square that visitors scan leads nowhere.`
    say(terminal.errors, lacks)
  }
  return 0
}

/** The licenses of everything that is in the file, as they stand beside the pages. */
function licensesIn(folder: string): string {
  if (!existsSync(folder)) return ''
  const names = readdirSync(folder).filter(name => /\.(?:md|txt)$/.test(name))
  return names.map(name => `${name}\n\n${readFileSync(join(folder, name), 'utf8')}`).join('\n\n')
}

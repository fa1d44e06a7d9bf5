import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { formatFinding } from '../findings/format-finding.ts'
import { prove } from '../prove/prove.ts'
import { SOURCE_TAG } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { checkedLines, checkedTree } from './checked-tree.ts'
import { type Command, readArguments } from './command.ts'
import { loadProject, PROJECT } from './read-project.ts'
import { say } from './terminal.ts'
import { makeFolder, oneAtATime, writeWhole } from './write-file.ts'

const MANUAL = `NAME
  jarside new - begin a ferment

USAGE
  jarside new <id> [--title <name>] [--in <folder>]

  Writes trees/<id>/ with a tree, its rules and its rows, and its words in every language, from
  shared/skeleton. The skeleton loads and is proved: it asks about people, the container and growth,
  throws out what is moldy, and sends all else to a specialist. Then it says what is missing.

OPTIONS
  --title <name>  what the ferment is called; without it the id with a capital letter
  --in <folder>   begin it in this folder's project
  --help          show this page

EXIT CODES
  0  written, and nothing is found
  1  written, and there are findings
  2  an option that does not fit, or the ferment is there already`

const NAME = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/
const MONTHS = 12
/** The folder beside the trees that holds none. */
const EDITIONS = 'editions'

/** `jarside new`: a ferment that loads and is proved, for an author to go on from. */
export const newTree: Command = {
  name: 'new',
  summary: 'begin a ferment: a folder that loads and is proved',
  manual: MANUAL,
  async run(args, terminal) {
    const { values, positionals } = readArguments(args, {
      title: { type: 'string' },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const [id, ...rest] = positionals
    if (id === undefined || rest.length > 0)
      throw new BadUse('Name one ferment: `jarside new <id>`.')
    if (!NAME.test(id)) {
      throw new BadUse(
        `\`${id}\` is no name: small letters, digits and single hyphens, like \`ginger-bug\`.`
      )
    }
    if (id === EDITIONS)
      throw new BadUse(`\`${id}\` is where editions are published: take another name.`)
    if (/[\r\n]/.test(values.title ?? '')) throw new BadUse('A title is one line.')
    const project = values.in ?? PROJECT
    const title = values.title ?? `${id[0]?.toUpperCase()}${id.slice(1).replaceAll('-', ' ')}`
    const written = await oneAtATime(project, () =>
      writeSkeleton(project, { id, title, due: dueOn(terminal.today) })
    )
    say(terminal.output, ...written.map(path => `written: ${path}`))
    const { loaded, files } = await loadProject(project)
    const tree = loaded.trees.find(one => one.id === id)
    const checked = tree && checkedTree(id, prove(tree, loaded.places[id], loaded.sources))
    const findings = [...loaded.findings, ...(checked?.findings ?? [])]
    const textOf = (path: string) => files.find(file => file.path === path)?.text
    say(terminal.output, ...findings.map(finding => formatFinding(finding, textOf)))
    say(terminal.output, ...(checked === undefined ? [] : checkedLines(checked)), ...STILL_MISSING)
    return findings.length === 0 ? 0 : 1
  }
}

const STILL_MISSING = [
  '',
  'Still missing, and found by nobody but its author:',
  '- what this ferment alone shows: observations.yaml in its folder, with words and drawings',
  '- its rules, from the guidance and before the questions; its rows, with the source beside each',
  '- its own words: title, about, examples, verdicts and cautions, in every language',
  '- `short` and `recall` in ui.json for what it observes; `said.yaml`: what callers say of it',
  '- `picture:` and `order:` in tree.yaml, so that callers can choose it',
  '- where its callers were sent until now: other trees, their words, and follow-ups in shared/',
  '- in tests: tests/reader/calls/<id>.yaml, and its published statements in tests/trees/',
  '- `jarside check --faults --tree <id>`: which slips no rule would see',
  'The recipe is in DEVELOPERS.md: "Add a ferment".'
]

interface Begun {
  readonly id: string
  readonly title: string
  /** The day of the next review. */
  readonly due: string
}

/** @throws BadUse where the ferment is there already, or the project has no skeleton. */
function writeSkeleton(project: string, begun: Begun): readonly string[] {
  const skeleton = join(project, 'shared/skeleton')
  if (!existsSync(skeleton)) throw new BadUse(`There is no folder \`${skeleton}\` to begin from.`)
  const folder = `trees/${begun.id}`
  const languages = readdirSync(join(project, 'locales'), { withFileTypes: true })
    .filter(entry => entry.isDirectory())
    .map(({ name }) => name)
    .sort()
  const words = languages.map(tag => `locales/${tag}/${begun.id}.json`)
  const taken = [folder, ...words].find(path => existsSync(join(project, path)))
  if (taken !== undefined) throw new BadUse(`\`${taken}\` is there already.`)
  const from = (name: string) =>
    filled(readFileSync(join(skeleton, name), 'utf8'), begun, name.endsWith('.json'))
  const ofLanguage = (tag: string) =>
    from(
      existsSync(join(skeleton, `words.${tag}.json`))
        ? `words.${tag}.json`
        : `words.${SOURCE_TAG}.json`
    )
  const texts: readonly (readonly [string, string])[] = [
    ...['tree.yaml', 'rules.yaml', 'rows.yaml'].map(
      name => [`${folder}/${name}`, from(name)] as const
    ),
    ...languages.map(tag => [`locales/${tag}/${begun.id}.json`, ofLanguage(tag)] as const)
  ]
  makeFolder(join(project, folder))
  for (const [path, text] of texts) writeWhole(join(project, path), text)
  return texts.map(([path]) => path)
}

/** In a file of JSON a title may hold what JSON has to escape. */
const filled = (text: string, begun: Begun, json: boolean): string =>
  text.replace(/\{(id|title|due)\}/g, (_, name: keyof Begun) =>
    json ? JSON.stringify(begun[name]).slice(1, -1) : begun[name]
  )

/** The first review is due within a year. */
function dueOn(today: Date): string {
  const due = new Date(Date.UTC(today.getUTCFullYear(), today.getUTCMonth() + MONTHS, 1))
  return due.toISOString().slice(0, 10)
}

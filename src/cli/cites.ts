import { nearestNames } from '../findings/nearest-name.ts'
import type { Tree } from '../tree/tree.ts'
import { sourceLine } from '../words/sources.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { say } from './terminal.ts'

const MANUAL = `NAME
  jarside cites - list what rests on a source

USAGE
  jarside cites <source> [--json] [--in <folder>]

  When guidance changes: every rule, verdict, note and question of every tree that cites it. What
  rests on it alone is marked.

OPTIONS
  --json         print one object: { source, trees: [ { tree, cites: [ … ] } ] }
  --in <folder>  read trees from this folder
  --help         show this page

EXIT CODES
  0  listed      2  an unknown source, or an option that does not fit`

const KINDS: readonly Citing['kind'][] = ['rule', 'verdict', 'note', 'question']

/** `jarside cites`: what has to be read again when a publication changes. */
export const cites: Command = {
  name: 'cites',
  summary: 'list every rule, verdict, note and question that rests on a source',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      json: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const { loaded } = await open(values.in)
    const names = Object.keys(loaded.sources)
    const [source, ...rest] = positionals
    if (source === undefined || rest.length > 0) {
      throw new BadUse(`Name one source: ${names.join(', ')}.`)
    }
    const entry = Object.hasOwn(loaded.sources, source) ? loaded.sources[source] : undefined
    if (entry === undefined) {
      throw new BadUse(
        `There is no source \`${source}\`.${didYouMean(nearestNames(source, names))} Sources: ${names.join(', ')}.`
      )
    }
    const trees = loaded.trees.map(tree => ({ tree: tree.id, cites: citing(tree, source) }))
    if (values.json) {
      say(terminal.output, JSON.stringify({ source, trees }, null, 2))
      return 0
    }
    say(terminal.output, sourceLine({ id: source, ...entry }))
    for (const { tree, cites } of trees) say(terminal.output, ...linesOf(tree, cites))
    return 0
  }
}

function linesOf(tree: string, all: readonly Citing[]): string[] {
  const counts = KINDS.map(kind => counted(all.filter(one => one.kind === kind).length, kind))
  return [
    '',
    `${tree}: ${counts.join(', ')}`,
    ...KINDS.flatMap(kind =>
      all
        .filter(one => one.kind === kind)
        .map(
          ({ id, beside }) => `  ${kind} ${id}${beside.length === 0 ? '  (rests on it alone)' : ''}`
        )
    )
  ]
}

const counted = (count: number, kind: Citing['kind']): string =>
  `${count} ${kind}${count === 1 ? '' : 's'}`

/** One place in a tree that rests on a source. */
interface Citing {
  readonly kind: 'rule' | 'verdict' | 'note' | 'question'
  readonly id: string
  /** The other sources that it rests on as well. */
  readonly beside: readonly string[]
}

/** Every rule, verdict, note and question of a tree that rests on a source. */
function citing(tree: Tree, source: string): readonly Citing[] {
  const { rules, questions, advice } = tree
  const all: readonly (readonly [Citing['kind'], string, readonly string[]])[] = [
    ...rules.map(({ id, because }) => ['rule', id, because] as const),
    ...Object.entries(advice.verdicts).map(
      ([id, { because }]) => ['verdict', id, because] as const
    ),
    ...Object.entries(advice.notes).map(([id, { because }]) => ['note', id, because] as const),
    ...Object.values(questions).map(({ id, because }) => ['question', id, because] as const)
  ]
  return all
    .filter(([, , because]) => because.includes(source))
    .map(([kind, id, because]) => ({ kind, id, beside: because.filter(one => one !== source) }))
}

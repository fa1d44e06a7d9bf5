import { PassThrough } from 'node:stream'
import { type LoadFiles, loadAnew, loadProject, type Project } from '../../src/cli/read-project.ts'
import { run } from '../../src/cli/run.ts'
import type { Terminal } from '../../src/cli/terminal.ts'
import type { AuthoredFile, Loaded } from '../../src/load/load.ts'
import { openShipped } from '../helpers/shipped.ts'

/** What a command line came to. */
export interface Ran {
  readonly code: number
  readonly output: string
  readonly errors: string
}

/** Runs a command line over real streams, on a fixed day; `typed` makes it a terminal with a person at it. */
export async function runCommand(
  args: readonly string[],
  { typed, today = '2026-11-25T12:00:00Z' }: { typed?: readonly string[]; today?: string } = {}
): Promise<Ran> {
  const input = new PassThrough()
  const output = collect()
  const errors = collect()
  const terminal: Terminal = {
    input,
    output: output.stream,
    errors: errors.stream,
    interactive: typed !== undefined,
    colors: false,
    columns: null,
    today: new Date(today)
  }
  // Without a person the input stays open: a command that asked something would never come back.
  if (typed) input.end(typed.map(line => `${line}\n`).join(''))
  const code = await run(args, terminal, openOnce)
  return { code, output: output.text(), errors: errors.text() }
}

/** Walks the jar with some facts and gives the object that `--json` prints. */
export async function walkJson(...args: readonly string[]) {
  const { output } = await runCommand(['walk', 'kombucha-jar', '--json', ...args])
  return JSON.parse(output)
}

/** Facts that finish the walk of an untroubled jar. */
export const UNTROUBLED = [
  ...['people-signs', 'container-signs', 'jar-signs', 'smell-and-liquid', 'drinkers'].flatMap(
    id => ['--none', id]
  ),
  ...[
    'surface-texture=wet-film',
    'spots-and-color=plain-color',
    'jar-ph=3.2@meter',
    'day=9'
  ].flatMap(fact => ['--given', fact])
]

/** How a command line comes by its project here: files that were loaded lately are not loaded again. */
export const openOnce = (folder?: string): Promise<Project> =>
  folder === undefined ? openShipped() : loadProject(folder, loadOnce)

const LATELY = 3
const lately: { readonly files: readonly AuthoredFile[]; readonly loaded: Promise<Loaded> }[] = []

/** As the installed command does by its cache, byte for byte. */
const loadOnce: LoadFiles = files => {
  const at = lately.findIndex(one => areSame(one.files, files))
  const [known = { files, loaded: loadAnew(files) }] = at < 0 ? [] : lately.splice(at, 1)
  lately.unshift(known)
  lately.splice(LATELY)
  return known.loaded
}

const areSame = (some: readonly AuthoredFile[], others: readonly AuthoredFile[]): boolean =>
  some.length === others.length &&
  some.every(({ path, text }, at) => path === others[at]?.path && text === others[at]?.text)

function collect() {
  const stream = new PassThrough()
  const chunks: Buffer[] = []
  stream.on('data', chunk => chunks.push(chunk))
  return { stream, text: () => Buffer.concat(chunks).toString('utf8') }
}

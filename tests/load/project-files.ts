import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { applyPatch, parsePatch } from 'diff'
import { formatFinding } from '../../src/findings/format-finding.ts'
import { type AuthoredFile, type Loaded, load } from '../../src/load/load.ts'

const here = import.meta.dirname

/** The files in one text: each begins with `# file: trees/x/tree.yaml`. */
function filesIn(text: string): readonly AuthoredFile[] {
  const parts = text.split(/^# file: (\S+)\n/m).slice(1)
  return parts.flatMap((path, at) => (at % 2 === 0 ? [{ path, text: parts[at + 1] ?? '' }] : []))
}

/** The project in which nothing is wrong. */
export const wholeProject = (): readonly AuthoredFile[] =>
  filesIn(readFileSync(join(here, '../bad/nothing-wrong.yaml'), 'utf8'))

/** The whole project with some files in place of its own. */
export function projectWith(text: string): readonly AuthoredFile[] {
  const files = filesIn(text)
  const replaced = new Set(files.map(({ path }) => path))
  return [...wholeProject().filter(({ path }) => !replaced.has(path)), ...files]
}

/** Every finding that has a faulty project, by its code. */
export const FAULTY: readonly string[] = readdirSync(join(here, '../bad'))
  .filter(file => file.endsWith('.diff'))
  .map(file => basename(file, '.diff'))

/** What `tests/bad/<code>.diff` makes of the project in which nothing is wrong. */
export function faultyProject(code: string): {
  readonly files: readonly AuthoredFile[]
  /** Those of them that are changed or new. */
  readonly changed: readonly AuthoredFile[]
} {
  const whole = new Map(wholeProject().map(({ path, text }) => [path, text]))
  const changed: AuthoredFile[] = []
  for (const patch of parsePatch(readFileSync(join(here, `../bad/${code}.diff`), 'utf8'))) {
    const { oldFileName: from = '', newFileName: to = '' } = patch
    const text = applyPatch(whole.get(from) ?? '', patch)
    if (text === false) throw new Error(`tests/bad/${code}.diff does not fit ${from}`)
    whole.delete(from)
    if (to !== '/dev/null') changed.push({ path: to, text: padded(text) })
  }
  const rest = [...whole].map(([path, text]) => ({ path, text }))
  return { files: [...rest, ...changed], changed }
}

/** A last line `# padded to 600 KiB` lengthens a file by a comment. */
function padded(text: string): string {
  const [line, kib] = /^# padded to (\d+) KiB\n$/m.exec(text) ?? []
  return line === undefined
    ? text
    : text.replace(line, `# ${'padding '.repeat((Number(kib) * 1024) / 8)}\n`)
}

/** The whole project with one passage of one file exchanged. */
export function projectWhere(
  path: string,
  passage: string | RegExp,
  by: string
): readonly AuthoredFile[] {
  return wholeProject().map(file => {
    if (file.path !== path) return file
    const text = file.text.replace(passage, by)
    if (text === file.text) throw new Error(`${path} has no ${passage}`)
    return { path, text }
  })
}

/** What an author reads of what loading found. */
export function reportOn(
  files: readonly AuthoredFile[],
  { findings }: Pick<Loaded, 'findings'>
): string {
  const textOf = (path: string) => files.find(file => file.path === path)?.text
  return findings.map(finding => formatFinding(finding, textOf)).join('\n')
}

/** The codes of what is found, in order. */
export const codesOf = async (files: readonly AuthoredFile[]): Promise<readonly string[]> =>
  (await load(files)).findings.map(({ code }) => code)

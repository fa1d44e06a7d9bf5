import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { formatFinding } from '../../src/findings/format-finding.ts'
import { type AuthoredFile, type Loaded, load } from '../../src/load/load.ts'

const here = import.meta.dirname

/**
 * The files in one text: each begins with `# file: trees/x/tree.yaml`.
 *
 * `, padded to 600 KiB` lengthens one by a comment; `# no file: …` takes one of the whole project away.
 */
export function filesIn(text: string): { files: AuthoredFile[]; without: string[] } {
  const parts = text.split(/^# (file|no file): (\S+?)(?:, padded to (\d+) KiB)?\n/m).slice(1)
  const files: AuthoredFile[] = []
  const without: string[] = []
  for (let i = 0; i + 3 < parts.length; i += 4) {
    const [kind, path = '', padded, content = ''] = parts.slice(i, i + 4)
    if (kind === 'file') files.push({ path, text: pad(content, padded) })
    else without.push(path)
  }
  return { files, without }
}

const pad = (text: string, kib: string | undefined): string =>
  kib === undefined ? text : `${text}# ${'padding '.repeat((Number(kib) * 1024) / 8)}\n`

/** The project in which nothing is wrong. */
export const wholeProject = (): readonly AuthoredFile[] =>
  filesIn(readFileSync(join(here, '../bad/nothing-wrong.yaml'), 'utf8')).files

/** The whole project with some files in place of its own. */
export function projectWith(text: string): readonly AuthoredFile[] {
  const { files, without } = filesIn(text)
  const replaced = new Set([...files.map(({ path }) => path), ...without])
  return [...wholeProject().filter(({ path }) => !replaced.has(path)), ...files]
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

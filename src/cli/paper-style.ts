import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { PROJECT } from './read-project.ts'

const FOLDER = join(PROJECT, 'src/ui/style')
const SHEETS = ['fonts', 'base', 'outcome', 'sheet']

/** The style of paper as one text that names no other file: the typefaces stand in it. */
export function paperStyle(): string {
  const css = SHEETS.map(name => readFileSync(join(FOLDER, `${name}.css`), 'utf8')).join('\n')
  return css.replace(/url\("\.\/(fonts\/[^"]+)"\)/g, (_, file: string) => {
    const font = readFileSync(join(FOLDER, file)).toString('base64')
    return `url("data:font/woff2;base64,${font}")`
  })
}

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

// Beside this folder in `src`, and in the package beside the folder of the compiled command.
const FOLDER = fileURLToPath(new URL('../style/', import.meta.url))

/** The style sheets that paper is made of. */
export const PAPER_SHEETS: readonly string[] = [
  'fonts',
  'base',
  'outcome',
  'sheet',
  'leads',
  'framed'
]

/** The style of paper as one text that names no other file: the typefaces stand in it. */
export function paperStyle(): string {
  const css = PAPER_SHEETS.map(name => readFileSync(join(FOLDER, `${name}.css`), 'utf8')).join('\n')
  return css.replace(/url\("\.\/(fonts\/[^"]+)"\)/g, (_, file: string) => {
    const font = readFileSync(join(FOLDER, file)).toString('base64')
    return `url("data:font/woff2;base64,${font}")`
  })
}

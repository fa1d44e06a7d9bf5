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
  'framed',
  'decision'
]

/** The style sheets of the languages that have typefaces of their own, by their tags. */
export const FONTS_OF_LANGUAGES: readonly string[] = ['ar', 'vi', 'zh']

const styleOf = (name: string) => readFileSync(join(FOLDER, `${name}.css`), 'utf8')

/**
 * The style of paper in a language as one text that names no other file: the typefaces stand in it, so that
 * a sheet carries no other language's.
 */
export function paperStyle(language: string): string {
  const own = FONTS_OF_LANGUAGES.includes(language) ? [`fonts-${language}`] : []
  return inOneText([...PAPER_SHEETS, ...own])
}

/** The typefaces alone, in the same way, for a page that has a style of its own. */
export const paperFonts = (): string => inOneText(['fonts'])

function inOneText(names: readonly string[]): string {
  const css = names
    .map(styleOf)
    .join('\n')
    .replace(/@import [^;]*;/g, '')
  return css.replace(/url\("\.\/(fonts\/[^"]+)"\)/g, (_, file: string) => {
    const font = readFileSync(join(FOLDER, file)).toString('base64')
    return `url("data:font/woff2;base64,${font}")`
  })
}

import { createHash } from 'node:crypto'
import { type Group, groupOf } from '../tree/group.ts'

/** The ferments and languages that a file is to hold. */
export interface Chosen {
  readonly trees: readonly string[]
  readonly tags: readonly string[]
}

/** What a file is put together from. */
export interface SingleFileParts {
  /** The trees and words chosen, as the program reads them. */
  readonly whole: Group
  readonly chosen: Chosen
  /** The office's file as it stands. */
  readonly office: string
  /** YYYY-MM-DD. */
  readonly packedOn: string
  readonly licenses: string
  /** A built part by its name. @throws Error where it is missing. */
  readonly read: (name: string) => Buffer
}

/** The fingerprints of the trees that were built, by tree. */
export const printsOf = (whole: Group): ReadonlyMap<unknown, unknown> =>
  new Map(entriesOf(whole).map(({ id, fingerprint }) => [id, fingerprint]))

const entriesOf = (whole: Group): readonly Group[] => listOf(groupOf(whole.catalogue).trees)
const listOf = (list: unknown): readonly Group[] => (Array.isArray(list) ? list.map(groupOf) : [])

/** Of everything that was built what was chosen. */
export function chosenOf(whole: Group, { trees, tags }: Chosen): Group {
  const catalogue = groupOf(whole.catalogue)
  const only = (group: unknown, ids: readonly string[]) =>
    Object.fromEntries(Object.entries(groupOf(group)).filter(([id]) => ids.includes(id)))
  const words = Object.entries(only(whole.words, trees)).map(([id, texts]) => [
    id,
    only(texts, tags)
  ])
  return {
    catalogue: {
      ...catalogue,
      trees: entriesOf(whole).filter(({ id }) => trees.some(tree => tree === id)),
      languages: listOf(catalogue.languages).filter(({ tag }) => tags.some(one => one === tag))
    },
    trees: only(whole.trees, trees),
    drawings: only(whole.drawings, trees),
    words: Object.fromEntries(words),
    screens: only(whole.screens, tags),
    kiosk: only(whole.kiosk, tags)
  }
}

/** The page with everything in it, under a policy that lets it ask for nothing. */
export function inOneFile(parts: SingleFileParts): string {
  const { whole, chosen, office, packedOn, licenses, read } = parts
  const style = withFonts(read('style.css').toString(), chosen.tags, read)
  // What ends a script ends it in a string, too.
  const program = read('program.js')
    .toString()
    .replace(/<\/(script)/gi, '<\\/$1')
    .replace(/<!--/g, '<\\!--')
  const policy = [
    "default-src 'none'",
    `script-src '${digestOf(program)}'`,
    `style-src '${digestOf(style)}'`,
    'font-src data:',
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'"
  ].join('; ')
  const data = [
    held('jarside-trees', JSON.stringify(whole)),
    held('jarside-office', office),
    held('jarside-packed-on', packedOn),
    held('jarside-licenses', licenses)
  ].join('\n')
  const put: Readonly<Record<string, string>> = {
    POLICY: policy,
    STYLE: style,
    DATA: data,
    PROGRAM: program
  }
  return read('page.html')
    .toString()
    .replace(/%([A-Z]+)%/g, (gap, name: string) => put[name] ?? gap)
}

const digestOf = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`

/** A text that the program reads and the browser runs none of. JSON may hold `<` in another form. */
function held(id: string, text: string): string {
  const inside = text.trimStart().startsWith('{')
    ? text.replace(/</g, '\\u003c')
    : text.replace(/</g, '‹')
  return `    <script type="text/plain" id="${id}">${inside}</script>`
}

/** Which typefaces a language alone needs. */
const FONTS_OF: Readonly<Record<string, RegExp>> = {
  ar: /arabic/,
  vi: /vietnamese/,
  zh: /noto-sans-sc/
}

/** A style with its typefaces inside; those of languages that are not there are left out. */
function withFonts(style: string, tags: readonly string[], read: SingleFileParts['read']): string {
  const others = Object.entries(FONTS_OF).flatMap(([tag, fonts]) =>
    tags.includes(tag) ? [] : [fonts]
  )
  return style.replace(/@font-face\s*\{[^}]*\}/g, face => {
    const [url = '', file = ''] = /url\(["']?\.?\/?([\w.-]+\.woff2)["']?\)/.exec(face) ?? []
    if (file === '' || others.some(fonts => fonts.test(file))) return ''
    const inside = `url(data:font/woff2;base64,${read(file).toString('base64')})`
    return face.replace(url, () => inside)
  })
}

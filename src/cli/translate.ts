import { existsSync, mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { ExchangeState, ExchangeText } from '../exchange/exchange-text.ts'
import type { TranslatedText } from '../load/reviewed-texts.ts'
import { isForStaff } from '../translation/audience.ts'
import { REVIEWERS, type ReviewEntry, textHash } from '../translation/ledger.ts'
import { kindOf, type TextKind } from '../words/kinds.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { PROJECT } from './read-project.ts'
import { say } from './terminal.ts'
import { exported, imported, importLines, textsIn } from './translate-files.ts'
import { TRANSLATE_MANUAL } from './translate-manual.ts'
import { oneAtATime, writeWhole } from './write-file.ts'

/** Most dangerous first: what somebody does on it, whom they call, what they beware of. */
const KINDS: readonly TextKind[] = ['action', 'referral', 'caution', 'advice', 'label']
const FORBIDS = /\b(?:not|never|no|none|nobody|nothing|only|unless)\b|n’t\b/i

/** `jarside translate`: for whoever coordinates translations. */
export const translate: Command = {
  name: 'translate',
  summary: 'what is translated, what was reviewed, and what has to be read',
  manual: TRANSLATE_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      text: { type: 'string', multiple: true },
      by: { type: 'string' },
      as: { type: 'string', default: 'xliff' },
      open: { type: 'boolean', default: false },
      to: { type: 'string' },
      try: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const { loaded } = await open(values.in)
    const [task, tag, ...rest] = positionals
    if (task === 'status' && tag === undefined) {
      for (const each of Object.keys(loaded.translations)) {
        say(terminal.output, ...statusLines(each, await textsIn(loaded, each)))
      }
      return 0
    }
    if (task === 'export' && tag !== undefined && rest.length === 0) {
      const text = await exported(loaded, tag, values)
      if (values.to === undefined) terminal.output.write(text)
      else writeWhole(values.to, text)
      return 0
    }
    if (task === 'import' && tag !== undefined && rest.length === 1) {
      const folder = values.in ?? PROJECT
      const done = await imported(folder, loaded, tag, rest[0] ?? '', { look: values.try })
      say(terminal.output, ...importLines(done, tag, values.try))
      return done.left.length === 0 ? 0 : 1
    }
    const texts = loaded.translations[tag ?? '']
    if ((task !== 'packet' && task !== 'accept') || rest.length > 0) {
      throw new BadUse(
        'Say `status`, `packet <language>`, `accept <language>`, `export <language>` or `import <language> <file>`.'
      )
    }
    if (tag === undefined || texts === undefined) {
      throw new BadUse(`Name one language: ${Object.keys(loaded.translations).join(', ')}.`)
    }
    if (task === 'packet') {
      say(terminal.output, ...packetLines(tag, texts))
      return 0
    }
    const by = REVIEWERS.find(role => role === values.by)
    if (by === undefined) throw new BadUse(`Say who read it, by role: ${REVIEWERS.join(', ')}.`)
    const read = (values.text ?? []).flatMap(name => named(name, texts))
    if (read.length === 0) throw new BadUse('Name what was read: `--text <name>`.')
    const on = terminal.today.toISOString().slice(0, 10)
    const path = await accept(values.in ?? PROJECT, tag, read, { by, on })
    const count = read.length === 1 ? '1 text' : `${read.length} texts`
    say(terminal.output, `${count} of \`${tag}\` reviewed by a ${by} on ${on} (${path}).`)
    return 0
  }
}

/** A text by its name, or all of a file. @throws BadUse where there is none. */
function named(name: string, texts: readonly TranslatedText[]): readonly TranslatedText[] {
  const found = texts.filter(({ id }) => id === name || id.startsWith(`${name}:`))
  if (found.length === 0)
    throw new BadUse(`There is no text \`${name}\`. See \`translate packet\`.`)
  return found
}

/** Adds to the ledger what was read, and gives its path. */
async function accept(
  folder: string,
  tag: string,
  read: readonly TranslatedText[],
  { by, on }: Pick<ReviewEntry, 'by' | 'on'>
): Promise<string> {
  const path = `shared/reviews/${tag}.json`
  const entries = await Promise.all(
    read.map(async ({ id, english, target }) => {
      const hashes = { english: await textHash(english), target: await textHash(target) }
      return [id, { ...hashes, by, on }] as const
    })
  )
  await oneAtATime(folder, () => {
    const file = join(folder, path)
    mkdirSync(join(folder, 'shared/reviews'), { recursive: true })
    // Read anew: somebody may have accepted others meanwhile.
    const before: object = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {}
    const all = Object.entries({ ...before, ...Object.fromEntries(entries) })
    all.sort(([a], [b]) => (a < b ? -1 : 1))
    writeWhole(file, `${JSON.stringify(Object.fromEntries(all), null, 2)}\n`)
  })
  return path
}

const kindOfText = ({ id }: TranslatedText): TextKind => {
  const [stem = '', key = ''] = id.split(/:(.*)/s)
  return kindOf(stem, key)
}

const STATES = ['missing', 'draft', 'reviewed', 'stale'] as const satisfies ExchangeState[]

/** What a language has of each kind; what only an office's people read stands apart, since it may be missing. */
function statusLines(tag: string, texts: readonly ExchangeText[]): readonly string[] {
  const row = (name: string, of: readonly ExchangeText[]) => {
    const counts = STATES.map(state => of.filter(text => text.state === state).length)
    const numbers = [of.length, ...counts].map(number => String(number).padStart(10))
    return `  ${name.padEnd(10)}${numbers.join('')}`
  }
  const staff = texts.filter(({ id }) => isStaffId(id))
  const callers = texts.filter(({ id }) => !isStaffId(id))
  return [
    tag,
    `  ${' '.repeat(10)}${['texts', ...STATES].map(head => head.padStart(10)).join('')}`,
    ...KINDS.map(kind =>
      row(
        kind,
        callers.filter(text => text.kind === kind)
      )
    ),
    row('for staff', staff),
    row('all', texts)
  ]
}

const isStaffId = (id: string): boolean => {
  const [stem = '', key = ''] = id.split(/:(.*)/s)
  return isForStaff(stem, key)
}

/** What is not reviewed, each English sentence once, most dangerous first. */
function packetLines(tag: string, texts: readonly TranslatedText[]): readonly string[] {
  const open = texts.filter(({ state }) => state !== 'reviewed')
  const once = new Map(open.map(text => [`${text.english}\n${text.target}`, text] as const))
  const words = [...once.values()].reduce((sum, { target }) => sum + target.split(/\s+/).length, 0)
  const lines = KINDS.flatMap(kind => {
    const ofKind = [...once.values()].filter(text => kindOfText(text) === kind)
    const first = ofKind.filter(({ english }) => FORBIDS.test(english))
    const then = ofKind.filter(({ english }) => !FORBIDS.test(english))
    return [
      '',
      `${kind.toUpperCase()}: ${ofKind.length}`,
      ...[...first, ...then].flatMap(({ id, english, target, state }) => [
        '',
        state === 'stale' ? `${id} (signed before one of the two was changed)` : id,
        `  en  ${english}`,
        `  ${tag.padEnd(2)}  ${target}`
      ])
    ]
  })
  return [`To read in ${tag}: ${once.size} sentences, ${words} words.`, ...lines]
}

import { type Comparison, compare } from '../compare/compare.ts'
import { reworded, type SpokenTree } from '../compare/wording.ts'
import { comparisonHtml } from '../paper/comparison.tsx'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { comparisonText } from './comparison-text.ts'
import { openEdition } from './open-edition.ts'
import { createPaint } from './paint.ts'
import { paperStyle } from './paper-style.ts'
import { say } from './terminal.ts'
import { writeWhole } from './write-file.ts'

const MANUAL = `NAME
  jarside compare - show what changed between two editions of a tree

USAGE
  jarside compare <old> <new> [options]

  Each is a tree (kombucha-jar), a published edition (kombucha-jar@1), or a file of either.
  Over every set of answers that both know it finds those whose outcome changed, and says what they
  have in common: less cautious first. A change is less cautious when any track or the use is
  gentler, whatever else is stricter. Shares count sets of answers, not callers.

OPTIONS
  --accept <rule-or-source>  what justifies that something became less cautious: a rule of the new
                             edition or a source that it cites; may be given more than once
  --html <file>              write a page that a reviewer can print
  --json                     print one object: { before, after, sets, changed, patterns, … };
                             counts are strings, because they are exact
  --in <folder>              read trees and editions from this folder
  --help                     show this page

EXIT CODES
  0  nothing became less cautious, or it was accepted
  1  something became less cautious
  2  an unknown edition, rule or source, or an option that does not fit`

/** `jarside compare`: what a reviewer reads before signing. */
export const compareCommand: Command = {
  name: 'compare',
  summary: 'show what changed between two editions, less cautious first',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      accept: { type: 'string', multiple: true, default: [] },
      html: { type: 'string' },
      json: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const [old, next, ...rest] = positionals
    if (old === undefined || next === undefined || rest.length > 0) {
      throw new BadUse('Name two editions: `jarside compare <old> <new>`.')
    }
    const project = await open(values.in)
    const before = await openEdition(project, old)
    const after = await openEdition(project, next)
    if (before.tree.id !== after.tree.id) {
      throw new BadUse(`\`${before.tree.id}\` and \`${after.tree.id}\` are two trees.`)
    }
    const accepted = values.accept.map(name => accept(after, name))
    const comparison = compared(before, after)
    const wording = reworded(before, after)
    const words = createWords(project.loaded.words, SOURCE_TAG)
    const making = { tree: after.tree, words, paint: createPaint(terminal.colors) }
    if (values.html !== undefined) {
      writeWhole(
        values.html,
        comparisonHtml({ comparison, wording, accepted, ...making, style: paperStyle(SOURCE_TAG) })
      )
    }
    if (values.json) {
      const plain = { ...comparison, wording, accepted }
      say(terminal.output, JSON.stringify(plain, exact, 2))
    } else {
      say(terminal.output, ...comparisonText(comparison, wording, making))
    }
    if (!isLessCautious(comparison)) return 0
    const verdict = accepted.length > 0 ? `Accepted: ${accepted.join(', ')}.` : NOT_ACCEPTED
    say(terminal.errors, verdict)
    return accepted.length > 0 ? 0 : 1
  }
}

const NOT_ACCEPTED =
  'Something became less cautious. Name the rule or source that justifies it: --accept <rule-or-source>'

/** Also where a sign no longer ends the walk with a call for help. */
const isLessCautious = ({ changed, emergencies }: Comparison): boolean =>
  changed['less-cautious'] > 0n || emergencies.gone.length > 0

function compared(before: SpokenTree, after: SpokenTree): Comparison {
  try {
    return compare(before.tree, after.tree)
  } catch (error) {
    // An observation of another kind: said by its name.
    throw new BadUse(`These cannot be compared: ${error instanceof Error ? error.message : error}.`)
  }
}

/** A rule of the tree, or a source that it cites. @throws BadUse when it is neither. */
function accept({ tree }: SpokenTree, name: string): string {
  const rule = tree.rules.find(({ id }) => id === name)
  if (rule !== undefined) return `rule ${name}`
  if (JSON.stringify(tree).includes(`"${name}"`) && citesOf(tree).has(name)) return `source ${name}`
  throw new BadUse(`\`${tree.id}\` has no rule \`${name}\` and cites no source of that name.`)
}

function citesOf(tree: SpokenTree['tree']): ReadonlySet<string> {
  const cited = new Set<string>()
  JSON.stringify(tree, (key, value: unknown) => {
    if (key === 'because' && Array.isArray(value)) for (const id of value) cited.add(String(id))
    return value
  })
  return cited
}

const exact = (_: string, value: unknown): unknown =>
  typeof value === 'bigint' ? value.toString() : value

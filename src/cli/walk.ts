import { evaluate } from '../evaluate/evaluate.ts'
import { withDerived } from '../machine/derived/derive.ts'
import { reportOn } from '../report/report.ts'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import { type Command, readArguments } from './command.ts'
import { readTold } from './given.ts'
import { readLines } from './line-reader.ts'
import type { Making } from './making.ts'
import { outcomeText } from './outcome-text.ts'
import { createPaint } from './paint.ts'
import { reportJson } from './report-json.ts'
import { print, say } from './terminal.ts'
import { treeNamed } from './tree-named.ts'
import { unfinishedText } from './unfinished-text.ts'
import { WALK_MANUAL } from './walk-manual.ts'
import { wordsOfTree } from './words-of-tree.ts'

/** `jarside walk`: one walk through a tree, asked in a terminal or told on the command line. */
export const walkCommand: Command = {
  name: 'walk',
  summary: 'walk a tree: asked one question at a time, or told with --given',
  manual: WALK_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      given: { type: 'string', multiple: true, default: [] },
      none: { type: 'string', multiple: true, default: [] },
      unsure: { type: 'string', multiple: true, default: [] },
      json: { type: 'boolean', default: false },
      strict: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const project = await open(values.in)
    const tree = treeNamed(project, positionals, terminal)
    if (!tree) return 1
    const { loaded, office } = project
    const others = loaded.trees.filter(({ id }) => id !== tree.id)
    const nameable = { tree, others, observations: Object.keys(loaded.observations) }
    const { answers, either } = readTold(nameable, values)
    const { texts, sources } = wordsOfTree(tree, loaded)
    const making: Making = {
      words: createWords(texts, SOURCE_TAG),
      paint: createPaint(terminal.colors),
      sources,
      office
    }
    if (terminal.interactive && !values.json) {
      // The library of its session is not waited for where nothing is asked.
      const { walkInteractively } = await import('./interactive-walk.ts')
      const lines = readLines(terminal)
      try {
        const end = await walkInteractively(tree, answers, { terminal, lines, making })
        return values.strict && !evaluate(tree, withDerived(tree, end)).walk.finished ? 1 : 0
      } finally {
        lines.close()
      }
    }
    const report = reportOn(
      evaluate(tree, withDerived(tree, answers), either),
      office,
      terminal.today
    )
    if (values.json) {
      say(terminal.output, JSON.stringify(reportJson(report, making.words, sources), null, 2))
    } else {
      const lines = report.evaluation.walk.finished
        ? outcomeText(report, making)
        : unfinishedText(report, making)
      print(terminal, ...lines)
    }
    return values.strict && !report.evaluation.walk.finished ? 1 : 0
  }
}

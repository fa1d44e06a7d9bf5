import type { Finding } from '../findings/finding.ts'
import { formatFinding } from '../findings/format-finding.ts'
import { adviceScoreOf } from '../prove/faults/advice-score.ts'
import { scoreOf } from '../prove/faults/score.ts'
import { closedFaults, unknownFaults } from '../prove/faults/unfound.ts'
import { prove } from '../prove/prove.ts'
import { proveKnowHow } from '../prove/prove-know-how.ts'
import { must } from '../tree/must.ts'
import type { Tree } from '../tree/tree.ts'
import { BadUse } from './bad-use.ts'
import { type CheckedTree, checkedLines, checkedTree } from './checked-tree.ts'
import { type Command, readArguments } from './command.ts'
import { adviceLines, recordedLine, recordScores, scoreLines } from './fault-scores.ts'
import type { Project } from './read-project.ts'
import { readingLines, readingOf, wordingLines } from './reading-lines.ts'
import { say } from './terminal.ts'
import { authoredTrees, noSuchTree } from './tree-named.ts'

const MANUAL = `NAME
  jarside check - load every authored file and prove every tree

USAGE
  jarside check [--tree <id>] [--reading]
                [--faults [--every <n> | --record]] [--json] [--in <folder>]

  Prints each finding with its place, its reason and how to fix it, then one line for each
  property of each tree: in how many cases it is proved (rules, questions, danger signs …).
  "Not decided" is not "proved". trees/README.md has a page for each property.

  It tells what each tree's sheets ask of a reader: Flesch-Kincaid and SMOG grades, with and without
  the long words that shared/long-words.yaml allows; each sheet above grade 8 and each list of steps
  above 6; and of the Spanish the ease by Fernández Huerta and INFLESZ. With --reading also steps that
  are long, forbid first, deny twice or ask for two things, and long words that are not listed, or
  listed and not used. None of it is a finding.

  With --faults it also makes each slip that an author can make (a branch deleted, a verdict
  swapped, a limit moved, a raise or a use taken away, an unsure dropped) in each tree in turn, and
  counts how many of those that make it less cautious its rules and laws find. That takes minutes.
  So it does with what is said: a step dropped, said after the next one, a condition taken away.
  Those that nothing finds are listed with the reason under \`unfound-faults:\` beside the rules.
  With --record it writes the scores down, and without --faults it tells what was written down.

OPTIONS
  --tree <id>    load everything, but prove and score this tree alone
  --reading      tell how steps are worded, and which long words there are
  --faults       score the trees by seeded faults, and name those that nothing finds
  --every <n>    make every nth fault alone
  --record       write the scores into trees/fault-scores.json
  --json         print one object: { ok, findings, trees: [ { tree, proved, properties } ] }
  --in <folder>  check this folder's files
  --help         show this page

EXIT CODES
  0  no findings, and everything proved
  1  findings, or something not proved
  2  an option that does not fit, or no such folder`

/** `jarside check`: what an author runs before asking for a review. */
export const check: Command = {
  name: 'check',
  summary: 'load every authored file, prove every tree, print findings',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      json: { type: 'boolean', default: false },
      reading: { type: 'boolean', default: false },
      faults: { type: 'boolean', default: false },
      every: { type: 'string', default: '1' },
      tree: { type: 'string' },
      record: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    if (positionals.length > 0) {
      throw new BadUse('`jarside check` takes no names. For another folder use --in <folder>.')
    }
    const project = await open(values.in)
    const { loaded, files } = project
    const wanted = values.tree === undefined ? loaded.trees : treesNamed(values.tree, project)
    const { allowed, places } = loaded.knowHow
    const trees = wanted.map(tree => {
      const answers = proveKnowHow(tree, allowed[tree.id], places)
      const own = prove(tree, loaded.places[tree.id], loaded.sources)
      return checkedTree(tree.id, answers === null ? own : [...own, answers])
    })
    const every = Number(values.every)
    if (!Number.isInteger(every) || every < 1) {
      throw new BadUse('`--every` takes a whole number from 1 on.')
    }
    if (values.record && (!values.faults || every > 1)) {
      throw new BadUse(
        '`--record` goes with `--faults`, and with every fault: leave out `--every`.'
      )
    }
    const scored = values.faults ? wanted : []
    const scores = scored.map(tree => scoreOf(tree, loaded.sources, every))
    const ofAdvice = scored.map(tree => adviceScoreOf(tree, loaded.sources, every))
    if (values.record) await recordScores(scored, scores, ofAdvice, values.in)
    // A sheet is put together only where the words of the screens are there and right.
    const hasSheets = loaded.findings.length === 0 && Object.hasOwn(loaded.words.en ?? {}, 'ui')
    const read = hasSheets ? wanted.map(tree => readingOf(tree, loaded, terminal.today)) : []
    const findings = [
      ...loaded.findings,
      ...trees.flatMap(tree => tree.findings),
      ...wanted.flatMap(tree => unknownFaults(tree, loaded.places[tree.id] ?? {})),
      ...scored.flatMap(tree => closedFaults(tree, loaded.places[tree.id] ?? {}, loaded.sources))
    ]
    const ok = findings.length === 0 && trees.length > 0 && trees.every(({ proved }) => proved)
    if (values.json) {
      say(
        terminal.output,
        JSON.stringify(
          {
            ok,
            findings,
            trees: trees.map(plain),
            ...(values.reading && { reading: read }),
            ...(values.faults && { faults: scores, adviceFaults: ofAdvice })
          },
          null,
          2
        )
      )
    } else {
      const textOf = (path: string) => files.find(file => file.path === path)?.text
      const report = findings.map((finding: Finding) => formatFinding(finding, textOf))
      say(
        terminal.output,
        ...report,
        ...trees.flatMap(checkedLines),
        ...read.flatMap(readingLines),
        ...(values.reading && hasSheets ? wordingLines(loaded, read, terminal.today) : []),
        ...(values.faults
          ? [
              ...scored.flatMap((tree, index) => scoreLines(tree, must(scores[index], 'score'))),
              ...scored.flatMap((tree, index) =>
                adviceLines(tree, must(ofAdvice[index], 'advice score'))
              )
            ]
          : wanted.map(tree => recordedLine(tree, loaded.faultScores))),
        lastLine(findings.length, ok, openCases(trees), values.tree)
      )
    }
    return ok ? 0 : 1
  }
}

/** In how many cases a law does not hold yet and a tree says so. */
const openCases = (trees: readonly CheckedTree[]): number =>
  trees
    .flatMap(({ properties }) => properties)
    .reduce((sum, { counts }) => sum + (counts.open ?? 0), 0)

const plain = ({ tree, proved, properties }: CheckedTree) => ({ tree, proved, properties })

/** None, where loading found something in it. @throws BadUse when nobody wrote such a tree. */
function treesNamed(id: string, { loaded, files }: Project): readonly Tree[] {
  const authored = authoredTrees(files)
  if (!authored.includes(id)) throw noSuchTree(id, authored)
  return loaded.trees.filter(tree => tree.id === id)
}

function lastLine(findings: number, ok: boolean, open: number, tree?: string): string {
  const all = tree === undefined ? 'Everything' : `Everything of \`${tree}\``
  if (ok && open > 0) {
    const cases = open === 1 ? 'one case' : `${open} cases`
    return `No findings. ${all} is proved but ${cases} that \`open-cases:\` lists.`
  }
  if (ok) return `No findings. ${all} is proved.`
  if (findings === 0) return 'No findings, but not everything is proved.'
  return findings === 1 ? '1 finding.' : `${findings} findings.`
}

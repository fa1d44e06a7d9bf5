import { createReadStream, existsSync, statSync } from 'node:fs'
import { type Attempt, readAttempt } from '../practice/attempt.ts'
import { byVolunteer, eachOnce, type PracticeScore, practiceScore } from '../practice/score.ts'
import type { Verdict } from '../tree/tree.ts'
import { missedLine, rateText, sideLines } from '../words/practice-lines.ts'
import { createWords, SOURCE_TAG, type Words } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { columns } from './columns.ts'
import { type Command, readArguments } from './command.ts'
import { eachLine } from './each-line.ts'
import { say } from './terminal.ts'

const MANUAL = `NAME
  jarside practice - how volunteers do on practice calls

USAGE
  jarside practice FILE... [--json] [--in <folder>]

  Each file holds JSON Lines, as the page "Practice calls" writes them; \`-\` reads them from the input.
  A call that is in several files counts once. For the office, then for each volunteer by number:

    dangers   how many of the dangerous calls were seen as dangerous, with the exact 95 % interval
              (Clopper and Pearson). A call is dangerous with a DANGER or WARNING verdict, and seen only
              where the volunteer was at least as cautious as the tree
    agreement for person, container, batch and use: same, too gentle, too strict, by how many levels
              (−2: 1 is one call that was two levels too gentle), and Cohen's kappa, linear weights,
              with its 95 % interval

  New callers are written in shared/practice; jarside check finds what is wrong with them.

OPTIONS
  --json         print one object: { office, volunteers, unread }
  --in <folder>  take verdicts and names from this folder
  --help         show this page

EXIT CODES
  0  told
  1  told, but for lines that cannot be read: they are counted and the first ones shown
  2  a file or an option that does not fit`

/** How many of the lines that cannot be read are shown. */
const SHOWN = 5

/** `jarside practice`: the office's table of practice calls. */
export const practice: Command = {
  name: 'practice',
  summary: 'how volunteers do on practice calls, dangers first',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      json: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    if (positionals.length === 0) {
      throw new BadUse('Name at least one file of JSON Lines, or `-` for the input.')
    }
    const { loaded } = await open(values.in)
    const verdicts = loaded.trees[0]?.verdicts ?? []
    const read: Attempt[] = []
    const unread: string[] = []
    for (const file of positionals) {
      if (file !== '-' && (!existsSync(file) || statSync(file).isDirectory())) {
        throw new BadUse(`There is no file \`${file}\`. Name files of JSON Lines.`)
      }
      await eachLine(file === '-' ? terminal.input : createReadStream(file), (text, line) => {
        if (text.trim() === '') return
        const found = readAttempt(text, verdicts)
        if ('attempt' in found) read.push(found.attempt)
        else unread.push(`  ${file}:${line}: ${found.fault}.`)
      })
    }
    const attempts = eachOnce(read)
    const office = practiceScore(attempts, verdicts)
    const volunteers = byVolunteer(attempts).map(
      ([volunteer, calls]) => [volunteer, practiceScore(calls, verdicts)] as const
    )
    if (values.json) {
      const summary = { office, volunteers: Object.fromEntries(volunteers), unread: unread.length }
      say(terminal.output, JSON.stringify(summary, null, 2))
    } else {
      const words = createWords(loaded.words, SOURCE_TAG)
      const lines = [
        words.t('ui:practice.office'),
        ...scoreText(words, office, verdicts),
        ...volunteers.flatMap(([number, score]) => [
          '',
          words.t('ui:practice.one', { number }),
          ...scoreText(words, score, verdicts)
        ]),
        '',
        words.t('ui:practice.how')
      ]
      say(terminal.output, ...lines)
    }
    if (unread.length === 0) return 0
    const rest = unread.length > SHOWN ? [`  and ${unread.length - SHOWN} more`] : []
    const count = createWords(loaded.words, SOURCE_TAG).t('ui:practice.unread', {
      count: unread.length
    })
    say(terminal.errors, count, ...unread.slice(0, SHOWN), ...rest)
    return 1
  }
}

function scoreText(
  words: Words,
  score: PracticeScore,
  verdicts: readonly Verdict[]
): readonly string[] {
  const heads = (['agree', 'gentle', 'strict', 'levels', 'kappa'] as const).map(key =>
    words.t(`ui:practice.${key}`)
  )
  const missed = score.missed.map(attempt => `    ${missedLine(words, attempt, verdicts)}`)
  return [
    `  ${words.t('ui:practice.calls-played', { count: score.calls })}`,
    `  ${words.t('ui:practice.seen')}: ${rateText(words, score.seen)}`,
    ...(missed.length > 0 ? [`  ${words.t('ui:practice.missed')}:`, ...missed] : []),
    `  ${words.t('ui:practice.false-alarms')}: ${rateText(words, score.falseAlarms)}`,
    `  ${words.t('ui:practice.other-trees')}: ${score.otherTree}`,
    ...columns([
      ['', ...heads],
      ...sideLines(words, score).map(({ name, same, gentle, strict, levels, kappa }) => [
        name,
        same,
        gentle,
        strict,
        levels,
        kappa
      ])
    ]).map(line => `  ${line}`)
  ]
}

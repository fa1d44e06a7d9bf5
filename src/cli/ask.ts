import type { FoundAnswers } from '../know-how/found.ts'
import { openKnowHow } from '../know-how/search.ts'
import { searchedIn } from '../know-how/searched.ts'
import { referralFor } from '../office/referral.ts'
import { must } from '../tree/must.ts'
import { type SaidKnowHow, sayKnowHow } from '../words/know-how-text.ts'
import { saidCall } from '../words/said-call.ts'
import { sourceLine } from '../words/sources.ts'
import { createWords, SOURCE_TAG, type Words } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import type { Project } from './read-project.ts'
import { say } from './terminal.ts'
import { wrap } from './wrap.ts'

const MANUAL = `NAME
  jarside ask - answer a how-to question

USAGE
  jarside ask <question> [--lang <tag>] [--json] [--in <folder>]

  Searches the reviewed answers in every language at once; misspelled words are understood. Whether
  one jar is all right is never answered: that needs the tree, which is named. Words of an
  emergency are answered by its number alone.

OPTIONS
  --lang <tag>   answer in this language (en)
  --json         print one object: { lead, ferment, answers: [ … ] }
  --in <folder>  read answers from this folder
  --help         show this page

EXIT CODES
  0  answered, or led to a tree or a number      1  not answered here
  2  no question, or an option that does not fit`

/** `jarside ask`: the answer to "how do I", "may I" and "how long", with its sources. */
export const ask: Command = {
  name: 'ask',
  summary: 'answer a how-to question, with its sources',
  manual: MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      lang: { type: 'string', default: SOURCE_TAG },
      json: { type: 'boolean', default: false },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const question = positionals.join(' ').trim()
    if (question === '') throw new BadUse('Ask something: jarside ask "how warm".')
    const { loaded, office } = await open(values.in)
    const tags = Object.keys(loaded.words)
    if (!tags.includes(values.lang)) {
      throw new BadUse(`There is no language \`${values.lang}\`. Languages: ${tags.join(', ')}.`)
    }
    const words = createWords(loaded.words, values.lang)
    const found = openKnowHow(searchedIn(loaded.knowHow, loaded.words))(question)
    const byId = new Map(loaded.knowHow.answers.map(answer => [answer.id, answer]))
    const said = found.answers.map(id =>
      sayKnowHow(must(byId.get(id), id), words, loaded.sources, { office, today: terminal.today })
    )
    if (values.json) {
      say(terminal.output, JSON.stringify({ ...found, answers: said }, null, 2))
    } else {
      const lines = [
        ...leadLines(found, words, loaded.trees),
        ...answerLines(said, words),
        ...(isAnswered(found) ? [] : notHere(words, office, terminal.today))
      ]
      say(terminal.output, ...lines.map(line => wrap(line, terminal.columns)))
    }
    return isAnswered(found) ? 0 : 1
  }
}

const isAnswered = ({ lead, answers }: FoundAnswers): boolean => lead !== null || answers.length > 0

function leadLines(
  { lead, ferment }: FoundAnswers,
  words: Words,
  trees: Project['loaded']['trees']
): readonly string[] {
  if (lead === null) return []
  if (lead === 'emergency') return [words.t('ui:know-how.emergency')]
  const tree = trees.find(({ id }) => id === ferment)
  return [
    words.t('ui:know-how.look'),
    words.t('ui:know-how.look-why'),
    tree === undefined
      ? `${words.t('ui:know-how.look-any')}: jarside walk`
      : `${words.t('ui:know-how.look-link', { title: words.t(`${tree.id}:title`) })}: jarside walk ${tree.id}`,
    ''
  ]
}

/** The first answer whole, the others by their questions. */
function answerLines(said: readonly SaidKnowHow[], words: Words): readonly string[] {
  const [first, ...others] = said
  if (first === undefined) return []
  const beyond = first.beyond.map(({ name, phone }) => (phone === null ? name : `${name} ${phone}`))
  return [
    first.ask,
    first.answer,
    '',
    first.basis,
    ...first.sources.map(source => `- ${sourceLine(source)}`),
    `${words.t('ui:know-how.beyond')}: ${beyond.join(', ')}`,
    ...(first.draft === null ? [] : [first.draft]),
    first.due,
    ...(others.length === 0 ? [] : ['', words.t('ui:know-how.also')]),
    ...others.map(each => `- ${each.ask}`)
  ]
}

function notHere(words: Words, office: Project['office'], today: Date): readonly string[] {
  const { name, phone } = saidCall(referralFor(office, 'office', today), words)
  return [words.t('ui:know-how.not-here'), phone === null ? name : `${name}: ${phone}`]
}

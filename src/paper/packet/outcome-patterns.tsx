import type { OutcomePattern, SidePatterns } from '../../tables/patterns.ts'
import type { Lens } from '../../tree/lens.ts'
import { type Tree, USES } from '../../tree/tree.ts'
import { countText, shareText } from '../../words/comparison-names.ts'
import { answerLabel } from '../../words/tree-texts.ts'
import { verdictText } from '../../words/verdict-text.ts'
import type { Words } from '../../words/words.ts'
import { observationText } from '../table-words.ts'
import { patternLines, rangeWords } from './condition-words.ts'
import type { NoteOccasion } from './note-occasions.ts'
import type { NoteSaid, Packet } from './packet.ts'
import { countOf, nameText, outcomeLines, TRACK_NAMES, USE_NAMES } from './rule-words.ts'

const FREED = 'Exactly when it may be used as directed'

/** What stands in part 3, by the ids of its headings. */
export const PATTERN_HEADINGS: readonly (readonly [id: string, name: string])[] = [
  ['patterns-emergency', 'Emergencies'],
  ['patterns-person', 'The person'],
  ['patterns-container', 'The container'],
  ['patterns-batch', 'The batch'],
  ['patterns-use', 'What may be used'],
  ['patterns-freed', FREED],
  ['patterns-notes', 'Notes']
]

/** Part 3: what answers lead to what outcome, side by side, the unusual first. */
export function OutcomePatterns({ packet }: { packet: Packet }) {
  const { sides, notes, freed, words, tree, alarms } = packet
  const [first] = sides
  return (
    <>
      <p>
        The outcome has sides: the person, the container, the batch, and what may be used. Of each
        side go down the list: <strong>the first verdict of which one pattern fits counts</strong>.
        What a pattern does not name may be anything. Together the patterns say exactly what the
        decision tables say, over all {first && roundText(first.sets)} sets of answers without an
        emergency. A share counts sets of answers, not callers, and patterns of one verdict overlap.
        The rows of the tables, of which exactly one fits, are printed by{' '}
        <code>jarside table {tree.id} --format html</code>.
      </p>
      <h3 id="patterns-emergency">Emergencies: before everything else ({alarms.length})</h3>
      <p>One of these is enough. Nothing else is judged then.</p>
      <ul class="patterns">
        {alarms.map(({ observation, answers, outcome }) => (
          <li key={`${observation} ${answers}`}>
            {observationText(words, observation)}:{' '}
            {answers.map(answer => `“${answerLabel(words, observation, answer)}”`).join(' or ')} →{' '}
            {outcomeLines(words, tree, outcome).join('. ')}
          </li>
        ))}
      </ul>
      {sides.map(side => (
        <Side key={sideName(side.lens)} {...{ side, tree, words }} />
      ))}
      <h3 id="patterns-freed">{`The other way round: ${FREED}`}</h3>
      <Freed {...{ freed, sides, tree, words }} />
      <h3 id="patterns-notes">Notes ({notes.length})</h3>
      <p>
        A note is said beside the verdicts. Where few patterns tell when, they stand here; else the
        answers that add it, on every walk that comes to their question. Its words stand in part 5.
      </p>
      <ol class="notes">
        {notes.map(note => (
          <Note key={note.note} all={first?.sets ?? 0n} {...{ note, tree, words }} />
        ))}
      </ol>
    </>
  )
}

/** In how many sets of answers, as a share and as a number. */
const coverText = (part: bigint, whole: bigint): string =>
  `${shareText(part, whole)} of all sets: ${roundText(part)}`

/** A count exactly, or where nobody reads it out as so many times a power of ten. */
function roundText(count: bigint): string {
  const digits = String(count)
  if (digits.length <= READ_OUT) return countText(count)
  return `about ${digits[0]}.${digits[1]} × 10^${digits.length - 1}`
}

const READ_OUT = 12

const sideName = (lens: Lens): string =>
  typeof lens === 'object' ? lens.note : lens === 'use' ? 'what may be used' : TRACK_NAMES[lens]

function Side({
  side: { lens, levels, sets },
  tree,
  words
}: {
  side: SidePatterns
  tree: Tree
  words: Words
}) {
  const name = sideName(lens)
  const anchor = typeof lens === 'object' ? lens.note : lens
  return (
    <section>
      <h3 id={`patterns-${anchor}`}>
        {nameText(name)} (
        {countOf(
          levels.reduce((sum, { patterns }) => sum + patterns.length, 0),
          'pattern'
        )}
        )
      </h3>
      {levels.map(({ level, output, sets: exactly, patterns }) => (
        <section key={level} data-side={anchor} data-level={level}>
          <h4>
            {outputText(words, tree, lens, output)} <small>{coverText(exactly, sets)}</small>
          </h4>
          {patterns.length === 0 ? (
            <p>In every other case.</p>
          ) : (
            <PatternList {...{ patterns, sets, tree, words }} />
          )}
        </section>
      ))}
    </section>
  )
}

function PatternList({
  patterns,
  sets,
  tree,
  words
}: {
  patterns: readonly OutcomePattern[]
  sets: bigint
  tree: Tree
  words: Words
}) {
  return (
    <ol class="patterns">
      {patterns.map((pattern, index) => (
        <li key={index}>
          {patternLines(words, tree, pattern.when).join('. ')}.{' '}
          <small>{shareText(pattern.sets, sets)}</small>
        </li>
      ))}
    </ol>
  )
}

function Freed({ freed, sides, tree, words }: Pick<Packet, 'freed' | 'sides' | 'tree' | 'words'>) {
  const use = sides.find(({ lens }) => lens === 'use')
  const exactly = use?.levels.find(({ level }) => level === 0)
  if (use === undefined || exactly === undefined) {
    return <p>It never may: no set of answers comes to it.</p>
  }
  const count = coverText(exactly.sets, use.sets)
  if (freed === null) {
    return (
      <p>
        In {count}: whenever no pattern above holds it back. Spelled out it would take more patterns
        than anybody reads.
      </p>
    )
  }
  return (
    <>
      <p>In {count}, and only if all of one of these is so:</p>
      <ol class="freed">
        {freed.map((pattern, index) => (
          <li key={index}>
            <ul>
              {patternLines(words, tree, pattern.when).map(line => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </>
  )
}

function Note({
  note: { note, sets, patterns, occasions },
  all,
  tree,
  words
}: {
  note: NoteSaid
  all: bigint
  tree: Tree
  words: Words
}) {
  return (
    <li data-note={note}>
      <p>
        <strong>{nameText(note)}</strong>{' '}
        <small>{sets > 0n ? coverText(sets, all) : 'with an emergency alone'}</small>
      </p>
      {patterns === null || patterns.length === 0 ? (
        <p>Added by: {occasions.map(occasion => occasionText(words, occasion)).join('; or ')}.</p>
      ) : (
        <PatternList {...{ patterns, tree, words }} sets={all} />
      )}
    </li>
  )
}

function occasionText(words: Words, { observation, answer }: NoteOccasion): string {
  const label = (id: string) => `“${answerLabel(words, observation, id)}”`
  const name = observationText(words, observation)
  switch (answer.kind) {
    case 'answer':
      return `${name}: ${answer.answers.map(label).join(' or ')}`
    case 'sign':
      return `${name}: ${label(answer.sign)}: ${answer.value === 'yes' ? 'yes' : 'not sure'}`
    case 'any-sign':
      return `${name}: any of ${answer.signs.map(label).join(', ')}${answer.orUnsure ? ', or not sure of one' : ''}`
    case 'range':
      return `${name}: ${rangeWords(answer.range)}`
    case 'borderline':
      return `${name}: too close to a limit to tell`
    case 'no-sign':
      return `${name}: none that leads elsewhere`
  }
}

function outputText(words: Words, tree: Tree, lens: Lens, output: string): string {
  if (lens === 'use') return nameText(USE_NAMES[USES.find(use => use === output) ?? 'never'])
  if (output === 'none') return 'No verdict'
  return verdictText(words, tree.id, output, 'name')
}

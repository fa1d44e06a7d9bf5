import type { LimitCase, LimitCases, NumericLimit } from '../../tables/limit-cases.ts'
import type { Outcome } from '../../tree/caution.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Words } from '../../words/words.ts'
import { observationText } from '../table-words.ts'
import { patternLines } from './condition-words.ts'
import type { Packet } from './packet.ts'
import { nameText, outcomeLines } from './rule-words.ts'

/** Part 4: the readings next to each limit, and what comes out, as the tree itself works it out. */
export function LimitList({ packet: { limits, tree, words } }: { packet: Packet }) {
  const measures = [...new Set(limits.map(({ measure }) => measure))]
  return (
    <>
      <p>
        For each limit the readings nearest to it on both sides, by each instrument. An instrument
        can be out: a reading lies on one side only where all that it can truly be lies there. The
        situation is the most ordinary one in which the limit decides. Every outcome was worked out
        by walking the tree with exactly these answers.
      </p>
      {measures.length === 0 && <p>This tree decides by no number.</p>}
      {measures.map(measure => (
        <section key={measure}>
          <h3 id={`limits-${measure}`}>{observationText(words, measure)}</h3>
          {limits
            .filter(limit => limit.measure === measure)
            .map(limit => (
              <Limit key={limit.limit} {...{ limit, tree, words }} />
            ))}
        </section>
      ))}
    </>
  )
}

function Limit({
  limit: { measure, limit, cases },
  tree,
  words
}: {
  limit: NumericLimit
  tree: Tree
  words: Words
}) {
  const situations = groupedBy(cases, ({ besides }) =>
    patternLines(words, tree, besides).join('. ')
  )
  return (
    <section class="limit">
      <h4>
        {observationText(words, measure)} {limit}
      </h4>
      {cases.length === 0 && (
        <p>No set of answers makes any outcome differ at this limit by itself.</p>
      )}
      {situations.map(([besides, all]) => (
        <table key={besides}>
          <caption>
            {besides === ''
              ? 'All else as in an ordinary jar'
              : `With ${besides}. All else ordinary`}
          </caption>
          <thead>
            <tr>
              <th scope="col">By</th>
              <th scope="col">Reads</th>
              <th scope="col">Can truly be</th>
              <th scope="col">Outcome</th>
            </tr>
          </thead>
          {all.map(each => (
            <tbody key={each.instrument}>
              {each.cases.map((one, index) => row(each, one, index, tree, words))}
            </tbody>
          ))}
        </table>
      ))}
    </section>
  )
}

function row(
  { measure, instrument, cases }: LimitCases,
  { interval, outcome }: LimitCase,
  index: number,
  tree: Tree,
  words: Words
) {
  const { low, reading, high } = interval
  const before = cases[index - 1]
  const changes = before !== undefined && !isSame(before.outcome, outcome)
  return (
    <tr key={`${instrument} ${reading}`} class={changes ? 'changes' : undefined}>
      {index === 0 && (
        <th scope="rowgroup" rowSpan={cases.length}>
          {instrument === null
            ? 'counted or worked out'
            : words.t(`observations:${measure}.instruments.${instrument}`)}
        </th>
      )}
      <td>{reading}</td>
      <td>{low === high ? `exactly ${low}` : `${low} to ${high}`}</td>
      <td>
        {outcomeLines(words, tree, outcome).join('. ')}
        {changes && notesText(before.outcome, outcome)}
      </td>
    </tr>
  )
}

const isSame = (one: Outcome, other: Outcome) => JSON.stringify(one) === JSON.stringify(other)

/** Which notes are said here and not one reading before, and the other way round. */
function notesText(before: Outcome, after: Outcome): string {
  const more = after.notes.filter(note => !before.notes.includes(note))
  const fewer = before.notes.filter(note => !after.notes.includes(note))
  const texts = [
    ...(more.length > 0 ? [`now says ${more.map(nameText).join(', ')}`] : []),
    ...(fewer.length > 0 ? [`no longer says ${fewer.map(nameText).join(', ')}`] : [])
  ]
  return texts.length === 0 ? '' : ` (${texts.join('; ')})`
}

function groupedBy<T>(all: readonly T[], keyOf: (one: T) => string) {
  const groups = new Map<string, T[]>()
  for (const one of all) groups.set(keyOf(one), [...(groups.get(keyOf(one)) ?? []), one])
  return [...groups]
}

import { ITEM_GROUPS, type PacketItem } from './items.ts'
import type { Packet } from './packet.ts'
import { GROUP_HINTS, GROUP_NAMES, type References } from './references.ts'
import { BASIS_NAMES, countOf } from './rule-words.ts'

/** Part 1: every item that wants a decision, most pressing first. */
export function FirstLook({ packet, references }: { packet: Packet; references: References }) {
  const { items } = packet
  return (
    <>
      <p>
        {countOf(items.length, 'item')}: what rests on our own caution, on memory or on common
        practice, and what sources differ over. Each wants a decision: <strong>agree</strong>,{' '}
        <strong>change</strong> or <strong>cannot judge</strong>. Mark it here, and have the office
        copy it into the review file, where the same names stand. Rules with one and the same
        condition are one item, and so are rules that hold back in the same way: of several cases
        say in the comment which one is meant.
      </p>
      {ITEM_GROUPS.map(group => {
        const within = items.filter(item => item.group === group)
        if (within.length === 0) return null
        return (
          <section key={group}>
            <h3 id={`items-${group}`}>
              {GROUP_NAMES[group]} ({within.length})
            </h3>
            <p>{GROUP_HINTS[group]}</p>
            <div class="items">
              {within.map(item => (
                <Item
                  key={item.id}
                  item={item}
                  number={items.indexOf(item) + 1}
                  references={references}
                />
              ))}
            </div>
          </section>
        )
      })}
    </>
  )
}

function Item({
  item: { id, name, when, says, grounds, because, dissent, rules },
  number,
  references
}: {
  item: PacketItem
  number: number
  references: References
}) {
  return (
    <article class="item" id={`item-${number}`} data-item={id}>
      <p>
        <span class="number">{number}</span> <strong>{name}</strong>. <When cases={when} />
      </p>
      {says.length > 1 ? (
        <ul>
          {says.map(line => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      ) : (
        <p>{says}</p>
      )}
      {dissent.map(({ source, says: other }) => (
        <p key={other}>
          Otherwise: {other}
          {source && <SourceMark source={source} references={references} />}
        </p>
      ))}
      <p class="grounds">
        {grounds.map(ground => BASIS_NAMES[ground]).join('; ') || 'By its own words others differ'}
        {because
          .filter(source => !isGroundAlone(references, source))
          .map(source => (
            <SourceMark key={source} source={source} references={references} />
          ))}
        {rules.length > 0 && ' ·'}
        {rules.map(rule => (
          <span key={rule}>
            {' '}
            <a href={`#rule-${rule}`}>R{references.ruleNumber.get(rule)}</a>
          </span>
        ))}
        {rules.length === 0 && <code> {id}</code>}
      </p>
      <p class="boxes">☐ agree ☐ change ☐ cannot judge</p>
    </article>
  )
}

/** Whether a source only says what kind of ground it is, which stands in words already. */
const isGroundAlone = ({ sources }: References, id: string): boolean => {
  const kind = sources.find(source => source.id === id)?.kind
  return kind === 'own-caution' || kind === 'common-practice'
}

/** For which answers something holds: one case, or several of which each is enough. */
export function When({ cases }: { cases: readonly string[] }) {
  const [first, ...others] = cases
  if (first === undefined) return null
  if (others.length === 0) return <span class="when">When: {first}.</span>
  return (
    <span class="when">
      When any of these is so:{' '}
      {cases.map((each, index) => (
        <span key={each}>
          <b>({index + 1})</b> {each}.{' '}
        </span>
      ))}
    </span>
  )
}

/** The number of a source in the list of them. */
export function SourceMark({ source, references }: { source: string; references: References }) {
  const number = references.sourceNumber.get(source)
  return <span> {number === undefined ? source : <a href={`#source-${number}`}>S{number}</a>}</span>
}

import type { SourceEntry } from '../../words/sources.ts'
import { SourceMark, When } from './first-look.tsx'
import { weakAmong } from './grounds.ts'
import type { Packet } from './packet.ts'
import { knownText, type References } from './references.ts'
import { type AnyRule, BASIS_NAMES, countOf, nameText, thenText, whenText } from './rule-words.ts'

/** Part 2: every rule once, and every source. */
export function RuleList({ packet, references }: { packet: Packet; references: References }) {
  const { rules, sources } = references
  return (
    <>
      <p>
        {countOf(rules.length, 'rule')}, in the order of their file. Each was written from the
        guidance, apart from the questions, and is proved over every set of answers. What a rule of
        part 1 says when is spelled out there; its number leads to it. How a source is known, and
        where it stands, is told in the list at the end of this part. The project records no page or
        section of a source beyond what its title and address name.
      </p>
      <h3 id="rules-all">The rules</h3>
      <ol class="rules">
        {rules.map(rule => (
          <RuleEntry key={rule.id} {...{ rule, packet, references }} />
        ))}
      </ol>
      <h3 id="sources">The sources ({sources.length})</h3>
      <ol class="sources">
        {sources.map((source, index) => (
          <li key={source.id} id={`source-${index + 1}`}>
            <span class="number">S{index + 1}</span> <cite>{source.title}</cite>.{' '}
            {placeText(source)} <span class="grounds">({knownText(source)})</span>{' '}
            <code>{source.id}</code>
          </li>
        ))}
      </ol>
    </>
  )
}

function RuleEntry({
  rule,
  packet: { words, tree, sources },
  references
}: {
  rule: AnyRule
  packet: Packet
  references: References
}) {
  const { id, basis, because, dissent = [] } = rule
  const item = references.itemOfRule.get(id)
  return (
    <li id={`rule-${id}`} data-rule={id}>
      <p>
        <span class="number">R{references.ruleNumber.get(id)}</span> <strong>{nameText(id)}</strong>
        . {thenText(words, tree, rule)}.{' '}
        {item === undefined ? (
          <When cases={[whenText(words, tree, rule)]} />
        ) : (
          <span class="when">
            When: <a href={`#item-${item}`}>item {item}</a>.
          </span>
        )}
      </p>
      {dissent.map(({ source, says }) => (
        <p key={says}>
          Otherwise: {says} {source && <cite>{sources[source]?.title ?? source}</cite>}
        </p>
      ))}
      <p class="grounds">
        {/* What is no text says by its title what the basis is. */}
        {because.some(source => isText(sources, source)) && `${BASIS_NAMES[basis]}: `}
        {because.map((source, index) => (
          <span key={source}>
            {index > 0 && '; '}
            <cite>{sources[source]?.title ?? source}</cite>{' '}
            <SourceMark source={source} references={references} />
          </span>
        ))}
      </p>
    </li>
  )
}

/** Whether it stands for a publication, and for no kind of ground. */
const isText = (sources: Packet['sources'], id: string): boolean =>
  weakAmong([id], sources).length === 0

function placeText({ publisher, year, address }: SourceEntry): string {
  const origin = [publisher, year].filter(part => part !== null).join(', ')
  return [origin && `${origin}.`, address].filter(Boolean).join(' ')
}

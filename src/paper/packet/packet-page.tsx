import type { ComponentChildren } from 'preact'
import { renderToString } from 'preact-render-to-string'
import { observationText } from '../table-words.ts'
import { FirstLook } from './first-look.tsx'
import { ITEM_GROUPS } from './items.ts'
import { Changes, Signatures, WORD_KINDS, WordList } from './last-parts.tsx'
import { LimitList } from './limit-list.tsx'
import { OutcomePatterns, PATTERN_HEADINGS } from './outcome-patterns.tsx'
import type { Packet } from './packet.ts'
import { packetStyle } from './packet-style.ts'
import { GROUP_NAMES, referencesOf } from './references.ts'
import { RuleList } from './rule-list.tsx'
import { countOf } from './rule-words.ts'

/** How a packet is printed. */
export interface PacketPage {
  readonly packet: Packet
  readonly paper: 'letter' | 'a4'
  /** The typefaces as a style sheet that names no other file. */
  readonly fonts: string
  /** The fingerprint of the items of part 1. */
  readonly itemsFingerprint: string
  readonly reviewFile: string
  readonly roles: readonly string[]
  readonly mustSign: readonly string[]
  readonly today: Date
}

/** One part of the packet. */
interface Part {
  readonly id: string
  readonly name: string
  /** Where within it somebody may want to go, by the ids of its headings. */
  readonly inside: readonly (readonly [id: string, name: string])[]
  readonly content: ComponentChildren
}

/** A packet as a whole HTML page that needs no other file, for reading and for printing. */
export function packetHtml(page: PacketPage): string {
  const { packet, paper, fonts } = page
  const { tree, words } = packet
  const title = `Review packet: ${words.t(`${tree.id}:title`)}`
  const foot = `${tree.id}, edition ${tree.edition}, meaning ${tree.fingerprint.slice(0, 12)}, words ${tree.wordsFingerprint.slice(0, 12)}`
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
${renderToString(<title>{title}</title>)}
<style>${fonts}
${packetStyle(paper, foot)}</style>
</head>
<body>${renderToString(<Page {...page} title={title} />)}</body>
</html>
`
}

function Page(page: PacketPage & { title: string }) {
  const { packet, title, roles, mustSign, reviewFile } = page
  const { tree } = packet
  const parts = partsOf(packet, roles, mustSign)
  return (
    <main>
      <header>
        <h1>{title}</h1>
        <Head {...page} />
        <p>
          {tree.review.state === 'draft'
            ? 'This tree is a draft: no specialist has signed it. '
            : 'An earlier state of this tree was signed. '}
          It is for the specialist who signs, and for no caller. Part 1 is what wants a decision,
          and may be all that a first sitting has time for. The office copies decisions and
          signatures into <code>{reviewFile}</code> and gives it to{' '}
          <code>jarside publish --review</code>.
        </p>
      </header>
      <nav aria-labelledby="contents">
        <h2 id="contents">Contents</h2>
        <ol>
          {parts.map(({ id, name, inside }) => (
            <li key={id}>
              <a href={`#${id}`}>{name}</a>
              {inside.length > 0 && (
                <ul>
                  {inside.map(([heading, title]) => (
                    <li key={heading}>
                      <a href={`#${heading}`}>{title}</a>
                    </li>
                  ))}
                </ul>
              )}
            </li>
          ))}
        </ol>
      </nav>
      {parts.map(({ id, name, content }, index) => (
        <section key={id} class="part" aria-labelledby={id}>
          <h2 id={id}>
            {index + 1}. {name}
          </h2>
          {content}
        </section>
      ))}
    </main>
  )
}

function Head({ packet: { tree }, itemsFingerprint, today }: PacketPage) {
  const facts = [
    ['Tree', tree.id],
    ['Edition', String(tree.edition)],
    ['Review due by', tree.review.due],
    ['Meaning', tree.fingerprint],
    ['Words', tree.wordsFingerprint],
    ['Items of part 1', itemsFingerprint],
    ['Printed', today.toISOString().slice(0, 10)]
  ] as const
  return (
    <dl class="facts">
      {facts.map(([name, fact]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{fact}</dd>
        </div>
      ))}
    </dl>
  )
}

function partsOf(
  packet: Packet,
  roles: readonly string[],
  mustSign: readonly string[]
): readonly Part[] {
  const { items, limits, texts, words } = packet
  const groups = ITEM_GROUPS.filter(group => items.some(item => item.group === group))
  const measures = [...new Set(limits.map(({ measure }) => measure))]
  const references = referencesOf(packet)
  const patterns = packet.sides.flatMap(({ levels }) => levels.flatMap(level => level.patterns))
  return [
    {
      id: 'first-look',
      name: `What to look at first (${countOf(items.length, 'item')})`,
      inside: groups.map(group => [`items-${group}`, GROUP_NAMES[group]] as const),
      content: <FirstLook {...{ packet, references }} />
    },
    {
      id: 'rules',
      name: `Every rule and its source (${countOf(references.rules.length, 'rule')})`,
      inside: [
        ['rules-all', 'The rules'],
        ['sources', 'The sources']
      ],
      content: <RuleList {...{ packet, references }} />
    },
    {
      id: 'patterns',
      name: `Which answers lead to which outcome (${countOf(patterns.length, 'pattern')})`,
      inside: PATTERN_HEADINGS,
      content: <OutcomePatterns packet={packet} />
    },
    {
      id: 'limits',
      name: `At the limits (${countOf(limits.length, 'limit')})`,
      inside: measures.map(id => [`limits-${id}`, observationText(words, id)] as const),
      content: <LimitList packet={packet} />
    },
    {
      id: 'words',
      name: `All words (${countOf(texts.length, 'text')})`,
      inside: WORD_KINDS.filter(({ kind }) => texts.some(text => text.kind === kind)).map(
        ({ kind, name }) => [`words-${kind}`, name] as const
      ),
      content: <WordList packet={packet} />
    },
    {
      id: 'changes',
      name: 'What is new since the last published edition',
      inside: [],
      content: <Changes packet={packet} />
    },
    {
      id: 'signatures',
      name: 'Signatures',
      inside: [],
      content: <Signatures {...{ roles, mustSign }} />
    }
  ]
}

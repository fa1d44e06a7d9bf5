import { renderToString } from 'preact-render-to-string'
import type { Comparison, Pattern } from '../compare/compare.ts'
import type { Reworded } from '../compare/wording.ts'
import type { Tree } from '../tree/tree.ts'
import { commonLines } from '../words/comparison-lines.ts'
import { CHANGE_NAMES, countText, outcomeText, shareText } from '../words/comparison-names.ts'
import type { Words } from '../words/words.ts'

/** What a page for a reviewer is made of. */
export interface ComparisonPage {
  readonly comparison: Comparison
  readonly wording: readonly Reworded[]
  readonly accepted: readonly string[]
  readonly tree: Tree
  readonly words: Words
  readonly style: string
}

const KINDS = ['less-cautious', 'more-cautious', 'sideways'] as const

/** A comparison as a whole HTML page that a reviewer prints, ticks and signs. */
export function comparisonHtml(page: ComparisonPage): string {
  const { comparison, style } = page
  const { before, after } = comparison
  const title = `${after.tree}: edition ${before.edition} to ${after.edition}`
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>
${style}
${PAGE_STYLE}
</style>
</head>
<body>${renderToString(<Page {...page} title={title} />)}</body>
</html>
`
}

function Page({
  comparison,
  wording,
  accepted,
  tree,
  words,
  title
}: ComparisonPage & { title: string }) {
  const { sets, before, after } = comparison
  return (
    <main class="review">
      <h1>{title}</h1>
      <p>
        Meaning {before.fingerprint.slice(0, 12)} → {after.fingerprint.slice(0, 12)}.{' '}
        {countText(sets)} sets of answers are known to both; shares count sets of answers, not
        callers.
      </p>
      <ComparisonParts {...{ comparison, wording, accepted, tree, words }} Heading="h2" />
      <p class="signed">Reviewed by ____________________ on ____________</p>
    </main>
  )
}

/** What a comparison is told with, under headings of one depth. */
export interface ComparisonToPrint extends Omit<ComparisonPage, 'style'> {
  readonly Heading: 'h2' | 'h3'
}

/** What changed: the counts, the patterns, what only one edition knows, what is said otherwise. */
export function ComparisonParts({
  comparison,
  wording,
  accepted,
  tree,
  words,
  Heading
}: ComparisonToPrint) {
  const { sets, changed, patterns, emergencies, onlyBefore, onlyAfter } = comparison
  const only = [
    ['No emergency any more', emergencies.gone],
    ['An emergency now', emergencies.added],
    ['Not asked any more', onlyBefore],
    ['Asked anew', onlyAfter]
  ] as const
  return (
    <>
      <table>
        <thead>
          <tr>
            <th scope="col">Change</th>
            <th scope="col">Sets of answers</th>
            <th scope="col">Share</th>
          </tr>
        </thead>
        <tbody>
          {KINDS.map(kind => (
            <tr key={kind} data-change={kind}>
              <th scope="row">{CHANGE_NAMES[kind]}</th>
              <td>{countText(changed[kind])}</td>
              <td>{shareText(changed[kind], sets)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {accepted.length > 0 && <p>Accepted because of: {accepted.join(', ')}.</p>}
      {patterns.map((pattern, index) => (
        <PatternPart key={index} {...{ pattern, sets, tree, words, Heading }} />
      ))}
      {only.map(
        ([name, all]) =>
          all.length > 0 && (
            <p key={name}>
              <strong>{name}:</strong>{' '}
              {all
                .map(({ observation, answer }) => [observation, answer].filter(Boolean).join(' '))
                .join(', ')}
            </p>
          )
      )}
      {wording.length > 0 && (
        <>
          <Heading>Said otherwise</Heading>
          <dl>
            {wording.map(({ at, before: was, after: is }) => (
              <div key={at}>
                <dt>{at}</dt>
                {was !== null && (
                  <dd>
                    <del>{was}</del>
                  </dd>
                )}
                {is !== null && (
                  <dd>
                    <ins>{is}</ins>
                  </dd>
                )}
              </div>
            ))}
          </dl>
        </>
      )}
    </>
  )
}

function PatternPart({
  pattern: { change, sets: part, when, turns, example },
  sets,
  tree,
  words,
  Heading
}: {
  pattern: Pattern
  sets: bigint
  tree: Tree
  words: Words
  Heading: ComparisonToPrint['Heading']
}) {
  const common = commonLines(words, tree, when)
  return (
    <section class={`change change-${change}`}>
      <Heading>
        ☐ {CHANGE_NAMES[change]}: {shareText(part, sets)} of all sets
      </Heading>
      <p>When</p>
      <ul>
        {common.length === 0 ? (
          <li>whatever is answered</li>
        ) : (
          common.map(line => <li key={line}>{line}</li>)
        )}
      </ul>
      <p>then</p>
      <ul>
        {turns.map(({ side, from, to }) => (
          <li key={`${side} ${from} ${to}`}>
            {side}: {from ?? 'nothing'} → <strong>{to ?? 'nothing'}</strong>
          </li>
        ))}
      </ul>
      <p>
        Such as: {outcomeText(example.before)} → {outcomeText(example.after)}
      </p>
    </section>
  )
}

const PAGE_STYLE = `
.review { max-width: 48rem; margin: auto; padding: 1.5rem; }
.review table { border-collapse: collapse; margin-block: 1rem; }
.review th, .review td { padding: 0.2rem 0.8rem; border: 1px solid; text-align: start; }
.review section { margin-block: 1.2rem; padding: 0.4rem 1rem; border-inline-start: 6px solid #999; break-inside: avoid; }
.review .change-less-cautious { border-inline-start: 6px double #000; }
.review h2 { font-size: 1.1rem; margin-block: 0.4rem; }
.review ul { margin-block: 0.2rem; }
.review .signed { margin-top: 3rem; }
@page { margin: 0.6in; }
`

import type { Comparison, Pattern } from '../compare/compare.ts'
import type { Reworded } from '../compare/wording.ts'
import type { Tree } from '../tree/tree.ts'
import { commonLines } from '../words/comparison-lines.ts'
import { CHANGE_NAMES, countText, outcomeText, shareText } from '../words/comparison-names.ts'
import type { Emphasis } from '../words/emphasis.ts'
import type { Words } from '../words/words.ts'

/** A comparison as lines to read, less cautious first. */
export function comparisonText(
  comparison: Comparison,
  wording: readonly Reworded[],
  { tree, words, paint }: { tree: Tree; words: Words; paint: Emphasis }
): string[] {
  const { before, after, sets, changed, patterns, truncated } = comparison
  const kinds = ['less-cautious', 'more-cautious', 'sideways'] as const
  const head = [
    paint.strong(
      `${before.tree} ${before.edition} (${before.fingerprint.slice(0, 6)}) → ${after.tree} ${after.edition} (${after.fingerprint.slice(0, 6)})`
    ),
    `${countText(sets)} sets of answers are known to both. They count sets of answers, not callers.`,
    ...kinds.map(
      kind =>
        `${CHANGE_NAMES[kind]}: ${countText(changed[kind])} (${shareText(changed[kind], sets)})`
    )
  ]
  const parts = kinds.flatMap(kind =>
    patterns
      .filter(({ change }) => change === kind)
      .flatMap((pattern, index) => [
        '',
        ...patternLines(pattern, index + 1, sets, tree, words, paint)
      ])
  )
  const more = truncated.map(
    kind =>
      `More patterns of this kind than are listed: ${CHANGE_NAMES[kind as Pattern['change']]}.`
  )
  return [
    ...head,
    ...parts,
    ...more,
    ...differences(comparison, paint),
    ...wordingLines(wording, paint)
  ]
}

function patternLines(
  { change, sets, when, turns, example }: Pattern,
  number: number,
  all: bigint,
  tree: Tree,
  words: Words,
  paint: Emphasis
): string[] {
  const signal = change === 'less-cautious' ? 'danger' : 'none'
  return [
    `${paint.signal(signal, CHANGE_NAMES[change])} ${number}: ${shareText(sets, all)} of all sets`,
    ...commonLines(words, tree, when).map(line => `  when  ${line}`),
    ...(when.length === 0 ? ['  when  whatever is answered'] : []),
    ...turns.map(
      ({ side, from, to }) => `  then  ${side}: ${from ?? 'nothing'} → ${to ?? 'nothing'}`
    ),
    `  such as  ${outcomeText(example.before)} → ${outcomeText(example.after)}`
  ]
}

function differences(
  { emergencies, onlyBefore, onlyAfter }: Comparison,
  paint: Emphasis
): string[] {
  const lines = [
    ['No emergency any more', emergencies.gone],
    ['An emergency now', emergencies.added],
    ['Not asked any more', onlyBefore],
    ['Asked anew', onlyAfter]
  ] as const
  const full = lines.filter(([, all]) => all.length > 0)
  if (full.length === 0) return []
  return [
    '',
    paint.strong('What only one of the two knows'),
    ...full.map(
      ([title, all]) =>
        `${title}: ${all.map(({ observation, answer }) => [observation, answer].filter(Boolean).join(' ')).join(', ')}`
    )
  ]
}

function wordingLines(wording: readonly Reworded[], paint: Emphasis): string[] {
  if (wording.length === 0) return []
  return [
    '',
    paint.strong(`Said otherwise: ${wording.length}`),
    ...wording.flatMap(({ at, before, after }) => [
      at,
      ...(before === null ? [] : [`  - ${before}`]),
      ...(after === null ? [] : [`  + ${after}`])
    ])
  ]
}

import type { Figures, Mean } from '../figures/figures.ts'
import { columns } from './columns.ts'
import type { Paint } from './paint.ts'

/** The figures of a tree as a table for people. */
export function figuresText(figures: Figures, paint: Paint): string[] {
  const { tree, edition, method, screens, settled, mostPossible, bound } = figures
  return [
    paint.strong(`${tree}, edition ${edition}: screens on a walk`),
    ...answeredLines(figures),
    method.kind === 'exact'
      ? 'Exact: every walk is counted with its share.'
      : `From ${method.walks} walks drawn at random (seed ${method.seed}); ± is the standard error of a mean.`,
    '',
    ...columns([
      ['', 'mean', 'longest'],
      ['to the end', meanText(screens), `${screens.longest}`],
      ['to a settled verdict', meanText(settled), `${settled.longest}`],
      ['no order of asking can do with fewer than', fixed(bound.fewestScreens), ''],
      ['the most that any answers can lead to', '', `${mostPossible}`]
    ]),
    '',
    paint.strong('By the verdict said first'),
    ...columns([
      ['', 'walks', 'mean', 'longest', 'settled', 'longest'],
      ...figures.byVerdict.map(one => [
        one.verdict,
        percent(one.share),
        meanText(one.screens),
        `${one.screens.longest}`,
        meanText(one.settled),
        `${one.settled.longest}`
      ])
    ]),
    '',
    paint.strong('Walks that leave something open'),
    ...columns([
      ['the batch is to be looked at again', percent(figures.waits)],
      ['something asked stayed unsure', percent(figures.unsure)],
      ['one or both', percent(figures.waitsOrUnsure)]
    ]),
    '',
    ...firstLines(figures, paint),
    '',
    `Never asked: ${listed(figures.neverAsked)}`,
    `Come to by none of these walks (what is told unasked is not among them): ${listed(figures.neverMet)}`,
    '',
    `The outcome (three tracks and the use) holds ${fixed(bound.outcomeBits)} bits. Each screen tells at most`,
    'the entropy of its answers, and is asked at most once: the screens of most bits first, as many as',
    'make up the outcome, are the fewest on average (Shannon 1948, cited from memory).'
  ]
}

function answeredLines({ counted }: Figures): string[] {
  const even =
    'A choice: each answer and unsure equally likely. Signs: none, each sign alone, unsure, equally likely. ' +
    'A measure: each run of bands and unsure, equally likely.'
  const apart = 'Answers to two screens are taken as independent. Shares of walks, not of callers.'
  return counted.length === 0
    ? [`Answers are even. ${even}`, apart]
    : [
        `Answers as counted: ${counted.join(', ')}. Every other screen evenly. ${even}`,
        'Answers to two screens are taken as independent.'
      ]
}

function firstLines({ askedFirst, settled }: Figures, paint: Paint): string[] {
  const [best] = askedFirst
  if (best === undefined) return []
  const gain = settled.mean - best.settled.mean
  return [
    paint.strong('If one thing were asked before all others'),
    ...columns([
      ['', 'to settled', 'to the end', ''],
      ...askedFirst.map(one => [
        one.observation,
        meanText(one.settled),
        meanText(one.screens),
        one.method === 'exact' ? '' : 'sampled'
      ])
    ]),
    gain > 0.0005
      ? `Asking \`${best.observation}\` first would settle walks soonest: ${fixed(gain)} screens sooner.`
      : 'Nothing asked first would settle walks sooner than the order of the tree.'
  ]
}

const fixed = (value: number): string => value.toFixed(2)
const meanText = ({ mean, standardError }: Mean): string =>
  standardError === 0 ? fixed(mean) : `${fixed(mean)} ± ${standardError.toFixed(3)}`
const listed = (names: readonly string[]): string =>
  names.length === 0 ? 'none' : names.join(', ')

function percent(share: number): string {
  if (share > 0 && share < 0.0005) return 'under 0.1 %'
  return `${(100 * share).toFixed(1)} %`
}

import type { On, ReadingRun, When } from '../plain/stop.ts'
import type { Condition, Tree } from '../tree/tree.ts'
import type { TextKey } from '../words/text-key.ts'
import { answerLabel } from '../words/tree-texts.ts'
import type { Words } from '../words/words.ts'

/** An answer, as the reader of a plain page finds it on the way. */
export function onText(tree: Tree, words: Words, asks: string, on: On): string {
  const label = (id: string) => answerLabel(words, asks, id)
  const labels = (ids: readonly string[]) => ids.map(label).join(' / ')
  switch (on.kind) {
    case 'any':
      return words.t('ui:plain.go-on')
    case 'answers':
      return labels(on.among)
    case 'signs':
      return on.value === 'unsure'
        ? words.t('ui:plain.not-sure-of', { answers: labels(on.signs) })
        : labels(on.signs)
    case 'turn':
      return labels(on.taken?.signs ?? [])
    case 'readings':
      return on.runs.map(run => runText(tree, words, asks, run)).join('; ')
  }
}

/** "If you said …": the reason for a line on the page of an end. */
function whenText(tree: Tree, words: Words, { question, on }: When): string {
  const asks = tree.questions[question]?.asks ?? ''
  const labels = (ids: readonly string[]) => ids.map(id => answerLabel(words, asks, id)).join(' / ')
  if (on.kind !== 'turn') return words.t('ui:plain.if', { answers: onText(tree, words, asks, on) })
  const before = on.before.flatMap(({ signs }) => signs)
  if (on.taken === null) {
    return before.length === 0
      ? words.t('ui:plain.go-on')
      : words.t('ui:plain.if-none', { answers: labels(before) })
  }
  const taken = words.t('ui:plain.if', { answers: labels(on.taken.signs) })
  return before.length === 0
    ? taken
    : `${taken}, ${words.t('ui:plain.if-not', { answers: labels(before) })}`
}

/** Several such reasons, of which each alone is enough, with the numbers of the questions. */
export function whensText(
  tree: Tree,
  words: Words,
  whens: readonly When[],
  numbers: ReadonlyMap<string, number>
): string {
  const byQuestion = new Map<string, When[]>()
  for (const when of whens) {
    // A screen left by a turn is worded by itself.
    const key = when.on.kind === 'turn' ? JSON.stringify(when) : when.question
    byQuestion.set(key, [...(byQuestion.get(key) ?? []), when])
  }
  const texts = [...byQuestion.values()].map(([first, ...others]) => {
    if (first === undefined) return ''
    const asks = tree.questions[first.question]?.asks ?? ''
    const answers = [first, ...others].map(({ on }) => onText(tree, words, asks, on))
    const text =
      others.length === 0
        ? whenText(tree, words, first)
        : words.t('ui:plain.if', { answers: [...new Set(answers)].join(' / ') })
    return `${text} (${numbers.get(first.question)})`
  })
  return [...new Set(texts)].join('; ')
}

/** Readings from one number to another, with what they are read off by. */
export function runText(
  tree: Tree,
  words: Words,
  asks: string,
  { instrument, from, to }: ReadingRun
): string {
  const measure = tree.observations[asks]
  if (measure?.kind !== 'measure') throw new Error(`${asks} is not a measure`)
  const text = (value: number) => {
    const key: TextKey = `ui:units.${measure.unit}`
    return words.t(key, { count: value, value })
  }
  const { span } = measure
  const range =
    from === to
      ? text(from)
      : from <= span.from
        ? words.t('ui:plain.up-to', { to: text(to) })
        : to >= span.to
          ? words.t('ui:plain.at-least', { from: text(from) })
          : words.t('ui:plain.between', { from: text(from), to: text(to) })
  if (instrument === null) return range
  return `${words.t(`observations:${asks}.instruments.${instrument}`)}: ${range}`
}

/** What rules a step out, in the words of the answers. */
export function conditionText(tree: Tree, words: Words, condition: Condition): string {
  const { observation } = condition
  const ask = words.t(`observations:${observation}.ask`)
  const label = (id: string) => answerLabel(words, observation, id)
  switch (condition.kind) {
    case 'choice':
      return `${ask} ${condition.among.map(label).join(' / ')}`
    case 'sign': {
      const values = condition.among.map(value =>
        value === 'unsure' ? words.t('ui:not-sure') : words.t(`ui:plain.${value}`)
      )
      return `${label(condition.sign)}: ${values.join(' / ')}`
    }
    case 'measure': {
      if (condition.is === 'unsure') return `${ask} ${words.t('ui:not-sure')}`
      const { atLeast, over, under, atMost } =
        'within' in condition.is
          ? condition.is.within
          : { atLeast: condition.is.straddles, atMost: condition.is.straddles }
      const from = atLeast ?? over ?? -Number.MAX_VALUE
      const to = atMost ?? under ?? Number.MAX_VALUE
      return `${ask} ${runText(tree, words, observation, { instrument: null, from, to })}`
    }
  }
}

import { referralFor } from '../office/referral.ts'
import { isAskedBefore, isOnlyRecalled } from '../plain/exits.ts'
import type { Exit, Leads, Stop } from '../plain/stop.ts'
import { effectsOf } from '../tree/effects.ts'
import { must } from '../tree/must.ts'
import type { Question } from '../tree/tree.ts'
import { saidCall } from '../words/said-call.ts'
import { answerHint, answerLabel } from '../words/tree-texts.ts'
import { verdictText } from '../words/verdict-text.ts'
import { both, call, escaped, type PlainTree } from './plain-html.ts'
import { onText, runText } from './plain-said.ts'

/** The address of each stop and end, from inside the folder of its tree. */
export interface Addresses {
  readonly stops: readonly string[]
  readonly ends: readonly string[]
}

/** Every stop at one question that stands in one file, as the inside of a page. */
export function stopsHtml(
  plain: PlainTree,
  stops: readonly (readonly [number, Stop])[],
  addresses: Addresses
): string {
  const { tree, words, english, walk } = plain
  const [, first] = must(stops[0], 'stop')
  const question = must(tree.questions[first.question], 'question')
  const { asks } = question
  const number = must(walk.numbers.get(question.id), 'number')
  const how = `observations:${asks}.how` as const
  const again = isAskedBefore(tree, question)
    ? [
        words.t('ui:plain.again'),
        ...(isOnlyRecalled(tree, question)
          ? [words.t('ui:plain.not-asked', { answer: words.t('ui:plain.none') })]
          : [])
      ]
    : []
  return [
    `<h1>${number}. ${both(words.t(`observations:${asks}.ask`), english?.t(`observations:${asks}.ask`) ?? null)}</h1>`,
    ...again.map(line => `<p>${escaped(line)}</p>`),
    words.has(how) ? `<p>${both(words.t(how), english?.t(how) ?? null)}</p>` : '',
    ...atOnce(plain, question),
    `<p class="lost">${escaped(words.t('ui:plain.lost'))} <a href="index.html">${escaped(words.t('ui:plain.start'))}</a></p>`,
    ...stops.map(([id, stop]) => stopHtml(plain, question, id, stop, addresses)),
    ...meanings(plain, question)
  ]
    .filter(Boolean)
    .join('\n')
}

function stopHtml(
  plain: PlainTree,
  question: Question,
  id: number,
  stop: Stop,
  addresses: Addresses
): string {
  const { tree, words } = plain
  const label = (sign: string) => escaped(answerLabel(words, question.asks, sign))
  const signs = stop.exits.flatMap(({ on }) =>
    on.kind === 'signs' && on.value === 'no' ? on.signs : []
  )
  const noted =
    question.kind === 'signs' && stop.group === 0
      ? Object.entries(question.signs).flatMap(([sign, { yes, unsure }]) =>
          !signs.includes(sign) &&
          yes.notes.length + unsure.notes.length > 0 &&
          isAsked(plain, question, sign)
            ? [sign]
            : []
        )
      : []
  const list = (heading: string, ids: readonly string[]) =>
    ids.length === 0
      ? ''
      : `<p>${escaped(heading)}</p><ul>${ids.map(sign => `<li>${label(sign)}</li>`).join('')}</ul>`
  const ways = stop.exits.flatMap(exit => waysHtml(plain, question, exit, signs.length, addresses))
  const readings = readingsHtml(plain, question, stop.exits, addresses)
  const alone = noted.filter(sign => !isGrouped(plain, question, sign))
  return `<section class="from" id="s${id}"><h2>${escaped(words.t('ui:plain.answer'))}</h2>${list(
    words.t('ui:plain.any-of'),
    signs
  )}${readings}<ul class="ways">${ways.join('')}</ul>${list(words.t('ui:plain.look-too'), alone)}</section>`

  function isGrouped(of: PlainTree, { id: asked }: Question, sign: string): boolean {
    return of.walk.stops.some(
      other =>
        other.question === asked &&
        other.exits.some(({ on }) => on.kind === 'signs' && on.signs.includes(sign))
    )
  }
  function isAsked(of: PlainTree, { asks }: Question, sign: string): boolean {
    const observation = tree.observations[asks]
    return (
      of.tree === tree &&
      observation?.kind === 'signs' &&
      observation.signs.some(one => one.id === sign && !one.volunteered)
    )
  }
}

function waysHtml(
  plain: PlainTree,
  question: Question,
  { on, leads }: Exit,
  signs: number,
  addresses: Addresses
): readonly string[] {
  const { tree, words } = plain
  const way = (text: string) => wayHtml(plain, question, text, leads, addresses)
  switch (on.kind) {
    case 'signs': {
      const one = signs === 1
      const texts = {
        yes: words.t(one ? 'ui:plain.yes' : 'ui:plain.yes-one'),
        unsure: words.t(one ? 'ui:not-sure' : 'ui:plain.not-sure-one'),
        no: words.t(one ? 'ui:plain.no' : 'ui:plain.none')
      }
      return [way(texts[on.value])]
    }
    case 'answers':
      return on.among.map(answer => way(answerLabel(words, question.asks, answer)))
    case 'readings':
      return []
    default:
      return [way(onText(tree, words, question.asks, on))]
  }
}

function wayHtml(
  { words, walk }: PlainTree,
  question: Question,
  text: string,
  leads: Leads,
  addresses: Addresses
): string {
  const onTo = () => {
    if ('end' in leads) return words.t('ui:plain.on-end')
    const next = must(walk.stops[leads.stop], 'stop').question
    if (next === question.id) return words.t('ui:plain.on-here')
    return words.t('ui:plain.on', { number: must(walk.numbers.get(next), 'number') })
  }
  return `<li><a href="${addressOf(leads, addresses)}">${escaped(text)} <span>${escaped(onTo())}</span></a></li>`
}

/** Readings under what they were read off by; neighbors that lead the same way as one range. */
function readingsHtml(
  plain: PlainTree,
  question: Question,
  exits: readonly Exit[],
  addresses: Addresses
): string {
  const { tree, words } = plain
  const runs = exits.flatMap(({ on, leads }) =>
    on.kind === 'readings' ? on.runs.map(run => ({ ...run, leads })) : []
  )
  const instruments = [...new Set(runs.map(({ instrument }) => instrument))]
  return instruments
    .map(instrument => {
      const own = runs
        .filter(run => run.instrument === instrument)
        .toSorted((a, b) => a.from - b.from)
      const joined: typeof own = []
      for (const run of own) {
        const before = joined.at(-1)
        if (
          before !== undefined &&
          addressOf(before.leads, addresses) === addressOf(run.leads, addresses)
        ) {
          joined[joined.length - 1] = { ...before, to: run.to }
        } else joined.push(run)
      }
      const items = joined.map(run => {
        const text = runText(tree, words, question.asks, { ...run, instrument: null })
        return wayHtml(plain, question, text, run.leads, addresses)
      })
      const name =
        instrument === null
          ? null
          : words.t(`observations:${question.asks}.instruments.${instrument}`)
      const heading = name === null ? '' : `<h3>${escaped(name)}</h3>`
      return `${heading}<ul class="ways">${items.join('')}</ul>`
    })
    .join('')
}

const addressOf = (leads: Leads, { stops, ends }: Addresses): string =>
  must('end' in leads ? ends[leads.end] : stops[leads.stop], 'address')

/** What cannot wait for the last page: whom to call as soon as something is said. */
function atOnce(plain: PlainTree, question: Question): readonly string[] {
  const { tree, words, english, office, today } = plain
  if (question.kind === 'measure') return []
  const said: [string, readonly string[]][] =
    question.kind === 'choice'
      ? Object.entries(question.answers).map(([id, { raise }]) => [id, raise])
      : Object.entries(question.signs).map(([id, { yes }]) => [id, yes.raise])
  const urgent = tree.advice.urgency.filter(id =>
    effectsOf(question).some(({ raise }) => raise.includes(id))
  )
  return urgent.flatMap(id => {
    const answers = said.filter(([, raise]) => raise.includes(id)).map(([answer]) => answer)
    if (answers.length === 0) return []
    const labels = answers.map(answer => answerLabel(words, question.asks, answer)).join(' / ')
    const { refer = [], doNow = [] } = tree.advice.verdicts[id] ?? {}
    const calls = refer.map(trigger => saidCall(referralFor(office, trigger, today), words))
    const [step] = doNow
    const lines = [
      both(
        verdictText(words, tree.id, id, 'name'),
        english && verdictText(english, tree.id, id, 'name')
      ),
      ...(step === undefined
        ? []
        : [both(words.t(`steps:${step}`), english?.t(`steps:${step}`) ?? null)]),
      ...calls.map(({ name, phone }) => call(name, phone))
    ]
    return [
      `<div class="once"><h2>${escaped(words.t('ui:plain.at-once', { answers: labels }))}</h2><p>${lines.join('<br>')}</p></div>`
    ]
  })
}

/** The sentences behind the labels, once for all stops of the page. */
function meanings({ tree, words }: PlainTree, { asks }: Question): readonly string[] {
  const observation = tree.observations[asks]
  if (observation === undefined || observation.kind === 'measure') return []
  const answers = observation.kind === 'choice' ? observation.answers : observation.signs
  const hints = answers.flatMap(({ id }) => {
    const hint = answerHint(words, asks, id)
    return hint === undefined
      ? []
      : [`<dt>${escaped(answerLabel(words, asks, id))}</dt><dd>${escaped(hint)}</dd>`]
  })
  return hints.length === 0
    ? []
    : [`<h2>${escaped(words.t('ui:plain.meaning'))}</h2><dl>${hints.join('')}</dl>`]
}

import { referralFor } from '../office/referral.ts'
import { type Block, endPage, type Presumed } from '../plain/end-blocks.ts'
import type { End, When } from '../plain/stop.ts'
import { reportOf } from '../report/report.ts'
import { cautionsOf } from '../words/beside.ts'
import { saidCall } from '../words/said-call.ts'
import { recheckText, type Said, say } from '../words/say.ts'
import { sourceLine } from '../words/sources.ts'
import type { TextKey } from '../words/text-key.ts'
import { both, call, escaped, type PlainTree } from './plain-html.ts'
import { conditionText, whensText } from './plain-said.ts'

/** An outcome as the inside of a page: what is certain, then what goes with single answers. */
export function endHtml(plain: PlainTree, end: End): string {
  const { tree, words, english, sources, office, today } = plain
  const { outcome, blocks, presumed } = endPage(tree, end)
  const report = reportOf(tree, outcome, office, today, {})
  const said = say(report, words, sources)
  const beside = english === null ? null : cautionsOf(say(report, english, sources))
  const emergency = said.emergency
  return [
    ...verdicts(said, beside),
    said.use === null ? '' : `<p><strong>${both(said.use, beside?.use ?? null)}</strong></p>`,
    listed('ol', words.t('ui:do-now'), said.doNow, beside?.doNow),
    said.recheck === null ? '' : `<p>${recheckLine(plain, said, beside)}</p>`,
    listed('ol', words.t('ui:later'), said.later, beside?.later),
    calls(words.t('ui:who-to-call'), said, beside),
    ...(emergency ? [] : conditional(plain, blocks, presumed)),
    ...said.sections.map(({ title, lines }, index) =>
      listed('ul', title, lines, beside?.sections[index]?.lines)
    ),
    listed('ul', words.t('ui:sources'), said.sources.map(sourceLine)),
    `<p>${[said.standing.title, said.standing.edition, said.standing.draft, said.standing.overdue]
      .filter(line => line !== null)
      .map(escaped)
      .join(' · ')}</p>`
  ]
    .filter(Boolean)
    .join('\n')
}

/** The title of an end: the verdict that is said first. */
export function endTitle({ tree, words, sources, office, today }: PlainTree, end: End): string {
  const { outcome } = endPage(tree, end)
  const { verdicts: all } = say(reportOf(tree, outcome, office, today, {}), words, sources)
  return all[0]?.name ?? words.t(`${tree.id}:title`)
}

function verdicts(said: Said, beside: Said | null): readonly string[] {
  return said.verdicts.map(({ signal, signalWord, name, message, why }, index) => {
    const english = beside?.verdicts[index]
    const heading = index === 0 ? 'h1' : 'h2'
    const word = signalWord === null ? '' : `${escaped(signalWord)}: `
    return `<div class="card ${signal}"><${heading}>${word}${both(name, english?.name ?? null)}</${heading}>${[
      message === null ? '' : both(message, english?.message ?? null),
      why === null ? '' : escaped(why)
    ]
      .filter(Boolean)
      .map(line => `<p>${line}</p>`)
      .join('')}</div>`
  })
}

function recheckLine({ words }: PlainTree, { recheck }: Said, beside: Said | null): string {
  return `${both(recheck ?? '', beside?.recheck ?? null)} ${escaped(words.t('ui:plain.due'))}`
}

function listed(
  list: 'ol' | 'ul',
  title: string,
  lines: readonly string[],
  english: readonly string[] = []
): string {
  if (lines.length === 0) return ''
  const items = lines.map((line, index) => `<li>${both(line, english[index] || null)}</li>`)
  return `<h2>${escaped(title)}</h2><${list}>${items.join('')}</${list}>`
}

function calls(title: string, said: Said, beside: Said | null): string {
  const items = said.calls.map(({ name, phone, say: sentence }, index) => {
    const english = beside?.calls[index]?.say ?? null
    return `<li><strong>${call(name, phone)}</strong><br>${both(sentence, english)}</li>`
  })
  const doubt = said.officeDoubt === null ? '' : `<p>${escaped(said.officeDoubt)}</p>`
  return items.length === 0 ? doubt : `<h2>${escaped(title)}</h2><ul>${items.join('')}</ul>${doubt}`
}

/** What is said to those alone who said something, under the number of the question. */
function conditional(
  plain: PlainTree,
  blocks: readonly Block[],
  presumed: readonly Presumed[]
): readonly string[] {
  const { tree, words, walk } = plain
  if (blocks.length + presumed.length === 0) return []
  const numberOf = ({ question }: When) => walk.numbers.get(question) ?? 0
  const byNumber = new Map<number, { question: string; blocks: Block[] }>()
  for (const block of blocks) {
    const [first] = [...block.whens].sort((a, b) => numberOf(a) - numberOf(b))
    if (first === undefined) continue
    const group = byNumber.get(numberOf(first)) ?? { question: first.question, blocks: [] }
    group.blocks.push(block)
    byNumber.set(numberOf(first), group)
  }
  const groups = [...byNumber]
    .sort(([a], [b]) => a - b)
    .map(([number, { question, blocks: own }]) => {
      const ask = words.t(`observations:${tree.questions[question]?.asks}.ask`)
      const items = own.map(block => `<li>${blockHtml(plain, block)}</li>`)
      return `<h3 id="n${number}">${number}. ${escaped(ask)}</h3><ul>${items.join('')}</ul>`
    })
  const rules = presumed.map(one => `<li>${presumedHtml(plain, one)}</li>`)
  return [
    `<h2>${escaped(words.t('ui:plain.what-you-said'))}</h2><p>${escaped(words.t('ui:plain.what-you-said-how'))}</p>`,
    ...groups,
    rules.length === 0
      ? ''
      : `<h3>${escaped(words.t('ui:plain.other-rule'))}</h3><ul>${rules.join('')}</ul>`
  ]
}

function blockHtml(plain: PlainTree, block: Block): string {
  const { tree, words, english, walk, office, today } = plain
  const whens = (of: readonly When[]) => escaped(whensText(tree, words, of, walk.numbers))
  const text = (key: TextKey) => both(words.t(key), english?.t(key) ?? null)
  const steps = (title: string, ids: readonly string[]) =>
    ids.length === 0
      ? ''
      : `<p>${escaped(title)}:</p><ul>${ids.map(id => `<li>${text(keyOf(plain, id))}</li>`).join('')}</ul>`
  const named = block.calls.map(trigger => {
    const { name, phone, say: sentence } = saidCall(referralFor(office, trigger, today), words)
    return `<li>${call(name, phone)}. ${escaped(sentence)}</li>`
  })
  return [
    `<em>${whens(block.whens)}</em>: `,
    block.says ? text(`notes:${block.note}`) : '',
    block.unless.length === 0
      ? ''
      : `<p>${escaped(words.t('ui:plain.unless', { answers: '' }))}${whens(block.unless)}</p>`,
    steps(words.t('ui:plain.also'), block.also),
    steps(words.t('ui:plain.leave-out'), block.leaveOut),
    named.length === 0
      ? ''
      : `<p>${escaped(words.t('ui:who-to-call'))}:</p><ul>${named.join('')}</ul>`,
    block.recheck === null ? '' : `<p>${escaped(recheckText(words, block.recheck))}</p>`
  ].join('')
}

/** What a note makes wrong can be a step or another note. */
const keyOf = ({ tree }: PlainTree, id: string): TextKey =>
  Object.hasOwn(tree.advice.does, id) ? `steps:${id}` : `notes:${id}`

function presumedHtml({ tree, words, english }: PlainTree, one: Presumed): string {
  const text = (key: TextKey) => both(words.t(key), english?.t(key) ?? null)
  const conditions = one.ruledOutBy.map(all =>
    all.map(condition => conditionText(tree, words, condition)).join(' + ')
  )
  const instead = one.otherwise.map(step => `<li>${text(`steps:${step}`)}</li>`)
  return [
    `<em>${conditions.map(answers => escaped(words.t('ui:plain.if', { answers }))).join('; ')}</em>: `,
    `<p>${escaped(words.t('ui:plain.leave-out'))}:</p><ul><li>${text(`steps:${one.step}`)}</li></ul>`,
    instead.length === 0
      ? ''
      : `<p>${escaped(words.t('ui:plain.instead'))}:</p><ul>${instead.join('')}</ul>`
  ].join('')
}

import { couldBeTogether } from '../../evaluate/could-be.ts'
import { textOrEnglish } from '../../office/local-text.ts'
import type { OfficePack } from '../../office/office-pack.ts'
import { referralFor } from '../../office/referral.ts'
import { isPast } from '../../office/stale.ts'
import { TRACKS, type Track } from '../../tree/observation.ts'
import { USES } from '../../tree/tree.ts'
import { directionOf, inLatinDigits } from '../../words/direction.ts'
import { footNumbers } from '../../words/foot-numbers.ts'
import { sourcesInBrief } from '../../words/known.ts'
import { isDraft } from '../../words/languages.ts'
import { standingOf } from '../../words/say.ts'
import { sentence } from '../../words/sentence.ts'
import { entriesOf, type SourceLedger } from '../../words/sources.ts'
import { cautionText } from '../../words/tree-texts.ts'
import { useCode } from '../key-codes.ts'
import { inOwnOrder, isolated } from '../text-width.ts'
import { Column, type DecisionTerms, type DrawnPart, SWATCH, TYPES } from './items.ts'
import { markText } from './marks.ts'

/** What stands around the boxes. */
export interface FrameTerms extends DecisionTerms {
  readonly office: OfficePack | null
  readonly sources: SourceLedger
  readonly today: Date
  readonly address: string
  readonly width: number
}

export const TITLE = { size: 16, bold: true }

/** Side of the code on the first page, in points. */
export const CODE = 62

export const titleOf = ({ words, tree }: DecisionTerms): string =>
  `${words.t('ui:decision-chart.title')}: ${words.t(`${tree.id}:title`)}`

/** Whose chart it is, of what, which page, and the numbers that nothing replaces. */
export function headPart(page: { number: number; of: number }, terms: FrameTerms): DrawnPart {
  const { words, office, today } = terms
  const column = new Column(words.tag)
  // Beside the code on the first page.
  const width = page.number === 1 ? terms.width - CODE - 8 : terms.width
  const place = words.t('ui:decision-chart.page-of', page)
  column.text(`${office?.office.name ?? 'Jarside'} · ${place}`, 0, width, TYPES.small)
  column.text(titleOf(terms), 0, width, TITLE)
  const desk = {
    name: office?.office.name ?? words.t('ui:referral.office-missing.name'),
    phone: referralFor(office, 'office', today).phone
  }
  const numbers = [...footNumbers(words, office?.country), desk]
  column.text(
    numbers
      .map(({ name, phone }) => (phone === null ? name : `${name} ${inOwnOrder(phone)}`))
      .join(' · '),
    0,
    width,
    TYPES.mark
  )
  column.y = Math.max(column.y, page.number === 1 ? CODE : 0) + 3
  column.add({ kind: 'bar', x: 0, y: column.y, width: terms.width, height: 1.5 })
  column.y += 10
  return column.part(terms.width)
}

/** What it does not decide, how far it is reviewed, which edition it is; on the first page where it is from. */
export function footPart(number: number, terms: FrameTerms): DrawnPart {
  const { words, tree, today, sources, address, width } = terms
  const overdue = isPast(tree.review.due, today)
  const { draft, edition, due, overdue: late } = standingOf({ tree, overdue }, words)
  const translation = isDraft(words.tag) ? words.t('ui:draft-translation') : null
  const doubts = [draft, late, translation].filter(doubt => doubt !== null)
  const column = new Column(words.tag)
  column.y = 8
  column.add({ kind: 'bar', x: 0, y: column.y, width, height: 1.5 })
  column.y += 4
  if (doubts.length > 0) column.text(doubts.map(sentence).join(' '), 0, width, TYPES.mark)
  const cautions = [cautionText(words, tree.id, 'not-proof'), words.t('ui:sheet.local-first')]
  column.text(cautions.join(' '), 0, width, TYPES.small)
  const printed = new Intl.DateTimeFormat(inLatinDigits(words.tag), { dateStyle: 'medium' }).format(
    today
  )
  const standing = [
    inOwnOrder(address.replace(/^https?:\/\//, '')),
    `${edition} (${tree.fingerprint.slice(0, 6)})`,
    words.t('ui:sheet.review', { due }),
    words.t('ui:sheet.printed', { date: printed })
  ]
  column.text(standing.join(' · '), 0, width, TYPES.small)
  if (number === 1) {
    const ids = new Set(Object.values(tree.questions).flatMap(({ because }) => because))
    const cited = sourcesInBrief(entriesOf([...ids], sources), words)
    if (cited !== '') column.text(`${words.t('ui:sources')}: ${cited}`, 0, width, TYPES.small)
    addServed(column, terms)
  }
  return column.part(width)
}

/** Whom the office serves, in its own words: in English where it gave none in this language. */
function addServed(column: Column, { office, words, width }: FrameTerms): void {
  const own = textOrEnglish(office?.nonDiscrimination ?? null, words.tag)
  if (own === null) return
  const isOther = own.tag !== words.tag
  const text = isOther ? isolated(own.text, directionOf(own.tag)) : own.text
  column.text(text, 0, width, TYPES.small, false, isOther ? own.tag : undefined)
}

/** How the chart is followed, and every mark that it can name, the most cautious last. */
export function legendPart(terms: FrameTerms): DrawnPart {
  const { words, tree, width } = terms
  const column = new Column(words.tag)
  const how = (['begin', 'take', 'end'] as const).map(line => words.t(`ui:key.how.${line}`))
  column.text([...how, words.t('ui:decision-chart.letters')].join(' '), 0, width, LEGEND)
  column.y += 6
  const gap = 12
  const wide = (width - 2 * gap) / 3
  const ofTrack = (track: Track): LegendGroup => ({
    title: words.t(`ui:key.${track}`),
    about: track,
    lines: tree.verdicts
      .filter(each => each.track === track && couldBeTogether(tree, [each.id]))
      .map(({ id }) => ({ of: id, text: markText(terms, id) }))
  })
  const use: LegendGroup = {
    title: words.t('ui:key.use'),
    about: null,
    lines: USES.filter(each => each !== 'as-directed').map(each => ({
      of: useCode(each),
      text: `${useCode(each)} ${words.t(`${tree.id}:use.${each}`)}`
    }))
  }
  const [person, container, batch] = TRACKS.map(ofTrack)
  const columns = [[person, container], [batch], [use]].map((groups, index) => {
    const own = new Column(words.tag, column.y)
    for (const group of groups)
      if (group !== undefined) addGroup(own, group, index * (wide + gap), wide)
    return own
  })
  const bottom = Math.max(...columns.map(({ y }) => y))
  for (const { items } of columns.map(each => each.part(width))) {
    for (const item of items) column.add(item)
  }
  column.y = bottom + 4
  column.add({ kind: 'bar', x: 0, y: column.y, width, height: 0.75 })
  column.y += 10
  return column.part(width)
}

const LEGEND = { size: 10, bold: false }

interface LegendGroup {
  readonly title: string
  readonly about: Track | null
  readonly lines: readonly { readonly of: string; readonly text: string }[]
}

function addGroup(column: Column, { title, about, lines }: LegendGroup, x: number, width: number) {
  if (lines.length === 0) return
  const tab = about === null ? 0 : 22
  if (about !== null) column.add({ kind: 'tab', about, x, y: column.y, width: 18, height: 11 })
  column.text(title, x + tab, width - tab, TYPES.ask)
  column.y += 2
  for (const { of, text } of lines) {
    column.add({ kind: 'swatch', of, x, y: column.y + 0.5, ...SWATCH })
    column.text(text, x + SWATCH.width + 4, width - SWATCH.width - 4, TYPES.mark)
    column.y += 1.5
  }
  column.y += 5
}

/** Remarks by their numbers, each by itself. */
export function remarkParts(terms: FrameTerms, width: number): readonly DrawnPart[] {
  const { words, remarks } = terms
  return remarks.map((note, index) => {
    const column = new Column(words.tag)
    const indent = 22
    column.text(`${index + 1}`, 0, indent, TYPES.mark)
    column.y = 0
    column.text(words.t(`notes:${note}`), indent, width - indent, TYPES.small)
    column.y += 4
    return column.part(width)
  })
}

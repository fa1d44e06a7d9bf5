import { cutsOn } from '../../tree/bands.ts'
import type { MeasureObservation } from '../../tree/observation.ts'
import type { Dissent, Tree } from '../../tree/tree.ts'
import { isUpperBound } from '../../tree/upper-bound.ts'
import type { SourceLedger } from '../../words/sources.ts'
import { verdictText } from '../../words/verdict-text.ts'
import type { Words } from '../../words/words.ts'
import { observationText } from '../table-words.ts'
import { isWeak, saysOtherwise, type WeakGround, weakAmong } from './grounds.ts'
import { type AnyRule, nameText, rulesOf, saidText, thenText, whenText } from './rule-words.ts'
import { spokenTexts } from './texts.ts'

/** Under what heading something stands that a specialist looks at first, the most pressing heading first. */
export const ITEM_GROUPS = ['dissent', 'frees', 'limit', 'holds', 'said'] as const
export type ItemGroup = (typeof ITEM_GROUPS)[number]

/** One thing that a specialist decides: it rests on no publication, or sources differ over it. */
export interface PacketItem {
  /** `rules/<rule>`, `limits/<measure>/<limit>`, `instruments/<measure>`, `notes/<note>` … */
  readonly id: string
  readonly group: ItemGroup
  readonly name: string
  /** When it holds: in each of these cases; none where that needs no saying. */
  readonly when: readonly string[]
  readonly says: readonly string[]
  readonly grounds: readonly WeakGround[]
  /** Source ids; none where none is recorded. */
  readonly because: readonly string[]
  readonly dissent: readonly Dissent[]
  /** The rules that it is made of. */
  readonly rules: readonly string[]
}

/** What the items of a tree are gathered from. */
export interface ItemsOf {
  readonly tree: Tree
  readonly words: Words
  readonly sources: SourceLedger
  /** The tree's English texts, by namespace. */
  readonly texts: Readonly<Record<string, unknown>>
}

/** Everything that a specialist looks at first, most pressing first; each thing once. */
export function itemsOf(of: ItemsOf): readonly PacketItem[] {
  const all = [...ruleItems(of), ...limitItems(of), ...adviceItems(of)]
  const items = [...all, ...textItems(of, all)]
  return ITEM_GROUPS.flatMap(group => items.filter(item => item.group === group))
}

/** Rules by what they speak of: those of one condition are one decision, and so are those that hold back alike. */
function ruleItems({ tree, words, sources }: ItemsOf): readonly PacketItem[] {
  const weak = rulesOf(tree).filter(
    ({ basis, because, dissent }) =>
      isWeak(basis) || dissent !== undefined || weakAmong(because, sources).length > 0
  )
  const groups = new Map<string, AnyRule[]>()
  for (const rule of weak) {
    const key = JSON.stringify([rule.when, rule.unless, rule.restUsual, rule.dissent ?? null])
    groups.set(key, [...(groups.get(key) ?? []), rule])
  }
  const items = [...groups.values()].flatMap(rules => {
    const [first] = rules
    if (first === undefined) return []
    const because = [...new Set(rules.flatMap(rule => rule.because))]
    const bases = rules.map(({ basis }) => basis).filter(isWeak)
    const dissent = first.dissent ?? []
    const group: ItemGroup = dissent.length > 0 ? 'dissent' : rules.some(frees) ? 'frees' : 'holds'
    const item: PacketItem = {
      id: `rules/${first.id}`,
      group,
      name: nameText(first.id),
      when: [whenText(words, tree, first)],
      says: rules.map(rule => thenText(words, tree, rule)),
      grounds: [...new Set([...bases, ...weakAmong(because, sources)])],
      because,
      dissent,
      rules: rules.map(({ id }) => id)
    }
    return [{ item, alike: group === 'holds' ? alikeKey(first, item) : item.id }]
  })
  const alike = new Map<string, PacketItem>()
  for (const { item, alike: key } of items) {
    const before = alike.get(key)
    alike.set(key, before === undefined ? item : together(before, item))
  }
  return [...alike.values()]
}

/** Rules that hold back in the same way, over answers to the same questions, are one decision. */
const alikeKey = ({ when, unless, restUsual }: AnyRule, { says }: PacketItem): string =>
  JSON.stringify([when.map(({ observation }) => observation), unless, restUsual, says])

const together = (one: PacketItem, other: PacketItem): PacketItem => ({
  ...one,
  when: [...one.when, ...other.when],
  grounds: [...new Set([...one.grounds, ...other.grounds])],
  because: [...new Set([...one.because, ...other.because])],
  rules: [...one.rules, ...other.rules]
})

/** Whether it lets something be kept or used, or an alarm not be given: there an error harms. */
const frees = (rule: AnyRule): boolean => 'claim' in rule && isUpperBound(rule.claim)

/** The limits by which a question of weak ground decides, and how far instruments are taken to be out. */
function limitItems({ tree, words, sources }: ItemsOf): readonly PacketItem[] {
  const questions = Object.values(tree.questions)
  const asked = new Set(questions.map(({ asks }) => asks))
  const measures = Object.values(tree.observations).filter(
    (each): each is MeasureObservation => each.kind === 'measure' && asked.has(each.id)
  )
  return measures.flatMap(measure => {
    const name = observationText(words, measure.id)
    const weak = questions.filter(
      ({ asks, because }) => asks === measure.id && weakAmong(because, sources).length > 0
    )
    const limits = [...new Set(cutsOn(tree, measure).map(cut => cut.at))]
    const ofLimits = limits.flatMap(limit => {
      const deciding = weak.filter(
        question =>
          question.kind === 'measure' &&
          [...question.ranges, ...question.taste].some(({ range }) =>
            Object.values(range).includes(limit)
          )
      )
      const because = [...new Set(deciding.flatMap(question => question.because))]
      if (deciding.length === 0) return []
      return [
        blank({
          id: `limits/${measure.id}/${limit}`,
          group: 'limit',
          name: `${name}: the limit ${limit}`,
          says: [`Decides at: ${deciding.map(({ id }) => nameText(id)).join('; ')}`],
          grounds: weakAmong(because, sources),
          because
        })
      ]
    })
    const instruments = measure.instruments.map(
      ({ id, plusMinus }) =>
        `${words.t(`observations:${measure.id}.instruments.${id}`)}: ± ${plusMinus}`
    )
    if (instruments.length === 0) return ofLimits
    return [
      ...ofLimits,
      blank({
        id: `instruments/${measure.id}`,
        group: 'limit',
        name: `${name}: how far an instrument is taken to be out`,
        says: [...instruments, 'No source is recorded for these.'],
        grounds: ['own-caution']
      })
    ]
  })
}

/** Steps, notes and answers afterwards that rest on no publication, at least in part. */
function adviceItems({ tree, words, sources }: ItemsOf): readonly PacketItem[] {
  const { verdicts, notes, followUps } = tree.advice
  const steps = (ids: readonly string[]) => ids.map(id => saidText(words, id))
  const ofVerdicts = Object.entries(verdicts).map(([id, advice]) => {
    const { doNow, byUse, clean, keep, startAgain, because } = advice
    const all = [...doNow, ...Object.values(byUse).flat(), ...clean, ...keep, ...startAgain]
    return blank({
      id: `verdicts/${id}`,
      group: 'said',
      name: `The steps with the verdict “${verdictText(words, tree.id, id, 'name')}”`,
      says: steps([...new Set(all)]),
      grounds: weakAmong(because, sources),
      because
    })
  })
  const ofNotes = Object.entries(notes).map(([id, { adds, clean, because }]) => {
    const text = saidText(words, id)
    return blank({
      id: `notes/${id}`,
      group: saysOtherwise(text) ? 'dissent' : 'said',
      name: `The note “${nameText(id)}”`,
      says: [text, ...steps([...adds, ...clean]).map(step => `With the step: ${step}`)],
      grounds: weakAmong(because, sources),
      because
    })
  })
  const ofFollowUps = followUps.map(({ id, because }) =>
    blank({
      id: `follow-ups/${id}`,
      group: 'said',
      name: `Asked afterwards: “${words.t(`follow-ups:${id}.ask`)}”`,
      says: [words.t(`follow-ups:${id}.answer`)],
      grounds: weakAmong(because, sources),
      because
    })
  )
  return [...ofVerdicts, ...ofNotes, ...ofFollowUps].filter(
    ({ grounds, group }) => grounds.length > 0 || group === 'dissent'
  )
}

/** Texts that say themselves that others hold otherwise, where no item has them yet. */
function textItems({ texts }: ItemsOf, items: readonly PacketItem[]): readonly PacketItem[] {
  const ids = new Set(items.map(({ id }) => id))
  return spokenTexts(texts).flatMap(({ namespace, key, text }) => {
    const id = `${namespace}/${key}`
    if (!saysOtherwise(text) || ids.has(id)) return []
    return [
      blank({
        id: `words/${id}`,
        group: 'dissent',
        name: `The text ${namespace}:${key}`,
        says: [text]
      })
    ]
  })
}

function blank(
  item: Pick<PacketItem, 'id' | 'group' | 'name' | 'says'> & Partial<PacketItem>
): PacketItem {
  return { when: [], grounds: [], because: [], dissent: [], rules: [], ...item }
}

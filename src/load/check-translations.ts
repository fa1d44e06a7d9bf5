import type { FindingCode } from '../findings/catalogue.ts'
import type { Place } from '../findings/place.ts'
import { isForStaff } from '../translation/audience.ts'
import { faultText, type LintRule, type TextFault } from '../translation/pair.ts'
import { type LintsPair, pairLinter } from '../translation/pair-linter.ts'
import { saidTwoWays } from '../translation/two-ways.ts'
import { SOURCE_TAG } from './check-words.ts'
import type { AuthoredProject, Shaped } from './project.ts'
import type { FindingReport } from './report.ts'
import type { AuthoredGlossary } from './schemas/glossary.ts'
import { textsIn, unmatched } from './texts.ts'
import { translatedKeys } from './translated-keys.ts'

/** Holds every other language against the English words: the same texts, and in each the same said. */
export function checkTranslations(project: AuthoredProject, report: FindingReport): void {
  const source = project.words.get(SOURCE_TAG) ?? new Map<string, Shaped<unknown>>()
  for (const [tag, files] of project.words) {
    if (tag === SOURCE_TAG) continue
    const held = openLanguage(tag, project.glossaries.get(tag) ?? null)
    for (const stem of new Set([...source.keys(), ...files.keys()])) {
      const english = source.get(stem)
      const translation = files.get(stem)
      const file = `locales/${tag}/${stem}.json`
      if (translation) checkFile({ stem, file, english, translation }, held, report)
      else if ([...textsIn(english?.value).keys()].some(key => !isForStaff(stem, key))) {
        report.add('missing-file', null, { file, holds: `the words of \`${stem}\` in \`${tag}\`` })
      }
    }
    closeLanguage(held, report)
  }
}

/** What is known of a language while its files are held against the English. */
interface Held {
  readonly tag: string
  readonly authored: Shaped<AuthoredGlossary> | null
  readonly lint: LintsPair
  /** The accepted faults that were met. */
  readonly met: Set<number>
  readonly said: {
    readonly english: string
    readonly target: string
    readonly place: () => Place
    readonly key: string
  }[]
}

const openLanguage = (tag: string, authored: Shaped<AuthoredGlossary> | null): Held => ({
  tag,
  authored,
  lint: pairLinter(tag, authored?.value ?? null),
  met: new Set(),
  said: []
})

interface Files {
  readonly stem: string
  readonly file: string
  readonly english: Shaped<unknown> | undefined
  readonly translation: Shaped<unknown>
}

function checkFile(
  { stem, file, english, translation }: Files,
  held: Held,
  report: FindingReport
): void {
  const source = textsIn(english?.value)
  const texts = textsIn(translation.value)
  const wanted = translatedKeys(held.tag, source.keys())
  for (const { key, name, beside } of unmatched(wanted.keys(), texts.keys())) {
    if (isForStaff(stem, key)) continue
    const place = english?.doc.place((wanted.get(key) ?? key).split('.')) ?? null
    const near = report.near(name, beside)
    report.add('text-not-translated', place, { text: key, tag: held.tag, file, near })
  }
  for (const { key, name, beside } of unmatched(texts.keys(), wanted.keys())) {
    const near = report.near(name, beside)
    report.add('text-without-english', translation.doc.place(key.split('.')), { text: key, near })
  }
  for (const [key, text] of texts) {
    // What callers say is of each language by itself, and so is what an invented caller tells.
    if (stem === 'practice' || (stem === 'know-how' && key.endsWith('.said'))) continue
    const original = wanted.get(key)
    const said = original === undefined ? undefined : source.get(original)
    if (original === undefined || said === undefined) continue
    const place = () => translation.doc.place(key.split('.'))
    // Plural forms of one English are several on purpose.
    if (key === original) held.said.push({ english: said, target: text, place, key })
    for (const fault of held.lint({ english: said, target: text })) {
      if (isAccepted(held, `${stem}:${key}`, fault)) continue
      const where = english?.doc.place(original.split('.'))
      const because = where ? [{ label: 'The English text', place: where }] : []
      const { rule, lacks, adds } = fault
      const facts = { text: key, id: `${stem}:${key}`, rule, lacks, adds, finds: faultText(fault) }
      report.add(FINDING[rule], place(), facts, because)
    }
  }
}

/** Whether somebody has looked at exactly this fault and listed it. */
function isAccepted({ authored, met }: Held, text: string, fault: TextFault): boolean {
  const finds = faultText(fault)
  const place =
    authored?.value.accepted.findIndex(
      one => one.text === text && one.rule === fault.rule && one.finds === finds
    ) ?? -1
  if (place >= 0) met.add(place)
  return place >= 0
}

/** What is seen only of all files together: one English in two ways, and what was accepted for nothing. */
function closeLanguage({ authored, met, said }: Held, report: FindingReport): void {
  if (!authored) return
  const listed = authored.value['said-two-ways']
  const found = saidTwoWays(said)
  for (const { english, others } of found) {
    if (Object.hasOwn(listed, english)) continue
    for (const { key, target, place } of others) {
      report.add('said-two-ways', place(), { text: key, english, target })
    }
  }
  for (const english of Object.keys(listed)) {
    if (found.some(one => one.english === english)) continue
    const place = authored.doc.place(['said-two-ways', english])
    report.add('accepted-for-nothing', place, { text: english })
  }
  for (const [index, { text }] of authored.value.accepted.entries()) {
    if (met.has(index)) continue
    report.add('accepted-for-nothing', authored.doc.place(['accepted', index]), { text })
  }
}

const FINDING = {
  gaps: 'placeholder-differs',
  numbers: 'number-differs',
  units: 'number-differs',
  bounds: 'number-differs',
  negation: 'negation-differs',
  terms: 'term-differs',
  items: 'part-left-out',
  sentences: 'part-left-out',
  length: 'part-left-out',
  'left-in-english': 'left-in-english',
  script: 'form-unfit',
  marks: 'form-unfit',
  register: 'form-unfit'
} as const satisfies Record<LintRule, FindingCode>

import { SOURCE_TAG } from './check-words.ts'
import { gapsIn, numbersIn, without } from './numbers-and-gaps.ts'
import type { AuthoredProject, Shaped } from './project.ts'
import type { FindingReport } from './report.ts'
import { textsIn, unmatched } from './texts.ts'
import { translatedKeys } from './translated-keys.ts'

/** Holds every other language against the English words: the same texts, gaps and numbers. */
export function checkTranslations({ words }: AuthoredProject, report: FindingReport): void {
  const source = words.get(SOURCE_TAG) ?? new Map<string, Shaped<unknown>>()
  for (const [tag, files] of words) {
    if (tag === SOURCE_TAG) continue
    for (const stem of new Set([...source.keys(), ...files.keys()])) {
      const english = source.get(stem)
      const translation = files.get(stem)
      const file = `locales/${tag}/${stem}.json`
      if (translation) checkFile({ tag, file, english, translation }, report)
      else
        report.add('missing-file', null, { file, holds: `the words of \`${stem}\` in \`${tag}\`` })
    }
  }
}

interface Pair {
  readonly tag: string
  readonly file: string
  readonly english: Shaped<unknown> | undefined
  readonly translation: Shaped<unknown>
}

function checkFile({ tag, file, english, translation }: Pair, report: FindingReport): void {
  const source = textsIn(english?.value)
  const texts = textsIn(translation.value)
  const wanted = translatedKeys(tag, source.keys())
  for (const { key, name, beside } of unmatched(wanted.keys(), texts.keys())) {
    const place = english?.doc.place((wanted.get(key) ?? key).split('.')) ?? null
    const near = report.near(name, beside)
    report.add('text-not-translated', place, { text: key, tag, file, near })
  }
  for (const { key, name, beside } of unmatched(texts.keys(), wanted.keys())) {
    const near = report.near(name, beside)
    report.add('text-without-english', translation.doc.place(key.split('.')), { text: key, near })
  }
  for (const [key, text] of texts) {
    const original = wanted.get(key)
    const said = original === undefined ? undefined : source.get(original)
    if (original === undefined || said === undefined) continue
    for (const [code, told] of COMPARED) {
      const lacks = without(told(said), told(text))
      const adds = without(told(text), told(said))
      if (lacks.length + adds.length === 0) continue
      const where = english?.doc.place(original.split('.'))
      const because = where ? [{ label: 'The English text', place: where }] : []
      report.add(code, translation.doc.place(key.split('.')), { text: key, lacks, adds }, because)
    }
  }
}

const COMPARED = [
  ['placeholder-differs', gapsIn],
  ['number-differs', numbersIn]
] as const

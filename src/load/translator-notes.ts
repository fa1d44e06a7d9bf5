import { gapsIn } from '../translation/gaps.ts'
import { SOURCE_TAG } from './check-words.ts'
import type { AuthoredProject } from './project.ts'
import type { FindingReport } from './report.ts'
import { textsIn } from './texts.ts'

/**
 * The note for each English text that has one, by its id: what is written of the text itself, then what
 * stands in its gaps. Reports notes of nothing, and gaps of which nobody says what stands in them.
 */
export function translatorNotes(
  project: AuthoredProject,
  report: FindingReport
): Readonly<Record<string, string>> {
  const authored = project.translatorNotes
  if (authored === null) return {}
  const { gaps, phrases, texts } = authored.value
  const english = [...(project.words.get(SOURCE_TAG) ?? [])].flatMap(([stem, { value, doc }]) =>
    [...textsIn(value)].map(([key, text]) => ({ id: `${stem}:${key}`, text, key, doc }))
  )
  const said = Object.entries(phrases).map(([phrase, note]) => ({
    phrase,
    note: `“${phrase}”: ${note}`,
    stands: new RegExp(`(?<!\\p{L})${escaped(phrase)}(?!\\p{L})`, 'iu')
  }))
  const used = { texts: new Set<string>(), phrases: new Set<string>(), gaps: new Set<string>() }
  const notes: Record<string, string> = {}
  for (const { id, text, key, doc } of english) {
    const own = nameFor(id, texts)
    if (own !== null) used.texts.add(own)
    const ofPhrases = said.filter(({ stands }) => stands.test(text))
    for (const { phrase } of ofPhrases) used.phrases.add(phrase)
    const names = [...new Set(gapsIn(text))]
    for (const gap of names) {
      if (Object.hasOwn(gaps, gap)) used.gaps.add(gap)
      else report.add('gap-not-explained', doc.place(key.split('.')), { text: key, gap })
    }
    const note = [
      ...(own === null ? [] : [texts[own]]),
      ...ofPhrases.map(({ note }) => note),
      ...names.map(gap => `{{${gap}}}: ${gaps[gap] ?? ''}`)
    ].join(' ')
    if (note !== '') notes[id] = note
  }
  const ids = english.map(({ id }) => id)
  for (const part of ['texts', 'phrases', 'gaps'] as const) {
    for (const name of Object.keys(authored.value[part])) {
      if (used[part].has(name)) continue
      const near = part === 'texts' ? report.near(name, ids) : []
      report.add('note-of-nothing', authored.doc.place([part, name]), { name, near })
    }
  }
  return notes
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

/** The name under which a text has its note: its own, else the first pattern that fits. */
function nameFor(id: string, texts: Readonly<Record<string, string>>): string | null {
  if (Object.hasOwn(texts, id)) return id
  const parts = id.split(/[:.]/)
  const fits = (pattern: string) => {
    if (!pattern.includes('*')) return false
    const names = pattern.split(/[:.]/)
    return (
      names.length === parts.length &&
      names.every((name, index) => name === '*' || name === parts[index])
    )
  }
  return Object.keys(texts).find(fits) ?? null
}

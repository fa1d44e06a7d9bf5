import { type ReviewState, reviewState } from '../translation/ledger.ts'
import { SOURCE_TAG } from './check-words.ts'
import type { AuthoredProject } from './project.ts'
import type { FindingReport } from './report.ts'
import { textsIn } from './texts.ts'
import { translatedKeys } from './translated-keys.ts'

/** A translated text and where it stands. */
export interface TranslatedText {
  /** The file's name, a colon and the key, as the glossary and the ledger name it. */
  readonly id: string
  readonly english: string
  readonly target: string
  readonly state: ReviewState
  /** The day on which it was last reviewed, whatever became of it since; null where nobody has. */
  readonly reviewedOn: string | null
}

/** By language tag, every translated text with its state, in the order of the files. */
export async function translatedTexts(
  project: AuthoredProject,
  report: FindingReport
): Promise<Readonly<Record<string, readonly TranslatedText[]>>> {
  const source = project.words.get(SOURCE_TAG)
  const all: Record<string, readonly TranslatedText[]> = {}
  for (const [tag, files] of project.words) {
    if (tag === SOURCE_TAG) continue
    const ledger = project.reviews.get(tag)
    const texts = [...files].flatMap(([stem, { value }]) => {
      const english = textsIn(source?.get(stem)?.value)
      const wanted = translatedKeys(tag, english.keys())
      return [...textsIn(value)].flatMap(([key, target]) => {
        const said = english.get(wanted.get(key) ?? '')
        return said === undefined ? [] : [{ id: `${stem}:${key}`, english: said, target }]
      })
    })
    all[tag] = await Promise.all(
      texts.map(async text => {
        const entry = ledger?.value[text.id]
        const state = await reviewState(entry, text)
        return { ...text, state, reviewedOn: entry?.on ?? null }
      })
    )
    const names = new Set(texts.map(({ id }) => id))
    for (const id of Object.keys(ledger?.value ?? {})) {
      if (names.has(id)) continue
      report.add('review-of-nothing', ledger?.doc.place([id]) ?? null, {
        text: id,
        near: report.near(id, names)
      })
    }
  }
  return all
}

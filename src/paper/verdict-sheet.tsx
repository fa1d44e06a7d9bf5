import { renderToString } from 'preact-render-to-string'
import { generalOutcome } from '../addresses/outcome-address.ts'
import { sheetAddress } from '../addresses/sheet-address.ts'
import type { OfficePack } from '../office/office-pack.ts'
import { speechIn, type TextsByTag } from '../opening/speech.ts'
import { type Setting, SettingProvider } from '../parts/setting.tsx'
import { Sheet } from '../parts/sheet.tsx'
import { reportOf } from '../report/report.ts'
import type { KnowHow } from '../tree/know-how.ts'
import type { Rule, Tree } from '../tree/tree.ts'
import type { SourceLedger } from '../words/sources.ts'
import { verdictText } from '../words/verdict-text.ts'
import { type Paper, type Print, paperPage } from './paper-page.ts'

/** What every sheet is made of. */
export interface SheetOf {
  readonly tree: Tree
  readonly language: string
  readonly texts: TextsByTag
  readonly sources: SourceLedger
  readonly office: OfficePack | null
  /** The address that stands on it and in its QR code, ending in a slash. */
  readonly home: string
  readonly today: Date
  readonly paper: Paper
  readonly print: Print
  readonly pictures: Setting['pictures']
  readonly lookAlikes: Setting['lookAlikes']
  /** Answers to how-to questions, and by tree the rules by which it allows what they allow. */
  readonly knowHow: {
    readonly answers: readonly KnowHow[]
    readonly allowed: Readonly<Record<string, readonly Rule[]>>
  }
  /** The drawings, by picture id. */
  readonly drawings: Setting['drawings']
  readonly style: string
}

/** What the parts of a sheet share. */
export const settingOf = (sheet: SheetOf): Setting => ({
  ...speechIn(sheet.texts, sheet.language),
  dials: false,
  tree: sheet.tree,
  sources: sheet.sources,
  pictures: sheet.pictures,
  drawings: sheet.drawings,
  lookAlikes: sheet.lookAlikes.filter(({ trees }) => trees.includes(sheet.tree.id)),
  photoPage: null,
  office: sheet.office,
  today: sheet.today
})

/**
 * The general sheet of one verdict as a page of its own: a side for each language that counts. Its sides
 * are fitted to the paper where it is opened.
 *
 * @throws Error when the tree knows no such verdict.
 */
export function verdictSheetHtml(sheet: SheetOf, verdict: string): string {
  const { tree, language, office, home, today } = sheet
  const outcome = generalOutcome(tree, [verdict])
  if (outcome === null) throw new Error(`${tree.id} has no verdict ${verdict}`)
  const setting = settingOf(sheet)
  const body = renderToString(
    <SettingProvider value={setting}>
      <Sheet
        report={reportOf(tree, outcome, office, today)}
        general
        address={tag => sheetAddress(tree, outcome, tag, home, 'general')}
      />
    </SettingProvider>
  )
  const name = verdictText(setting.words, tree.id, verdict, 'name')
  const title = `${name} · ${setting.words.t(`${tree.id}:title`)}`
  return paperPage({ ...sheet, title, language, body })
}

import { couldBeTogether } from '../evaluate/could-be.ts'
import { decisionFiles } from '../paper/decision/sheet.tsx'
import {
  batchCardHtml,
  classSheetHtml,
  keySheetHtml,
  lookAlikeChartHtml
} from '../paper/framed-html.tsx'
import { PAPERS, type Paper, PRINTS, type Print } from '../paper/paper-page.ts'
import { type SheetOf, verdictSheetHtml } from '../paper/verdict-sheet.tsx'
import type { Tree } from '../tree/tree.ts'
import type { PageToPrint } from './print-sheets.ts'

/** A sheet with what it was made of, as the manifest lists it. */
export interface SheetToPrint extends PageToPrint {
  readonly tree: Tree
  readonly kind: SheetKind
  /** Of a verdict sheet alone. */
  readonly verdict: string | null
  readonly language: string
}

interface Kind {
  readonly papers: readonly Paper[]
  readonly prints: readonly Print[]
  /** The pages of one tree in one language, by what is put behind the kind's name. */
  pages(sheet: SheetOf, verdicts: readonly string[]): readonly NamedPage[]
}

/** What is put behind the tree's name, the page, and the drawing that goes with it. */
type NamedPage = readonly [about: string, html: string, svg?: string]

const DESK_PAPERS: readonly Paper[] = ['letter', 'a4']

/** The one page of a kind, where a tree has it. */
const one = (about: string, html: string | null): readonly NamedPage[] =>
  html === null ? [] : [[about, html]]

/** Every kind of sheet, and how it is made. */
export const SHEET_KINDS = {
  verdict: {
    papers: DESK_PAPERS,
    prints: PRINTS,
    pages: (sheet, verdicts) => verdicts.map(id => [id, verdictSheetHtml(sheet, id)])
  },
  key: { papers: DESK_PAPERS, prints: PRINTS, pages: sheet => [['key', keySheetHtml(sheet)]] },
  chart: {
    papers: PAPERS,
    // Its boxes would not fit their paper: the key says the same in large print.
    prints: ['standard'],
    pages: sheet => {
      const { html, svg } = decisionFiles(sheet)
      return [['chart', html, svg]]
    }
  },
  'look-alikes': {
    papers: PAPERS,
    prints: PRINTS,
    pages: sheet => one('look-alikes', lookAlikeChartHtml(sheet))
  },
  batch: {
    papers: DESK_PAPERS,
    prints: PRINTS,
    pages: sheet => one('batch', batchCardHtml(sheet))
  },
  class: {
    papers: DESK_PAPERS,
    prints: PRINTS,
    pages: sheet => one('class', classSheetHtml(sheet))
  }
} as const satisfies Readonly<Record<string, Kind>>

export type SheetKind = keyof typeof SHEET_KINDS

/** The sheets of one kind of one tree in one language. */
export function sheetsToPrint(
  kind: SheetKind,
  sheet: SheetOf,
  verdicts: readonly string[]
): readonly SheetToPrint[] {
  const { tree, language, paper, print } = sheet
  const ending = [language, paper, ...(print === 'large' ? ['large'] : [])].join('-')
  const { pages }: Kind = SHEET_KINDS[kind]
  return pages(sheet, verdicts).map(([about, html, svg = null]) => ({
    name: `${tree.id}-${about}-${ending}`,
    html,
    svg,
    tree,
    kind,
    verdict: kind === 'verdict' ? about : null,
    language
  }))
}

/** The verdicts of a tree that there is something to hand out of: some answers come to them. */
export const verdictsToHandOut = (tree: Tree): readonly string[] =>
  tree.verdicts.map(({ id }) => id).filter(id => couldBeTogether(tree, [id]))

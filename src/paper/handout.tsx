import { renderToString } from 'preact-render-to-string'
import { generalOutcome } from '../addresses/outcome-address.ts'
import { sheetAddress } from '../addresses/sheet-address.ts'
import type { OfficePack } from '../office/office-pack.ts'
import { speechIn, type TextsByTag } from '../opening/speech.ts'
import { tellOf } from '../parts/said-twice.ts'
import { type Setting, SettingProvider } from '../parts/setting.tsx'
import { Sheet } from '../parts/sheet.tsx'
import { reportOf } from '../report/report.ts'
import type { Tree } from '../tree/tree.ts'
import { directionOf } from '../words/languages.ts'
import type { SourceLedger } from '../words/sources.ts'

/** The papers that a handout is made for, as CSS names them. */
export const PAPERS = ['letter', 'a4'] as const
export type Paper = (typeof PAPERS)[number]

/** What a handout is made of. */
export interface HandoutOf {
  readonly tree: Tree
  readonly verdict: string
  readonly language: string
  readonly texts: TextsByTag
  readonly sources: SourceLedger
  readonly office: OfficePack | null
  /** The address that stands on it and in its QR code, ending in a slash. */
  readonly home: string
  readonly today: Date
  readonly paper: Paper
  readonly pictures: Setting['pictures']
  readonly lookAlikes: Setting['lookAlikes']
  /** The drawings, by picture id. */
  readonly drawings: Setting['drawings']
  /** The style sheets, with the typefaces in them: a handout asks for no other file. */
  readonly style: string
}

/**
 * The general sheet of one verdict as a whole HTML page that needs no other file; `size` is the type
 * with which it fits on one side, in points, once that is known.
 *
 * @throws Error when the tree knows no such verdict.
 */
export function handoutHtml(handout: HandoutOf, size?: number): string {
  const { tree, verdict, language, texts, sources, office, home, today, paper, style } = handout
  const { pictures, drawings, lookAlikes } = handout
  const outcome = generalOutcome(tree, [verdict])
  if (outcome === null) throw new Error(`${tree.id} has no verdict ${verdict}`)
  const setting = {
    ...speechIn(texts, language),
    dials: false,
    tree,
    sources,
    pictures,
    drawings,
    lookAlikes: lookAlikes.filter(({ trees }) => trees.includes(tree.id)),
    photoPage: null,
    office,
    today
  }
  const sentences = tellOf(setting, reportOf(tree, outcome, office, today))
  const sheet = renderToString(
    <SettingProvider value={setting}>
      <Sheet
        {...sentences}
        general
        address={sheetAddress(tree, outcome, language, home, 'general')}
        {...(size !== undefined && { size })}
      />
    </SettingProvider>
  )
  const title = `${sentences.said.verdicts[0]?.name} · ${setting.words.t(`${tree.id}:title`)}`
  return `<!doctype html>
<html lang="${language}" dir="${directionOf(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>
${style}
@page { size: ${paper}; }
@media screen {
  body { padding: 1rem; background: #ddd; }
  .sheet { display: flex; box-sizing: content-box; margin: auto; padding: 0.35in; }
}
</style>
</head>
<body>${sheet}</body>
</html>
`
}

const escaped = (text: string) => text.replace(/[&<>]/g, sign => `&#${sign.charCodeAt(0)};`)

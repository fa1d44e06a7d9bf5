import { directionOf } from '../words/direction.ts'

/** The papers that sheets are made for, as CSS names them: ANSI/ASME Y14.1 and ISO 216. */
export const PAPERS = ['letter', 'a4', 'tabloid', 'a3'] as const
export type Paper = (typeof PAPERS)[number]

/** Standard print is 12 points and more on as few pages as that takes; large print 18 points and more. */
export const PRINTS = ['standard', 'large'] as const
export type Print = (typeof PRINTS)[number]

/** What a page for a printer is made of. */
export interface PaperPage {
  readonly title: string
  readonly language: string
  readonly paper: Paper
  readonly print: Print
  /** The style sheets, with the typefaces in them: a page asks for no other file. */
  readonly style: string
  /** HTML. */
  readonly body: string
}

/** How CSS paged media names them: of the larger ones it knows A3 alone by a name of its own. */
const CSS_SIZES: Readonly<Record<Paper, string>> = {
  letter: 'letter',
  a4: 'A4',
  tabloid: 'ledger portrait',
  a3: 'A3'
}

/** A whole HTML page that needs no other file: printed it is the sheet, on a screen its preview. */
export function paperPage({ title, language, paper, print, style, body }: PaperPage): string {
  return `<!doctype html>
<html lang="${language}" dir="${directionOf(language)}" data-print="${print}" data-paper="${paper}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>
${style}
@page { size: ${CSS_SIZES[paper]}; }
</style>
</head>
<body class="paper">${body}</body>
</html>
`
}

/** A text as it stands in HTML and XML. */
export const escaped = (text: string) => text.replace(/[&<>]/g, sign => `&#${sign.charCodeAt(0)};`)

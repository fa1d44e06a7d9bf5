import base from '../../style/base.css?inline'
import embed from '../../style/embed.css?inline'
import question from '../../style/question.css?inline'

const REM = '--jarside-rem'
let sheet: CSSStyleSheet | undefined

/** Whether this browser can do all that the embed needs; where it cannot, the page's own words stay. */
export const canShow = (): boolean =>
  'adoptedStyleSheets' in Document.prototype && CSS.supports('container-type', 'inline-size')

/** The style of a first question, one for all elements of a page. */
export function firstStyle(): CSSStyleSheet {
  register()
  sheet ??= styleOf(embed + base + question)
  return sheet
}

/** A style that needs no inline style in the page, which strict policies forbid. */
export function styleOf(text: string): CSSStyleSheet {
  const sheet = new CSSStyleSheet()
  sheet.replaceSync(text)
  return sheet
}

/** As a length it is worked out once, where it is set, and means the same in small print and in headings. */
function register(): void {
  try {
    CSS.registerProperty({ name: REM, syntax: '<length>', inherits: true, initialValue: '18px' })
  } catch {
    // Known already, from another copy of the script; or not at all, and then it goes by the text around.
  }
}

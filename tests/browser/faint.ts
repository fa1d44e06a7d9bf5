/**
 * What of a page in print would be lost in gray, or on a photocopy of a photocopy: texts with less contrast
 * than 4.5:1 to what is behind them (WCAG 2.2, 1.4.3), the borders of a card, a signal word or a table with
 * as little, and fills that are neither white nor nearly black, since a copier turns those into either.
 *
 * It uses nothing from around it, so that its text can be sent into a page.
 */
export function faintOn(): readonly string[] {
  const LEAST = 4.5
  const DARK = 0.05
  const BORDERED = '.verdict, .edge, .signal, .leads-sheets, .card-readings td, .card-fields dd'
  /** Relative luminance (WCAG 2.2), which is what gray leaves of a color; null where nothing is painted. */
  const luminance = (color: string): number | null => {
    const [red = 0, green = 0, blue = 0, alpha = 1] = (color.match(/[\d.]+/g) ?? []).map(Number)
    if (alpha === 0 || color === 'none') return null
    const [r = 0, g = 0, b = 0] = [red, green, blue].map(value =>
      value <= 10.31 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4
    )
    return 0.2126 * r + 0.7152 * g + 0.0722 * b
  }
  const contrast = (one: number, other: number) =>
    (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05)
  const behind = (element: Element | null): number => {
    if (element === null) return 1
    return luminance(getComputedStyle(element).backgroundColor) ?? behind(element.parentElement)
  }
  const isText = (element: Element) =>
    [...element.childNodes].some(
      ({ nodeType, textContent }) => nodeType === 3 && textContent?.trim()
    )
  return [...document.querySelectorAll('body *')].flatMap(element => {
    const style = getComputedStyle(element)
    if (style.display === 'none') return []
    const named = `${element.tagName}.${element.getAttribute('class')}`
    const faint: string[] = []
    const ink = luminance(element instanceof SVGElement ? style.fill : style.color) ?? 1
    if (isText(element) && contrast(ink, behind(element)) < LEAST) faint.push(`text ${named}`)
    const fill = luminance(style.backgroundColor)
    if (fill !== null && fill < 1 && fill > DARK) faint.push(`fill ${named}`)
    if (element.matches(BORDERED)) {
      for (const side of ['top', 'right', 'bottom', 'left']) {
        if (style.getPropertyValue(`border-${side}-width`) === '0px') continue
        const line = luminance(style.getPropertyValue(`border-${side}-color`)) ?? 1
        if (contrast(line, 1) < LEAST) faint.push(`border ${named}`)
      }
    }
    return faint
  })
}

/** The types that a sheet may be set in, in points: below the smallest nobody reads it at a counter. */
export const SHEET_TYPE = { largest: 15, smallest: 7.25, step: 0.25 }

/**
 * Sets a sheet in the largest type with which it stays on one side, and gives that size in points.
 * Text that fits at no size spills to a second side: nothing is ever cut off.
 *
 * It uses nothing from around it and names no function inside, so that its text can be sent into a page.
 */
export function fitSheet(
  sheet: HTMLElement | SVGElement,
  { largest, smallest, step }: typeof SHEET_TYPE
): { readonly size: number; readonly fitted: boolean } {
  const columns = sheet.querySelector('.sheet-columns')
  sheet.removeAttribute('data-long')
  sheet.setAttribute('data-fitting', '')
  let size = largest
  let fitted = false
  // Where the smallest type does not do, the drawings make room before a second side is begun.
  for (const tight of [false, true]) {
    if (fitted) break
    sheet.toggleAttribute('data-tight', tight)
    size = (tight ? smallest : largest) + step
    while (!fitted && size > smallest) {
      size -= step
      sheet.style.setProperty('--sheet-size', `${size}pt`)
      fitted =
        sheet.scrollHeight <= sheet.clientHeight + 1 &&
        (columns === null || columns.scrollWidth <= columns.clientWidth + 1)
    }
  }
  sheet.removeAttribute('data-fitting')
  sheet.toggleAttribute('data-long', !fitted)
  return { size, fitted }
}

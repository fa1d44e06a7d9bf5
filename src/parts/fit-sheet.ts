/**
 * The types that a side may be set in, in points. Twelve is the least that is read at a kitchen table
 * (clear-print guidance, common practice): what does not fit in it leaves the side.
 */
export const SHEET_TYPE = { largest: 15, smallest: 12, step: 0.5 }

/** How one side came out. */
export interface FittedSide {
  /** In points. */
  readonly size: number
  /** False where it takes a second page all the same. */
  readonly fitted: boolean
  /** How many parts left it. */
  readonly left: number
}

/**
 * Sets a side in the largest type with which it stays on one page. In the smallest its parts marked
 * `data-room="explains"` leave, the last first; then its lines and drawings close up; then every part with
 * a `data-room` leaves, and the side says that there is more. One that still does not fit takes a second
 * page, whole: nothing is ever cut off.
 *
 * It uses nothing from around it and names no function inside, so that its text can be sent into a page.
 */
export function fitSheet(
  side: HTMLElement | SVGElement,
  { largest, smallest, step }: typeof SHEET_TYPE
): FittedSide {
  const columns = side.querySelector('.sheet-columns')
  const optional = [...side.querySelectorAll<HTMLElement>('[data-room]')].reverse()
  const tries: { size: number; tight: boolean; left: number }[] = []
  for (let size = largest; size >= smallest; size -= step) {
    tries.push({ size, tight: false, left: 0 })
  }
  // What only explains leaves before the lines close up; a caution leaves after.
  const explaining = optional.filter(part => part.dataset.room === 'explains').length
  for (let left = 1; left <= explaining; left += 1) {
    tries.push({ size: smallest, tight: false, left })
  }
  for (let left = explaining; left <= optional.length; left += 1) {
    tries.push({ size: smallest, tight: true, left })
  }
  // The last stands where nothing fits: all of it, on two pages.
  tries.push({ size: smallest, tight: false, left: 0 })
  side.removeAttribute('data-long')
  side.setAttribute('data-fitting', '')
  let fitted = false
  let set = { size: largest, tight: false, left: 0 }
  for (const next of tries) {
    if (fitted) break
    set = next
    side.style.setProperty('--sheet-size', `${set.size}pt`)
    side.toggleAttribute('data-tight', set.tight)
    for (const [index, part] of optional.entries()) part.hidden = index < set.left
    // What left says which line the side gives for it.
    const last = optional[set.left - 1]
    if (last === undefined) side.removeAttribute('data-short')
    else side.setAttribute('data-short', last.dataset.room ?? '')
    fitted =
      // Letters reach a little below their lines.
      side.scrollHeight <= side.clientHeight + 4 &&
      (columns === null || columns.scrollWidth <= columns.clientWidth + 1)
  }
  side.removeAttribute('data-fitting')
  side.toggleAttribute('data-long', !fitted)
  return { size: set.size, left: set.left, fitted }
}

/**
 * Runs in the page: every text that can be seen there, the part of it that is in sight without scrolling,
 * and how many screens the whole is high. What is folded, hidden, or for the ear alone is not seen.
 */
export function seen() {
  const host = document.querySelector('jarside-walk')
  const root = host?.shadowRoot ?? document.body
  const texts = []
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT)
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const element = node.parentElement
    if (element === null || node.data.trim() === '' || !isSeen(element)) continue
    texts.push({
      text: node.data,
      inSight: tokensInSight(node),
      part: partOf(element),
      // Beside it stands the same in the language of the caller.
      doubled: element.closest('.first') !== null
    })
  }
  const height = host?.getBoundingClientRect().height ?? document.documentElement.scrollHeight
  const along = root.querySelector('[data-along]')?.getAttribute('data-along') ?? null
  return { texts, along, screens: Math.max(1, height / innerHeight) }

  function isSeen(element) {
    if (element.closest('.visually-hidden, .key, select, script, style, noscript')) return false
    return element.checkVisibility({ opacityProperty: true, visibilityProperty: true })
  }

  function tokensInSight(node) {
    const range = document.createRange()
    const clips = clipsOf(node.parentElement)
    return [...node.data.matchAll(/\S+/g)]
      .filter(({ index, 0: token }) => {
        range.setStart(node, index)
        range.setEnd(node, index + token.length)
        const box = range.getBoundingClientRect()
        const isIn = clips.every(([from, to]) => box.top >= from && box.bottom <= to)
        return box.width > 0 && isIn && !isCovered(node.parentElement, box)
      })
      .map(([token]) => token)
      .join(' ')
  }

  /** The heights between which an element's text shows: the window, and whatever scrolls around it. */
  function clipsOf(element) {
    const clips = [[0, innerHeight]]
    for (let around = element; around instanceof Element; around = around.parentElement) {
      if (!/auto|scroll|hidden|clip/.test(getComputedStyle(around).overflowY)) continue
      const { top, bottom } = around.getBoundingClientRect()
      if (bottom > top) clips.push([top - 1, bottom + 1])
    }
    return clips
  }

  /** Whether a bar that stays in its place while the rest scrolls lies over a text. */
  function isCovered(element, { left, right, top, bottom }) {
    let over = (root.elementFromPoint ? root : document).elementFromPoint(
      (left + right) / 2,
      (top + bottom) / 2
    )
    for (; over instanceof Element; over = over.parentElement) {
      if (over.contains(element)) return false
      if (/sticky|fixed/.test(getComputedStyle(over).position)) return true
    }
    return false
  }

  function partOf(element) {
    const within = selector => element.closest(selector) !== null
    if (within('.masthead, .foot, .string')) return 'frame'
    if (within('.emergency') && !within('button')) return 'card'
    // Nobody reads to a caller what the caller said was seen.
    if (within('.calls, .seen')) return 'rest'
    if (within('.at-once, .outcome > .verdict:first-child')) return 'card'
    if (!within('.question') || within('.card-box-unsure, .actions')) return 'rest'
    // Where answers are keys nobody reads their names to the caller.
    if (within('.desk .cards')) return 'rest'
    if (
      within(
        '.step-heading, .sweep-along > h2, .question-how, .sweep-line, .sign-name, .card-label'
      )
    )
      return 'asked'
    return within('.sign-hint, .card-hint') ? 'small-print' : 'rest'
  }
}

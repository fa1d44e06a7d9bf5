import type { Page } from 'playwright-core'

/** Whether the page scrolls sideways, and which elements reach past its sides. */
export const spilling = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement
    const past = [...document.querySelectorAll('body *')].filter(one => {
      // The string of answers and the head scroll by themselves, and what is for the ear alone has no place.
      if (one.closest('.string ol, .masthead-moves, .visually-hidden, svg')) return false
      const { left, right, width } = one.getBoundingClientRect()
      return width > 0 && (right > clientWidth + 0.5 || left < -0.5)
    })
    const spilt = past.map(one => `${one.tagName}.${one.className} reaches past the side`)
    return scrollWidth > clientWidth ? [`scrolls to ${scrollWidth}`, ...spilt] : spilt
  })

/** Texts of which a part lies outside the box that shows them. */
export const cutOff = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const cut: string[] = []
    const hides = (one: Element) => {
      const { overflowX, overflowY } = getComputedStyle(one)
      return [overflowX, overflowY].some(value => value === 'hidden' || value === 'clip')
    }
    while (texts.nextNode()) {
      const text = texts.currentNode
      const parent = text.parentElement
      if (!parent || !text.textContent?.trim() || parent.closest('.visually-hidden, svg')) continue
      // What is folded has no box; whoever wants it looked at opens it first.
      if (!parent.checkVisibility()) continue
      const range = document.createRange()
      range.selectNodeContents(text)
      const words = range.getBoundingClientRect()
      for (let box: Element | null = parent; box; box = box.parentElement) {
        if (!hides(box)) continue
        const shown = box.getBoundingClientRect()
        const outside = [
          shown.left - words.left,
          words.right - shown.right,
          shown.top - words.top,
          words.bottom - shown.bottom
        ]
        if (words.width > 0 && Math.max(...outside) > 1) cut.push(text.textContent.slice(0, 60))
      }
    }
    return cut
  })

/** What can be pressed on less than 24 by 24 pixels (WCAG 2.5.8); a field counts with its label. */
export const smallTargets = (page: Page): Promise<readonly string[]> =>
  page.locator('a[href], button, summary, input').evaluateAll(targets =>
    targets
      .map(target => ({ target, box: (target.closest('label') ?? target).getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
      .map(({ target, box }) => `${target.outerHTML.slice(0, 80)} ${box.width}×${box.height}`)
  )

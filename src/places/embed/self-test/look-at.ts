import type { SiteFacts } from './facts.ts'

/** What an element shows by now. */
export function shownIn(element: Element): SiteFacts['element']['shows'] {
  const room = element.shadowRoot
  if (room?.querySelector('.question')) return 'question'
  return room?.querySelector('.trouble') ? 'trouble' : 'nothing'
}

/** Whether an element's own style sheets are in force: nothing else gives its box a size of this kind. */
export function inForce(element: Element): boolean {
  const inside = element.shadowRoot?.querySelector('.embed')
  if (!inside) return false
  const size = getComputedStyle(inside).getPropertyValue('contain-intrinsic-inline-size')
  return size !== '' && size !== 'none'
}

/** The element in a frame; null where the frame shows something else, or may not be looked into. */
export function framed(frame: HTMLIFrameElement): Element | null {
  try {
    return frame.contentDocument?.querySelector('jarside-walk') ?? null
  } catch {
    return null
  }
}

/** Less room than this shows nothing of a question, in CSS pixels. */
const SLIVER = 60

/** How an element stands in its page. */
export function boxIn(element: Element): NonNullable<SiteFacts['theme']> {
  const { width, height } = element.getBoundingClientRect()
  const inside = element.shadowRoot?.querySelector<HTMLElement>('.embed')
  const size = inside ? Number.parseFloat(getComputedStyle(inside).fontSize) : 0
  // A page may scale what it cannot style.
  const wide = inside?.offsetWidth ?? 0
  const scale = inside && wide > 0 ? inside.getBoundingClientRect().width / wide : 1
  const [hiddenBy, scaledBy] = [firstBox(element, hiding), firstBox(element, scaling)]
  return { hiddenBy, scaledBy, width, height, textSize: size * scale }
}

/** The first box, from an element outward, of which a rule is told. */
function firstBox(
  element: Element,
  ruleOf: (box: Element, style: CSSStyleDeclaration) => string | null
): { box: string; rule: string } | null {
  for (let box: Element | null = element; box !== null; box = around(box)) {
    const rule = ruleOf(box, getComputedStyle(box))
    if (rule !== null) return { box: selectorOf(box), rule }
  }
  return null
}

function hiding(box: Element, style: CSSStyleDeclaration): string | null {
  if (style.display === 'none') return 'display: none'
  if (isFirstHidden(box, style)) return 'visibility: hidden'
  if (Number(style.opacity) < 0.05) return 'opacity: 0'
  const clips = style.overflow !== 'visible' && box !== document.documentElement
  return clips && isSliver(box) ? 'overflow: hidden' : null
}

function scaling(_: Element, style: CSSStyleDeclaration): string | null {
  const rules = [
    ['zoom', '1'],
    ['scale', 'none'],
    ['transform', 'none']
  ] as const
  const [rule] = rules.filter(([name, usual]) => {
    const value = style.getPropertyValue(name)
    return value !== '' && value !== usual
  })
  return rule === undefined ? null : `${rule[0]}: ${style.getPropertyValue(rule[0])}`
}

/** What hides is the outermost box that is hidden: those within it inherit that. */
const isFirstHidden = (box: Element, { visibility }: CSSStyleDeclaration) => {
  const outer = around(box)
  return (
    visibility !== 'visible' &&
    (outer === null || getComputedStyle(outer).visibility !== visibility)
  )
}

const isSliver = (box: Element) => box.clientHeight < SLIVER || box.clientWidth < SLIVER

/** The next box outward, out of every shadow root. */
function around(box: Element): Element | null {
  if (box.parentElement) return box.parentElement
  const root = box.getRootNode()
  return root instanceof ShadowRoot ? root.host : null
}

/** A box as a style sheet names it. */
function selectorOf(box: Element): string {
  if (box.id !== '') return `#${CSS.escape(box.id)}`
  return [box.localName, ...[...box.classList].map(name => CSS.escape(name))].join('.')
}

import catalogue from 'virtual:jarside/embed'
import { render } from 'preact'
import { Boundary } from '../../last-resort/boundary.tsx'
import { type Language, preferred } from '../../words/languages.ts'
import { Embed } from './embed.tsx'
import { filesOf, helpLanguage } from './embed-files.ts'
import { NoScreen } from './no-screen.tsx'
import { canShow, firstStyle } from './style.ts'
import { Surround } from './surround.tsx'

const NAME = 'jarside-walk'

/** Everything that a press, a touch or a key sets off. */
const KEPT = [
  ...['click', 'dblclick', 'auxclick', 'contextmenu', 'input', 'beforeinput', 'change', 'submit'],
  ...['keydown', 'keyup', 'keypress', 'mousedown', 'mouseup', 'pointerdown', 'pointerup'],
  ...['touchstart', 'touchend', 'copy', 'cut', 'paste', 'selectstart']
]

/** `<jarside-walk tree="…" lang="…">`: the questions of one tree in somebody else's page. */
class JarsideWalk extends HTMLElement {
  static readonly observedAttributes = ['tree', 'lang']
  #due = false
  /** Counts the openings: each is a walk of its own. */
  #opening = 0

  connectedCallback() {
    this.#open()
  }

  disconnectedCallback() {
    if (this.shadowRoot) render(null, this.shadowRoot)
  }

  attributeChangedCallback(_: string, before: string | null, after: string | null) {
    if (before !== after) this.#open()
  }

  /** Once for everything that changes at the same time. */
  #open() {
    if (this.#due) return
    this.#due = true
    queueMicrotask(() => {
      this.#due = false
      if (this.isConnected) this.#show()
    })
  }

  #enclose() {
    const root = this.attachShadow({ mode: 'open' })
    for (const happening of KEPT) root.addEventListener(happening, keep)
    return root
  }

  #show() {
    const tree = this.getAttribute('tree') ?? ''
    const { trees, languages } = catalogue
    const files = filesOf(catalogue, tree)
    const withdrawn = catalogue.withdrawn.includes(tree)
    if (files === undefined && !withdrawn) {
      console.warn(
        `<${NAME} tree="${tree}">: there is no such tree. Write one of these in \`tree\`: ${trees.join(', ')}.`
      )
    }
    const root = this.shadowRoot ?? this.#enclose()
    root.adoptedStyleSheets = [firstStyle()]
    this.#opening += 1
    const language = languageOf(this, languages)
    const help = helpLanguage(catalogue, language)
    render(
      <Boundary
        key={this.#opening}
        fallback={
          <Surround tag={help} title={null}>
            <NoScreen texts={catalogue.help[help]} />
          </Surround>
        }
      >
        <Embed catalogue={catalogue} files={files} withdrawn={withdrawn} language={language} />
      </Boundary>,
      root
    )
  }
}

/** The page's own scripts are told of no press and no letter. */
const keep = (event: Event) => event.stopPropagation()

/** The language of an element: its own, else the closest in the page around it, else the reader's. */
function languageOf(element: Element, languages: readonly Language[]): string {
  const said = saidAround(element)
  return preferred(languages, said === null ? navigator.languages : [said])
}

/** The closest `lang`, out of every shadow root; an empty one says that nobody knows. */
function saidAround(element: Element): string | null {
  for (let node: globalThis.Node | null = element; node !== null; node = above(node)) {
    const lang = node instanceof Element ? node.getAttribute('lang')?.trim() : undefined
    if (lang) return lang
  }
  return null
}

const above = (node: globalThis.Node) => (node instanceof ShadowRoot ? node.host : node.parentNode)

// A browser that cannot do it leaves the page's own words standing. Last of all: an element that is in the
// page already begins at once.
if (canShow() && customElements.get(NAME) === undefined) customElements.define(NAME, JarsideWalk)

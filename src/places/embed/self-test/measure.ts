import type { ServerAnswer, SiteFacts, Violation } from './facts.ts'
import { boxIn, framed, inForce, shownIn } from './look-at.ts'

/** The folder that this script came from. */
const OWN_FOLDER = new URL(/* @vite-ignore */ '.', import.meta.url)
const NAME = 'jarside-walk'
/** How long a first question is waited for, in seconds: longer than a slow network needs. */
const PATIENCE = 15

/** Where the three forms are put to be looked at. */
export interface TrialRoom {
  /** In the page itself, under its style; used where the page has no element of its own. */
  readonly inPage: Element
  /** Apart from the page's style. */
  readonly apart: Element
}

/** Everything of ours that the page's policies refuse from now on. */
export function violationsFrom(now: Document): Violation[] {
  const seen: Violation[] = []
  now.addEventListener('securitypolicyviolation', event => {
    const { effectiveDirective, blockedURI, originalPolicy, disposition } = event
    // What is reported alone breaks nothing.
    if (disposition !== 'enforce') return
    seen.push({ directive: effectiveDirective, blocked: blockedURI, policy: originalPolicy })
  })
  return seen
}

/** Tries everything on the page that this script is in, one after another. */
export async function measureSite(
  room: TrialRoom,
  tree: string,
  violations: readonly Violation[]
): Promise<SiteFacts> {
  const line = document.querySelector<HTMLScriptElement>(`script[src*="${NAME}.js"]`)
  const address = line?.src || new URL(`${NAME}.js`, OWN_FOLDER).href
  const folder = new URL('.', address)
  const byLine = customElements.get(NAME) !== undefined
  const ran = byLine || (await isRun(address))
  const defined = customElements.get(NAME) !== undefined
  const elements = [...document.querySelectorAll(NAME)]
  const element = elements.find(one => shownIn(one) !== 'question') ?? elements[0]
  const tried = element ?? trialElement(room, tree)
  const shows = defined ? await question(tried) : 'nothing'
  const office = await answerFor(new URL('office.json', folder))
  const frame = await tryFrame(room, folder, tree)
  const plain = await tryPlain(room, new URL('plain/', folder))
  return {
    origin: location.origin,
    filesOrigin: folder.origin,
    script: {
      answer: (await answerFor(new URL(address)))?.answer ?? null,
      line: line === null ? 'none' : line.type === 'module' ? 'fits' : 'no-module',
      byLine,
      ran,
      address: line?.getAttribute('src') ?? address
    },
    integrity: line?.integrity ? await fitting(line) : null,
    element: {
      defined,
      ableBrowser:
        'adoptedStyleSheets' in Document.prototype && CSS.supports('container-type', 'inline-size'),
      shows,
      styled: inForce(tried),
      waited: PATIENCE
    },
    office: { answer: office?.answer ?? null, isPack: isPack(office?.text) },
    frame,
    plain,
    theme: shows === 'nothing' ? null : boxIn(tried),
    trustedTypes: isTextRefused(),
    // Last: a policy tells of what it refuses a moment later.
    violations: await ours(violations, folder)
  }
}

function trialElement({ inPage }: TrialRoom, tree: string): Element {
  const element = document.createElement(NAME)
  element.setAttribute('tree', tree)
  inPage.append(element)
  return element
}

/** Whether the script runs when it is asked for by another name: a browser remembers what failed. */
async function isRun(address: string): Promise<boolean> {
  const again = new URL(address)
  again.searchParams.set('self-test', '')
  try {
    await import(/* @vite-ignore */ again.href)
    return true
  } catch {
    return false
  }
}

const seconds = (count: number) => new Promise<void>(go => setTimeout(go, count * 1000))

/** Waits until an element shows a question, or says why not. */
async function question(element: Element): Promise<SiteFacts['element']['shows']> {
  // An element is filled once its own turn has come.
  await seconds(0)
  const shown = new Promise<void>(go => {
    const look = () => shownIn(element) !== 'nothing' && go()
    const room = element.shadowRoot
    if (room) new MutationObserver(look).observe(room, { childList: true, subtree: true })
    look()
  })
  await Promise.race([shown, seconds(PATIENCE)])
  return shownIn(element)
}

async function answerFor(address: URL): Promise<{ answer: ServerAnswer; text: string } | null> {
  try {
    const response = await fetch(address, { cache: 'no-store' })
    const { headers, status } = response
    const [kind = ''] = (headers.get('content-type') ?? '').split(';')
    const answer = {
      status,
      kind: kind.trim().toLowerCase(),
      headers: {
        'x-frame-options': headers.get('x-frame-options') ?? '',
        'content-security-policy': headers.get('content-security-policy') ?? ''
      }
    }
    return { answer, text: await response.text() }
  } catch {
    return null
  }
}

function isPack(text: string | undefined): boolean {
  try {
    const file: unknown = JSON.parse(text ?? '')
    return typeof file === 'object' && file !== null && 'office' in file && 'country' in file
  } catch {
    return false
  }
}

async function tryFrame({ apart }: TrialRoom, folder: URL, tree: string) {
  const own = document.querySelector<HTMLIFrameElement>('iframe[src*="frame.html"]')
  const address = new URL(own?.src ?? 'frame.html', folder)
  if (own === null) address.searchParams.set('tree', tree)
  const frame = document.createElement('iframe')
  frame.title = NAME
  const loaded = new Promise(done => frame.addEventListener('load', done, { once: true }))
  frame.src = address.href
  apart.append(frame)
  await Promise.race([loaded, seconds(PATIENCE)])
  const answer = (await answerFor(address))?.answer ?? null
  if (address.origin !== location.origin) return { answer, inside: 'unseen' as const }
  const inside = framed(frame)
  if (inside === null) return { answer, inside: 'empty' as const }
  const shows = await question(inside)
  return { answer, inside: shows === 'question' ? ('question' as const) : ('no-question' as const) }
}

async function tryPlain({ apart }: TrialRoom, folder: URL): Promise<SiteFacts['plain']> {
  const address = new URL('index.html', folder).href
  const answer = (await answerFor(new URL(address)))?.answer ?? null
  // Beneath a root of its own the style sheet styles nothing but this box.
  const box = document.createElement('div')
  const style = document.createElement('link')
  style.rel = 'stylesheet'
  const came = new Promise<boolean>(done => {
    style.addEventListener('load', () => done(true))
    style.addEventListener('error', () => done(false))
  })
  style.href = new URL('plain.css', folder).href
  box.attachShadow({ mode: 'open' }).append(style)
  apart.append(box)
  return { answer, styled: await came, address }
}

/** The right value for a line with an integrity value, in the way of reckoning that it names. */
async function fitting({ integrity: written, src }: HTMLScriptElement) {
  const [, bits] = /^sha(256|384|512)-/.exec(written.trim()) ?? []
  try {
    const file = await (await fetch(src, { cache: 'no-store' })).arrayBuffer()
    const digest = await crypto.subtle.digest(`SHA-${bits ?? 384}`, file)
    const text = btoa(String.fromCharCode(...new Uint8Array(digest)))
    return { written, right: `sha${bits ?? 384}-${text}` }
  } catch {
    // Not on an encrypted page, or the file cannot be read from here.
    return { written, right: null }
  }
}

/** Whether text is refused as HTML, by a policy that wants trusted types. */
function isTextRefused(): boolean {
  try {
    document.createElement('p').innerHTML = '<b></b>'
    return false
  } catch {
    return true
  }
}

/** What was refused of our own files, and of what our own script did; the site's other troubles are its own. */
async function ours(seen: readonly Violation[], folder: URL): Promise<readonly Violation[]> {
  await seconds(0)
  return seen.filter(
    ({ blocked }) =>
      blocked === 'trusted-types-sink' ||
      blocked === folder.origin ||
      blocked.startsWith(folder.href)
  )
}

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Plugin } from 'vite'
import { numbersOf } from './src/office/constants.ts'
import { PAGES_FOLDER } from './src/office/plain-text.ts'
import { directionOf } from './src/words/direction.ts'
import { SOURCE_TAG } from './src/words/words.ts'

const root = import.meta.dirname
const WATCHDOG = join(root, 'src/last-resort/watchdog.ts')

/** What a page may load and do: nothing but this installation's own files. */
const PARTS = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'"
]

/** The policy as a page states it itself, and as a server sends it for the page that is made for frames. */
export const PAGE_POLICY = PARTS.join('; ')
/** The policy as a server sends it for every other page: a page cannot forbid its own framing from within. */
export const SERVED_POLICY = [...PARTS, "frame-ancestors 'none'"].join('; ')

const ICON = '<link rel="icon" href="./icon.svg" type="image/svg+xml">'

/** How the layer of one page differs. */
interface Layer {
  /** Whether its numbers can be pressed: a kiosk has no phone. */
  readonly dials: boolean
  /** Whether it offers to load the page once more. */
  readonly again: boolean
  /** Where the plain pages lie; null where there are none. */
  readonly plainPages: string | null
}

/** What is served and no list of bundled packages names: our own, the typefaces, what the worker is made of. */
const LICENSES: Readonly<Record<string, string>> = {
  'jarside.txt': 'LICENSE',
  'OFL-atkinson-hyperlegible-next.txt': 'src/style/fonts/OFL-atkinson-hyperlegible-next.txt',
  'OFL-literata.txt': 'src/style/fonts/OFL-literata.txt',
  'OFL-noto-sans.txt': 'src/style/fonts/OFL-noto-sans.txt',
  'OFL-noto-sans-arabic.txt': 'src/style/fonts/OFL-noto-sans-arabic.txt',
  'OFL-noto-sans-sc.txt': 'src/style/fonts/OFL-noto-sans-sc.txt',
  'workbox.txt': 'node_modules/workbox-core/LICENSE',
  'vite-plugin-pwa.txt': 'node_modules/vite-plugin-pwa/LICENSE'
}

/** Where the bundler lists the packages in the pages' scripts, with their licenses. */
export const PACKAGE_LICENSES = 'licenses/packages.md'

/** Puts the licenses of everything that is served beside it. */
export function licenses(): Plugin {
  return {
    name: 'jarside-licenses',
    generateBundle() {
      for (const [name, file] of Object.entries(LICENSES)) {
        const source = readFileSync(join(root, file), 'utf8')
        this.emitFile({ type: 'asset', fileName: `licenses/${name}`, source })
      }
    }
  }
}

/** Gives every page its head, its policy, and the layer that stands under all that a script shows. */
export function shell(): Plugin[] {
  return [
    {
      name: 'jarside-shell',
      buildStart() {
        // A file of its own, with nothing imported: it must work where the others do not.
        this.emitFile({ type: 'chunk', id: WATCHDOG, name: 'watchdog' })
      },
      transformIndexHtml: {
        order: 'pre',
        handler: html => {
          const dials = !html.includes('class="kiosk"')
          const more = [
            `<link rel="license" href="./${PACKAGE_LICENSES}">`,
            '<link rel="stylesheet" href="/src/style/last-resort.css">'
          ]
          return inShell(
            html,
            '</body>',
            lastResort({ dials, again: true, plainPages: plainPages() }),
            more
          )
        }
      }
    },
    {
      name: 'jarside-watchdog',
      transformIndexHtml: {
        order: 'post',
        handler: (html, { bundle }) => {
          const built = Object.values(bundle ?? {}).find(
            file => file.type === 'chunk' && file.facadeModuleId === WATCHDOG
          )
          if (built === undefined) throw new Error('the watchdog was not built')
          const script = `<script type="module" src="./${built.fileName}"></script>`
          // Under the policy, and before every other script.
          return html.replace(ICON, () => `${script}\n    ${ICON}`)
        }
      }
    }
  ]
}

/** The page that is made for frames: what stands between the tags of its element is the layer. */
export const framedShell = (html: string): string =>
  inShell(
    html,
    '</jarside-walk>',
    lastResort({ dials: true, again: false, plainPages: plainPages() }),
    ['<link rel="license" href="./embed/licenses.md">']
  )

/** The page of the kiosk as one file: what stands between `%` signs is put in when it is packed. */
export const singleFileShell = (): string => `<!doctype html>
<html lang="en" class="kiosk">
  <head>
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="%POLICY%">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <meta name="color-scheme" content="light dark">
    <title>Jarside</title>
    <style>%STYLE%</style>
  </head>
  <body>
    <div id="page"></div>
  ${lastResort({ dials: false, again: false, plainPages: null })}
%DATA%
    <script>%PROGRAM%</script>
  </body>
</html>
`

/** The page of the self-test has no policy of its own: the site's is what it tries. */
export function selfTestShell(html: string): string {
  const head = `
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <meta name="color-scheme" content="light dark">`
  const unscripted = textsByLanguage().flatMap(([lang, texts]) => {
    const text = texts['self-test']?.['no-script']
    return text === undefined ? [] : [`<p lang="${lang}">${escaped(text)}</p>`]
  })
  const line = `<pre>script-src 'self'</pre>`
  return html
    .replace('<head>', () => `<head>${head}`)
    .replace('\n    </main>', () => ['', ...unscripted, line, '</main>'].join('\n      '))
}

function inShell(html: string, before: string, layer: string, more: readonly string[]): string {
  const head = `
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${PAGE_POLICY}">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <meta name="color-scheme" content="light dark">
    ${[ICON, ...more].join('\n    ')}`
  return html
    .replace('<head>', () => `<head>${head}`)
    .replace(before, () => `${layer}\n  ${before}`)
}

interface LayerTexts {
  readonly 'last-resort': {
    readonly say: string
    readonly 'no-network': string
    readonly plain: string
  }
  /** For webmasters, in their languages alone. */
  readonly 'self-test'?: { readonly 'no-script': string }
  readonly embed: { readonly 'try-again': string }
  readonly referral: Readonly<Record<'emergency' | 'poison-help', { readonly name: string }>>
}

/** Whom to call, in every language, as plain HTML. */
export function lastResort({ dials, again, plainPages }: Layer): string {
  const spoken = textsByLanguage()
  const each = (of: (texts: LayerTexts) => string, tag = 'p') =>
    spoken
      .map(
        ([lang, texts]) =>
          `<${tag} lang="${lang}" dir="${directionOf(lang)}">${escaped(of(texts))}</${tag}>`
      )
      .join(' ')
  const number = (trigger: 'emergency' | 'poison-help', digits: string) => {
    const shown = dials ? `<a href="tel:${digits.replace(/\D/g, '')}">${digits}</a>` : digits
    const names = each(({ referral }) => referral[trigger].name, 'span')
    return `<li><strong>${shown}</strong> ${names}</li>`
  }
  const { emergency, poisonHelp } = numbersOf(undefined)
  return `  <section id="last-resort" class="last-resort" aria-label="Jarside">
      ${each(texts => texts['last-resort'].say)}
      <ul>${number('emergency', emergency)}${number('poison-help', poisonHelp)}</ul>${plainPages === null ? '' : plain(plainPages)}${again ? tryAgain() : ''}
    </section>`

  function plain(folder: string) {
    const link = linked(
      folder.replace(/\/?$/, '/index.html'),
      '',
      texts => texts['last-resort'].plain
    )
    // A kiosk mends itself, and wipes what a visitor told, as long as scripts run: no link leads away from that.
    return `\n      ${dials ? link : `<noscript>${link}</noscript>`}`
  }

  function tryAgain() {
    const link = linked('', ' last-resort-again', texts => texts.embed['try-again'])
    const offline = each(texts => texts['last-resort']['no-network'])
    return `\n      ${link}\n      <div class="last-resort-offline" role="status" hidden>${offline}</div>`
  }

  function linked(href: string, named: string, of: (texts: LayerTexts) => string) {
    return `<p><a href="${escaped(href)}" class="last-resort-link${named}">${each(of, 'span')}</a></p>`
  }
}

/** Where this installation says that its plain pages are; what `jarside check` refuses is no link. */
function plainPages(): string | null {
  const pack = JSON.parse(readFileSync(join(root, 'public/office.json'), 'utf8'))
  const folder: unknown = pack['plain-pages']
  return typeof folder === 'string' && PAGES_FOLDER.test(folder) ? folder : null
}

/** English first: it is what every other language is a draft of. */
function textsByLanguage(): readonly (readonly [string, LayerTexts])[] {
  const tags = readdirSync(join(root, 'locales'))
  const sorted = [SOURCE_TAG, ...tags.filter(tag => tag !== SOURCE_TAG).sort()]
  return sorted.map(tag => [
    tag,
    JSON.parse(readFileSync(join(root, 'locales', tag, 'ui.json'), 'utf8'))
  ])
}

const escaped = (text: string) => text.replace(/[&<>"]/g, sign => `&#${sign.charCodeAt(0)};`)

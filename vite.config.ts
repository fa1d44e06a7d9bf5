import { defineConfig, type Plugin } from 'vite'
import { kioskEdition, kioskWorker } from './kiosk.config.ts'
import { licenses, PACKAGE_LICENSES, PAGE_POLICY, SERVED_POLICY, shell } from './shell.config.ts'
import { type BrowserBundle, browserBundle } from './src/bundle/browser-bundle.ts'
import { frontOf } from './src/bundle/front-bundle.ts'
import { SOURCE_TAG } from './src/words/words.ts'

const NAME = 'virtual:jarside'

/** Gives the browser the proved trees as modules: the catalogue, each tree, and each tree's drawings. */
function trees(): Plugin {
  let bundle: ReturnType<typeof browserBundle> | undefined
  return {
    name: 'jarside-trees',
    // The desk opens with the first tree: it is asked for beside the script, not after that has run.
    transformIndexHtml: {
      order: 'post',
      async handler(_, { bundle: files, filename }) {
        if (!filename.endsWith('desk.html')) return []
        bundle ??= browserBundle(import.meta.dirname)
        const [first] = (await bundle).catalogue.trees
        return Object.values(files ?? {})
          .filter(
            file => file.type === 'chunk' && file.facadeModuleId === `\0${NAME}/tree/${first?.id}`
          )
          .map(file => ({
            tag: 'link',
            attrs: { rel: 'modulepreload', href: `./${file.fileName}` },
            injectTo: 'head' as const
          }))
      }
    },
    resolveId: id => (id.startsWith(NAME) ? `\0${id}` : undefined),
    async load(id) {
      if (!id.startsWith(`\0${NAME}`)) return undefined
      bundle ??= browserBundle(import.meta.dirname)
      if (id === `\0${NAME}/front`) {
        const { front, files } = frontOf(await bundle)
        for (const [fileName, source] of Object.entries(files)) {
          this.emitFile({ type: 'asset', fileName, source })
        }
        return asModule(front)
      }
      return moduleOf(await bundle, id.slice(`\0${NAME}/`.length))
    }
  }
}

function moduleOf(bundle: BrowserBundle, name: string) {
  const {
    catalogue,
    trees,
    drawings,
    screens,
    workbench,
    kiosk,
    contacts,
    lookAlikes,
    knowHow,
    practice,
    words,
    said,
    sheets
  } = bundle
  const [kind = '', tree = '', tag = ''] = name.split('/')
  switch (kind) {
    case 'tree':
      return asModule(trees[tree])
    case 'drawings':
      return asModule(drawings[tree])
    case 'words':
      return asModule(words[tree]?.[tag])
    case 'said':
      return asModule(said[tree])
    case 'sheets':
      return asModule(sheets[tree])
    case 'workbench':
      return asModule(workbench)
    case 'kiosk':
      return asModule(kiosk)
    case 'practice':
      return ['callers', 'verdicts', 'drawings', 'words']
        .map(part => asNamed(part, practice[part as keyof typeof practice]))
        .join('\n')
    case 'contacts':
      return asModule(contacts)
    case 'look-alikes':
      return ['pairs', 'drawings', 'words']
        .map(part => asNamed(part, lookAlikes[part as keyof typeof lookAlikes]))
        .join('\n')
    case 'know-how':
      return ['knowHow', 'words']
        .map(part => asNamed(part, knowHow[part as keyof typeof knowHow]))
        .join('\n')
    case 'screens':
      return asModule(screens[tree])
    default:
      return `${asModule(catalogue)}\nexport const openers = ${openersOf(catalogue)}`
  }
}

/** Everything beyond the first screen as imports that wait until they are asked for. */
function openersOf({ trees, languages }: BrowserBundle['catalogue']) {
  const open = (...parts: string[]) => `() => import('${[NAME, ...parts].join('/')}')`
  const others = languages.map(({ tag }) => tag).filter(tag => tag !== SOURCE_TAG)
  const byTag = (...parts: string[]) =>
    `{ ${others.map(tag => `${JSON.stringify(tag)}: ${open(...parts, tag)}`).join(', ')} }`
  const standing = trees.filter(({ withdrawn }) => withdrawn === null)
  const treeOpeners = standing.map(
    ({ id }) => `${JSON.stringify(id)}: {
  open: ${open('tree', id)},
  draw: ${open('drawings', id)},
  said: ${open('said', id)},
  sheets: ${open('sheets', id)},
  words: ${byTag('words', id)}
}`
  )
  return `{ trees: { ${treeOpeners.join(', ')} }, screens: ${byTag('screens')} }`
}

// A string parsed at run time is quicker to start than the same thing as a program.
const asModule = (value: unknown) =>
  `export default JSON.parse(${JSON.stringify(JSON.stringify(value))})`

const asNamed = (name: string, value: unknown) =>
  `export const ${name} = JSON.parse(${JSON.stringify(JSON.stringify(value))})`

/** Anybody may frame the page that is made for frames: it is sent without that part of the policy. */
function framedPage(): Plugin {
  return {
    name: 'jarside-framed-page',
    configurePreviewServer({ middlewares }) {
      middlewares.use('/frame.html', (_, response, next) => {
        const set = response.setHeader.bind(response)
        response.setHeader = (name, value) =>
          set(name, value === SERVED_POLICY ? PAGE_POLICY : value)
        next()
      })
    }
  }
}

export default defineConfig(({ mode }) => ({
  base: './',
  plugins: [
    ...shell(),
    licenses(),
    trees(),
    framedPage(),
    ...(mode === 'gallery' ? [] : kioskWorker())
  ],
  define: kioskEdition(),
  preview: {
    host: '127.0.0.1',
    headers: {
      'Content-Security-Policy': SERVED_POLICY,
      'Referrer-Policy': 'no-referrer',
      'X-Content-Type-Options': 'nosniff'
    }
  },
  build: {
    target: 'es2022',
    outDir: mode === 'gallery' ? '.ci/out/gallery' : 'dist',
    emptyOutDir: true,
    license: { fileName: PACKAGE_LICENSES },
    // Small files stay files: the content-security policy allows no data addresses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rollupOptions: {
      // Proving the trees takes its time: no news to whoever starts it.
      checks: { bundlerTimings: false },
      input:
        mode === 'gallery'
          ? ['gallery.html']
          : [
              ...['index.html', 'desk.html', 'kiosk.html'],
              ...[
                'workbench.html',
                'look-alikes.html',
                'how-to.html',
                'contacts.html',
                'practice.html'
              ]
            ]
    }
  }
}))

import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { defineConfig, type Plugin } from 'vite'
import { framedShell, selfTestShell } from './shell.config.ts'
import { browserBundle } from './src/bundle/browser-bundle.ts'
import { embedTrees, helpTexts, selfTestTexts } from './src/bundle/embed-bundle.ts'
import { type EmbedCatalogue, filesOf } from './src/places/embed/embed-files.ts'

const NAME = 'virtual:jarside/embed'
const SELF_TEST = 'virtual:jarside/self-test'
const root = import.meta.dirname

/** Writes the trees as files beside the script, and gives the script the names of those files. */
function trees(): Plugin {
  return {
    name: 'jarside-embed-trees',
    resolveId: id => (id === NAME ? `\0${id}` : undefined),
    async load(id) {
      if (id !== `\0${NAME}`) return undefined
      const bundle = await browserBundle(root)
      const trees = embedTrees(bundle)
      const mark = createHash('sha256').update(JSON.stringify(trees)).digest('hex').slice(0, 8)
      const { languages } = bundle.catalogue
      const catalogue: EmbedCatalogue = {
        languages,
        help: helpTexts(bundle),
        withdrawn: bundle.catalogue.trees.flatMap(({ id, withdrawn }) => (withdrawn ? [id] : [])),
        trees: Object.keys(trees),
        mark
      }
      const write = (fileName: string | undefined, content: unknown) => {
        if (fileName === undefined) throw new Error('a file of a tree has no name')
        this.emitFile({ type: 'asset', fileName, source: JSON.stringify(content) })
      }
      for (const [id, tree] of Object.entries(trees)) {
        const files = filesOf(catalogue, id)
        write(files?.whole, tree.whole)
        write(files?.drawings, tree.drawings)
        for (const { tag } of languages) {
          write(files?.first[tag], tree.first[tag])
          write(files?.words[tag], tree.words[tag])
        }
      }
      return `export default ${JSON.stringify(catalogue)}`
    }
  }
}

/** The page that shows the element alone, for a frame. */
function framePage(): Plugin {
  return {
    name: 'jarside-frame-page',
    generateBundle() {
      const source = framedShell(readFileSync(join(root, 'frame.html'), 'utf8'))
      this.emitFile({ type: 'asset', fileName: 'frame.html', source })
    }
  }
}

/** The page on which a webmaster tries it all. Nothing of it is shared with the element's own script. */
function selfTest(): Plugin {
  return {
    name: 'jarside-self-test',
    resolveId: id => (id === SELF_TEST ? `\0${id}` : undefined),
    async load(id) {
      if (id !== `\0${SELF_TEST}`) return undefined
      const bundle = await browserBundle(root)
      const [tree = ''] = Object.keys(bundle.trees)
      return `export const tree = ${JSON.stringify(tree)}
export const texts = ${JSON.stringify(selfTestTexts(bundle))}`
    },
    generateBundle() {
      const source = selfTestShell(readFileSync(join(root, 'self-test.html'), 'utf8'))
      this.emitFile({ type: 'asset', fileName: 'self-test.html', source })
    }
  }
}

/** Writes the name of the rest's file into the script, for when it has to be asked for twice. */
function nameOfRest(): Plugin {
  return {
    name: 'jarside-name-of-rest',
    generateBundle(_, files) {
      const chunks = Object.values(files).filter(file => file.type === 'chunk')
      const rest = chunks.find(({ name }) => name === 'rest')
      if (rest === undefined) throw new Error('the embed has no rest')
      for (const chunk of chunks) chunk.code = chunk.code.replaceAll('%REST%', rest.fileName)
    }
  }
}

/** Nothing is loaded ahead of an import here: the bundler's own code for that would be dead weight. */
function plainImports(): Plugin {
  return {
    name: 'jarside-plain-imports',
    enforce: 'pre',
    load: id =>
      id === '\0vite/preload-helper.js' ? 'export const __vitePreload = open => open()' : undefined
  }
}

/** What a `rem` is in pixels where nobody has changed their text size: 112.5% of 16. */
const REM = 18
const REMS = /(-?\d*\.?\d+)rem\b/g

/** Turns the page's style to the element's: its own measure, its own width, its own root. */
function ownMeasure(): Plugin {
  return {
    name: 'jarside-own-measure',
    enforce: 'pre',
    transform(code, id) {
      if (!id.endsWith('.css?inline')) return undefined
      const own = code
        // A condition can hold no variable.
        .replace(/@(?:container|media)[^{]*/g, condition =>
          condition.replace(REMS, (_, n) => `${Number(n) * REM}px`)
        )
        .replace(REMS, 'calc($1 * var(--jarside-rem))')
        .replace(/(-?\d*\.?\d+)(?:d?vw)\b/g, '$1cqi')
      return id.endsWith('/embed.css?inline') ? own : own.replace(/:host\b/g, '.embed')
    }
  }
}

/** The second build, into the folder of the first: `jarside-walk.js`, `embed/` and the page for a frame. */
export default defineConfig({
  base: './',
  publicDir: false,
  plugins: [trees(), framePage(), selfTest(), ownMeasure(), plainImports(), nameOfRest()],
  build: {
    target: 'es2022',
    // Colors by scheme are asked for with `@supports`: nothing stands in for them.
    cssTarget: ['chrome123', 'firefox120', 'safari17.5'],
    outDir: 'dist',
    emptyOutDir: false,
    // In the folder that is copied whole.
    license: { fileName: 'embed/licenses.md' },
    assetsInlineLimit: 0,
    modulePreload: false,
    rollupOptions: {
      // Proving the trees takes its time: no news to whoever starts it.
      checks: { bundlerTimings: false },
      input: {
        'jarside-walk': 'src/places/embed/element.tsx',
        'jarside-frame': 'src/places/embed/framed-page.ts',
        'jarside-self-test': 'src/places/embed/self-test/self-test.ts'
      },
      output: { entryFileNames: '[name].js', chunkFileNames: 'embed/[name]-[hash].js' }
    }
  }
})

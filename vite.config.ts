import { defineConfig, type Plugin } from 'vite'
import { browserBundle } from './src/cli/browser-bundle.ts'

const NAME = 'virtual:jarside'

/** Gives the browser the proved trees as modules: the catalogue, and each tree by itself. */
function trees(): Plugin {
  let bundle: ReturnType<typeof browserBundle> | undefined
  return {
    name: 'jarside-trees',
    resolveId: id => (id.startsWith(NAME) ? `\0${id}` : undefined),
    async load(id) {
      if (!id.startsWith(`\0${NAME}`)) return undefined
      bundle ??= browserBundle(import.meta.dirname, 'en')
      const { catalogue, trees, ui } = await bundle
      const tree = id.slice(`\0${NAME}/`.length)
      if (tree !== 'catalogue') return asModule(trees[tree])
      const openers = Object.keys(trees).map(
        name => `${JSON.stringify(name)}: () => import('${NAME}/${name}')`
      )
      return `${asModule({ catalogue, ui })}
export const openers = { ${openers.join(', ')} }`
    }
  }
}

// A string parsed at run time is quicker to start than the same thing as a program.
const asModule = (value: unknown) =>
  `export default JSON.parse(${JSON.stringify(JSON.stringify(value))})`

export default defineConfig(({ mode }) => ({
  base: './',
  plugins: [trees()],
  build: {
    target: 'es2022',
    outDir: mode === 'gallery' ? '.ci/out/gallery' : 'dist',
    emptyOutDir: true,
    // Small files stay files: the content-security policy allows no data addresses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rollupOptions: { input: mode === 'gallery' ? ['gallery.html'] : ['index.html'] }
  }
}))

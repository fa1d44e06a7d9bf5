import { join } from 'node:path'
import { defineConfig, type Plugin } from 'vite'
import { kioskEdition } from './kiosk.config.ts'
import { singleFileShell } from './shell.config.ts'
import { browserBundle } from './src/bundle/browser-bundle.ts'
import type { WholeBundle } from './src/opening/whole-bundle.ts'

const root = import.meta.dirname
const kiosk = (file: string) => join(root, 'src/places/kiosk', file)

/** What the kiosk's modules become where the file that holds them is all there is. */
const IN_FILE: Readonly<Record<string, string>> = {
  'virtual:jarside/catalogue': 'export { catalogue as default, openers }',
  'virtual:jarside/kiosk': 'export { kioskWords as default }'
}

/** Everything of the kiosk that `jarside pack` puts into one file: its program, page and trees. */
function parts(): Plugin {
  return {
    name: 'jarside-single-file',
    enforce: 'pre',
    resolveId(id) {
      if (Object.hasOwn(IN_FILE, id)) return `\0${id}`
      return id === './keep-on-device.ts' ? kiosk('kept-in-file.ts') : undefined
    },
    load(id) {
      const exported = IN_FILE[id.slice(1)]
      if (!id.startsWith('\0') || exported === undefined) return undefined
      return `${exported} from ${JSON.stringify(kiosk('from-file.ts'))}`
    },
    async generateBundle() {
      const { catalogue, trees, words, drawings, screens, kiosk } = await browserBundle(root)
      const whole: WholeBundle = { catalogue, trees, words, drawings, screens, kiosk }
      const emit = (name: string, source: string) =>
        this.emitFile({ type: 'asset', fileName: `single-file/${name}`, source })
      emit('trees.json', JSON.stringify(whole))
      emit('page.html', singleFileShell())
    }
  }
}

/** The third build, into the folder of the first: what one file is put together from. */
export default defineConfig({
  base: './',
  publicDir: false,
  plugins: [parts()],
  define: kioskEdition(),
  build: {
    target: 'es2022',
    outDir: 'dist',
    emptyOutDir: false,
    assetsInlineLimit: 0,
    cssCodeSplit: false,
    modulePreload: false,
    rollupOptions: {
      checks: { bundlerTimings: false },
      input: { program: kiosk('single-file.ts') },
      output: {
        // A script in a file of its own can ask for no second one.
        format: 'iife',
        codeSplitting: false,
        entryFileNames: 'single-file/[name].js',
        assetFileNames: 'single-file/[name][extname]'
      }
    }
  }
})

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { defineConfig, type Plugin } from 'vite'
import { PAPER_SHEETS } from './src/cli/paper-style.ts'

const STYLE = join(import.meta.dirname, 'src/style')

/** The sheets and typefaces of paper, with the licenses of the typefaces, where the command looks. */
function paperStyles(): Plugin {
  return {
    name: 'jarside-paper-styles',
    generateBundle() {
      const fonts = readdirSync(join(STYLE, 'fonts')).map(name => `fonts/${name}`)
      for (const name of [...PAPER_SHEETS.map(sheet => `${sheet}.css`), ...fonts]) {
        const source = readFileSync(join(STYLE, name))
        this.emitFile({ type: 'asset', fileName: `style/${name}`, source })
      }
    }
  }
}

/** The command as plain JavaScript, which needs Node.js and the packages of `dependencies` alone. */
export default defineConfig({
  publicDir: false,
  plugins: [paperStyles()],
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'lib',
    emptyOutDir: true,
    target: 'node20.19',
    minify: false,
    ssrEmitAssets: true,
    rollupOptions: {
      output: {
        // As deep in its folder as the source is in `src`: both find the project two folders up.
        entryFileNames: 'cli/jarside.js',
        banner: '#!/usr/bin/env node',
        codeSplitting: false
      }
    }
  }
})

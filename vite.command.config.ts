import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { defineConfig, type Plugin } from 'vite'
import { FONTS_OF_LANGUAGES, PAPER_SHEETS } from './src/cli/paper-style.ts'

const STYLE = join(import.meta.dirname, 'src/style')

/** The sheets and typefaces of paper, with the licenses of the typefaces, where the command looks. */
function paperStyles(): Plugin {
  return {
    name: 'jarside-paper-styles',
    generateBundle() {
      const fonts = readdirSync(join(STYLE, 'fonts')).map(name => `fonts/${name}`)
      const sheets = [...PAPER_SHEETS, ...FONTS_OF_LANGUAGES.map(tag => `fonts-${tag}`)]
      for (const name of [...sheets.map(sheet => `${sheet}.css`), ...fonts]) {
        const source = readFileSync(join(STYLE, name))
        this.emitFile({ type: 'asset', fileName: `style/${name}`, source })
      }
    }
  }
}

/** What tells this build from every other: its code, and the packages that the code was built for. */
function codeIdentity(): Plugin {
  return {
    name: 'jarside-code-identity',
    generateBundle(_, bundle) {
      const hash = createHash('sha256')
      for (const output of Object.values(bundle)) {
        if (output.type === 'chunk') hash.update(output.code)
      }
      hash.update(readFileSync(join(import.meta.dirname, 'package-lock.json')))
      const source = hash.digest('hex')
      this.emitFile({ type: 'asset', fileName: 'cli/code-identity.txt', source })
    }
  }
}

/** The command as plain JavaScript, which needs Node.js and the packages of `dependencies` alone. */
export default defineConfig({
  publicDir: false,
  plugins: [paperStyles(), codeIdentity()],
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
        // A command's own part is read when that command runs.
        codeSplitting: {
          groups: [
            {
              name: 'common',
              // One file for what most commands read: a walk read thirty.
              test: /[\\/]src[\\/](?:cli|tree|diagrams|evaluate|report|words|findings|office|science)[\\/]/,
              minShareCount: 2
            }
          ]
        },
        chunkFileNames: 'cli/[name]-[hash].js',
        banner: chunk => (chunk.isEntry ? '#!/usr/bin/env node' : '')
      }
    }
  }
})

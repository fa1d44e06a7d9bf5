import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { TableFile } from './table-files.ts'

/** Writes files into a folder as they are made, and gives each back once it is there. */
export function* writeTables(files: Iterable<TableFile>, folder: string): Generator<TableFile> {
  mkdirSync(folder, { recursive: true })
  for (const file of files) {
    writeFileSync(join(folder, file.name), file.text)
    yield file
  }
}

import { join } from 'node:path'
import type { TableFile } from './table-files.ts'
import { makeFolder, writeWhole } from './write-file.ts'

/** Writes files into a folder as they are made, and gives each back once it is there. */
export function* writeTables(files: Iterable<TableFile>, folder: string): Generator<TableFile> {
  makeFolder(folder)
  for (const file of files) {
    writeWhole(join(folder, file.name), file.text)
    yield file
  }
}

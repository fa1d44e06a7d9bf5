import { cpSync } from 'node:fs'
import { join } from 'node:path'

/**
 * Copies the shipped authored files into a folder, over what stands there, in two languages: a project that a test
 * changes is loaded again after each change, and every further language makes each load longer.
 */
export function copyShipped(folder: string): void {
  for (const part of ['trees', 'shared', 'locales/en', 'locales/es', 'public/office.json']) {
    cpSync(part, join(folder, part), { recursive: true, force: true })
  }
}

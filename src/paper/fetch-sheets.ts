import type { TreeOpener } from '../opening/bundle.ts'
import type { OtherSheets } from '../parts/print-choice.ts'

/** Fetches the sheets of a tree that are not about a verdict: their code, and what they say. */
export const fetchSheets =
  ({ sheets }: TreeOpener) =>
  async (): Promise<OtherSheets> => {
    const [{ otherSheets }, { default: bundle }] = await Promise.all([
      import('./other-sheets.tsx'),
      sheets()
    ])
    return otherSheets(bundle)
  }

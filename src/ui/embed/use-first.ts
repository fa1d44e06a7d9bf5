import { useEffect, useState } from 'preact/hooks'
import type { FirstQuestion, TreeFiles } from './embed-files.ts'
import { take } from './take.ts'

/** A first question in one language. */
export interface Spoken {
  readonly tag: string
  readonly question: FirstQuestion
}

/** The first question in a language; in the one before until that has arrived. */
export function useFirst(files: TreeFiles, tag: string, attempt: number): Spoken | 'failed' | null {
  const [first, setFirst] = useState<Spoken | 'failed' | null>(null)
  useEffect(() => {
    let wanted = true
    take<FirstQuestion>(files.first[tag] ?? '').then(
      question => wanted && setFirst({ tag, question }),
      () => wanted && setFirst(before => (before === null ? 'failed' : before))
    )
    return () => {
      wanted = false
    }
  }, [files, tag, attempt])
  return first
}

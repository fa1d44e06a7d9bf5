import { useEffect, useMemo, useState } from 'preact/hooks'
import { type Calls, type CallView, createCalls } from '../../machine/calls.ts'
import { SOURCE_TAG } from '../../words/words.ts'

/** The desk's calls, in the language that its volunteers work in. */
export function useCalls(tree: string | null): CallView & Pick<Calls, 'send'> {
  const calls = useMemo(() => createCalls(SOURCE_TAG, tree), [])
  const [view, setView] = useState(calls.view)
  useEffect(() => calls.subscribe(() => setView(calls.view())), [calls])
  return { ...view, send: calls.send }
}

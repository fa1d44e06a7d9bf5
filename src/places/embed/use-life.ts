import { useEffect, useReducer } from 'preact/hooks'
import type { FirstQuestion } from '../../opening/first-question.ts'
import type { TreeFiles } from './embed-files.ts'
import { born, follow, type Life, type LifeEvent } from './life.ts'
import { restOf } from './rest-there.ts'
import { take } from './take.ts'

/** Lives an element's life: fetches what it needs next, and tells it what came. */
export function useLife(
  files: TreeFiles,
  language: string
): readonly [Life, (event: LifeEvent) => void] {
  const [life, send] = useReducer(follow, language, born)
  const { language: tag, first, drawings, attempt } = life.context
  const begun = first !== null
  /** Tells what came of it, unless something else is wanted by then. */
  const fetched = <T>(coming: Promise<T>, came: (there: T) => LifeEvent, failed?: LifeEvent) => {
    let wanted = true
    coming.then(
      there => wanted && send(came(there)),
      () => wanted && failed && send(failed)
    )
    return () => {
      wanted = false
    }
  }

  useEffect(
    () =>
      fetched(
        take<FirstQuestion>(files.first[tag] ?? ''),
        question => ({ type: 'first-came', first: { tag, question } }),
        { type: 'first-failed' }
      ),
    [files, tag, attempt]
  )
  useEffect(() => {
    if (!begun) return undefined
    return fetched(restOf(files, tag), rest => ({ type: 'rest-came', rest }), {
      type: 'rest-failed'
    })
  }, [files, tag, begun, attempt])
  useEffect(() => {
    if (!begun || drawings !== null) return undefined
    return fetched(take<Readonly<Record<string, string>>>(files.drawings), came => ({
      type: 'drawings-came',
      drawings: came
    }))
  }, [files, begun, attempt])
  return [life, send]
}

import { useEffect, useLayoutEffect, useRef } from 'preact/hooks'
import type { RestThere } from './rest-there.ts'

/** The rest of a walk, with its drawings as far as they have come. */
export interface Rest extends RestThere {
  readonly drawings: Readonly<Record<string, string>>
}

/** The box that the rest of a walk is drawn in, by its own script: a page may hold two copies of ours. */
export function WalkBox({
  rest,
  ...walk
}: { rest: Rest } & Omit<
  Parameters<typeof import('./rest.tsx')['showWalk']>[1] & object,
  keyof Rest
>) {
  const box = useRef<HTMLDivElement>(null)
  const { show, whole, texts, tag, drawings } = rest
  useLayoutEffect(() => {
    const room = box.current?.getRootNode()
    if (!(room instanceof ShadowRoot) || room.adoptedStyleSheets.includes(show.restStyle)) return
    room.adoptedStyleSheets = [...room.adoptedStyleSheets, show.restStyle]
  }, [show])
  useLayoutEffect(() => {
    if (box.current) show.showWalk(box.current, { whole, texts, tag, drawings, ...walk })
  })
  useEffect(
    () => () => {
      if (box.current) show.showWalk(box.current, null)
    },
    []
  )
  return <div ref={box} />
}

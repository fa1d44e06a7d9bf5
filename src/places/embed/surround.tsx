import type { ComponentChildren } from 'preact'
import { directionOf } from '../../words/direction.ts'

/** The edge of the element, in its language and its direction. */
export function Surround({
  tag,
  title,
  children
}: {
  tag: string
  title: string | null
  children: ComponentChildren
}) {
  return (
    <section class="embed" lang={tag} dir={directionOf(tag)} aria-label={title ?? 'Jarside'}>
      {children}
    </section>
  )
}

import { TRACKS } from '../../tree/observation.ts'
import type { Possible } from '../../tree/possible.ts'
import { verdictText } from '../../words/verdict-text.ts'
import { useSetting } from '../parts/setting.tsx'

const NOTHING = {
  person: 'ui:desk.nobody-at-risk',
  container: 'ui:desk.no-pressure',
  batch: null
} as const

/** What can no longer change, whatever the caller says next, and what still can. */
export function Decided({
  possible,
  canStop,
  onStop
}: {
  possible: Possible
  /** Nothing still open could change a verdict or a step. */
  canStop: boolean
  onStop: () => void
}) {
  const { words, tree } = useSetting()
  const name = (verdict: string) => verdictText(words, tree.id, verdict, 'name')
  const tracks = TRACKS.map(track => ({ track, can: possible[track] }))
  const decided = tracks.flatMap(({ track, can: [only, ...others] }) => {
    if (others.length > 0 || only === undefined) return []
    if (only !== null) return [name(only)]
    const nothing = NOTHING[track]
    return nothing === null ? [] : [words.t(nothing)]
  })
  const use = possible.use.length === 1 ? [words.t(`${tree.id}:use.${possible.atLeast.use}`)] : []
  const open = [
    ...tracks.filter(({ can }) => can.length > 1).map(({ track }) => track),
    ...(possible.use.length > 1 ? (['use'] as const) : [])
  ]
  const all = [...decided, ...use]
  return (
    <section class="decided">
      <h2>{words.t('ui:desk.decided')}</h2>
      <p data-decided={all.length}>
        {all.length === 0 ? words.t('ui:desk.nothing-decided') : all.join(' · ')}
      </p>
      {open.length > 0 && (
        <p class="decided-open">
          {words.t('ui:desk.open')}:{' '}
          {open.map(track => words.t(`ui:desk.track.${track}`)).join(', ')}
        </p>
      )}
      {canStop && (
        <button type="button" class="secondary" data-action="stop-here" onClick={onStop}>
          {words.t('ui:desk.stop-here')}
        </button>
      )}
    </section>
  )
}

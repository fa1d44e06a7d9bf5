import { Key } from '../../parts/key.tsx'
import { useSetting } from '../../parts/setting.tsx'
import { TRACKS } from '../../tree/observation.ts'
import { verdictText } from '../../words/verdict-text.ts'
import type { CallStanding } from './call-standing.ts'
import { shortName } from './fact-text.ts'

/** No answer has this key, and no number begins with it. */
const STOPS = 's'

const RULED_OUT = {
  person: 'ui:desk.nobody-needs-help',
  container: 'ui:desk.no-pressure'
} as const

/** What can no longer change, whatever the caller says next, and what still can. */
export function Decided({
  possible,
  claims,
  canStop,
  onStop
}: Pick<CallStanding, 'possible' | 'claims' | 'canStop'> & { onStop: () => void }) {
  const { words, tree } = useSetting()
  const verdicts = TRACKS.flatMap(track => {
    const [only, ...others] = possible[track]
    return others.length > 0 || !only ? [] : [verdictText(words, tree.id, only, 'name')]
  })
  const use = possible.use.length === 1 ? [words.t(`${tree.id}:use.${possible.atLeast.use}`)] : []
  const decided = [...verdicts, ...use, ...claims.ruledOut.map(track => words.t(RULED_OUT[track]))]
  const open = [
    ...TRACKS.filter(track => possible[track].length > 1),
    ...(possible.use.length > 1 ? (['use'] as const) : [])
  ]
  return (
    <section class="decided">
      <h2>{words.t('ui:desk.decided')}</h2>
      <p data-decided={decided.length}>
        {decided.length === 0 ? words.t('ui:desk.nothing-decided') : decided.join(' · ')}
      </p>
      <p class="decided-open">
        {open.length > 0 && (
          <span>
            {words.t('ui:desk.open')}:{' '}
            {open.map(track => words.t(`ui:desk.track.${track}`)).join(', ')}.{' '}
          </span>
        )}
        {claims.notAsked.length > 0 && (
          <span data-not-asked={claims.notAsked.length}>
            {words.t('ui:desk.not-asked')}:{' '}
            {claims.notAsked.map(id => shortName(words, id)).join(', ')}.
          </span>
        )}
      </p>
      {canStop && (
        <button
          type="button"
          class="secondary"
          data-action="stop-here"
          data-key={STOPS}
          onClick={onStop}
        >
          <Key of={STOPS} />
          {words.t('ui:desk.stop-here')}
        </button>
      )}
    </section>
  )
}

import { useState } from 'preact/hooks'
import { useSpeech } from '../../../parts/setting.tsx'
import { handOver } from '../../../parts/use-contact-log.ts'
import { type Attempt, lineOfAttempt } from '../../../practice/attempt.ts'
import { byVolunteer, practiceScore } from '../../../practice/score.ts'
import type { Verdict } from '../../../tree/tree.ts'
import { missedLine, rateText, sideLines } from '../../../words/practice-lines.ts'

/** How a volunteer, or everybody at this browser, does: dangers first. */
export function Results({
  attempts,
  verdicts,
  onBack,
  onErase
}: {
  attempts: readonly Attempt[]
  verdicts: readonly Verdict[]
  onBack: () => void
  onErase: () => void
}) {
  const { words } = useSpeech()
  const [whose, setWhose] = useState('office')
  const [erasing, setErasing] = useState(false)
  const volunteers = byVolunteer(attempts)
  const shown = volunteers.find(([number]) => `${number}` === whose)?.[1] ?? attempts
  const score = practiceScore(shown, verdicts)
  return (
    <main class="practice-results">
      <h1>{words.t('ui:practice.results')}</h1>
      <div class="actions practice-moves">
        <button type="button" class="secondary" data-action="calls" onClick={onBack}>
          {words.t('ui:practice.calls')}
        </button>
        <label>
          {words.t('ui:practice.whose')}
          <select
            name="whose"
            value={whose}
            onChange={event => setWhose(event.currentTarget.value)}
          >
            <option value="office">{words.t('ui:practice.office')}</option>
            {volunteers.map(([number]) => (
              <option key={number} value={`${number}`}>
                {words.t('ui:practice.one', { number })}
              </option>
            ))}
          </select>
        </label>
      </div>
      {score.calls === 0 ? (
        <p>{words.t('ui:practice.none')}</p>
      ) : (
        <>
          <dl class="practice-rates">
            <dt>{words.t('ui:practice.calls-played', { count: score.calls })}</dt>
            <dd />
            <dt>{words.t('ui:practice.seen')}</dt>
            <dd data-rate="seen">{rateText(words, score.seen)}</dd>
            <dt>{words.t('ui:practice.false-alarms')}</dt>
            <dd>{rateText(words, score.falseAlarms)}</dd>
            <dt>{words.t('ui:practice.other-trees')}</dt>
            <dd>{score.otherTree}</dd>
          </dl>
          {score.missed.length > 0 && (
            <>
              <h2>{words.t('ui:practice.missed')}</h2>
              <ul>
                {score.missed.map(attempt => (
                  <li key={attempt.id}>{missedLine(words, attempt, verdicts)}</li>
                ))}
              </ul>
            </>
          )}
          <table class="practice-table practice-agreement">
            <caption>{words.t('ui:practice.agreement')}</caption>
            <thead>
              <tr>
                <th scope="col">{words.t('ui:practice.side')}</th>
                {(['agree', 'gentle', 'strict', 'levels', 'kappa'] as const).map(key => (
                  <th key={key} scope="col">
                    {words.t(`ui:practice.${key}`)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {sideLines(words, score).map(
                ({ side, name, same, gentle, strict, levels, kappa }) => (
                  <tr key={side} data-side={side}>
                    <th scope="row">{name}</th>
                    <td>{same}</td>
                    <td>{gentle}</td>
                    <td>{strict}</td>
                    <td>{levels}</td>
                    <td>{kappa}</td>
                  </tr>
                )
              )}
            </tbody>
          </table>
          <p class="practice-intro">{words.t('ui:practice.how')}</p>
          <div class="actions practice-moves">
            <button
              type="button"
              class="secondary"
              data-action="lines"
              onClick={() =>
                handOver(
                  'practice.jsonl',
                  'application/jsonl',
                  shown.map(attempt => `${lineOfAttempt(attempt)}\n`).join('')
                )
              }
            >
              {words.t('ui:practice.lines')}
            </button>
            <button type="button" class="secondary" data-action="print" onClick={() => print()}>
              {words.t('ui:practice.print')}
            </button>
            <button
              type="button"
              class="quiet"
              data-action="erase"
              onClick={() => {
                if (erasing) onErase()
                setErasing(!erasing)
              }}
            >
              {words.t(erasing ? 'ui:practice.erase-sure' : 'ui:practice.erase')}
            </button>
          </div>
        </>
      )}
    </main>
  )
}

import type { Alarm } from '../words/alarms.ts'
import { Both } from './text.tsx'

/** What cannot wait for the end of the walk, above every question from the moment it is raised. */
export function Alarms({
  alarms,
  beside = null
}: {
  alarms: readonly Alarm[]
  beside?: readonly Alarm[] | null
}) {
  return (
    <div role="status">
      {alarms.map(({ id, signal, signalWord, message, meanwhile }, index) => (
        <p key={id} class={`alarm alarm-${signal}`} data-verdict={id}>
          <span class={`signal signal-${signal}`}>{signalWord}</span>
          <strong>
            <Both text={message} second={beside?.[index]?.message} />
          </strong>
          <span>
            <Both text={meanwhile} second={beside?.[index]?.meanwhile} />
          </span>
        </p>
      ))}
    </div>
  )
}

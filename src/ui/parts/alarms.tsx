import type { Alarm } from '../../words/alarms.ts'

/** What cannot wait for the end of the walk, above every question from the moment it is raised. */
export function Alarms({ alarms }: { alarms: readonly Alarm[] }) {
  return (
    <div role="status">
      {alarms.map(({ id, signal, signalWord, message, meanwhile }) => (
        <p key={id} class={`alarm alarm-${signal}`} data-verdict={id}>
          <span class={`signal signal-${signal}`}>{signalWord}</span>
          <strong>{message}</strong>
          <span>{meanwhile}</span>
        </p>
      ))}
    </div>
  )
}

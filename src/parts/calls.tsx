import type { SaidBringIn, SaidCall } from '../words/said-call.ts'
import type { Said } from '../words/say.ts'
import { Phone } from './phone.tsx'
import { Both, Text } from './text.tsx'

/** Whom to call, with the number to press. */
export function Calls({
  calls,
  doubt,
  beside = null
}: {
  calls: readonly SaidCall[]
  doubt: string | null
  beside?: Said | null
}) {
  if (calls.length === 0) return null
  return (
    <section class="calls">
      <h2>
        <Text k="ui:who-to-call" />
      </h2>
      <ul>
        {calls.map(({ to, name, phone, say }, index) => (
          <li key={to}>
            <span class="calls-name">
              {name} {phone !== null && <Phone number={phone} />}
            </span>
            <span class="calls-say">
              <Both text={say} second={beside?.calls[index]?.say} />
            </span>
          </li>
        ))}
      </ul>
      {doubt !== null && (
        <p class="calls-doubt">
          <Both text={doubt} second={beside?.officeDoubt} />
        </p>
      )}
    </section>
  )
}

/** Where what is still to be measured can be brought, and when. */
export function BringIn({
  bringIn,
  beside = null
}: {
  bringIn: SaidBringIn
  beside?: Said | null
}) {
  return (
    <section class="bring-in">
      <h2>
        <Both text={bringIn.title} second={beside?.bringIn?.title} />
      </h2>
      {bringIn.lines.map((line, index) => (
        <p key={line}>
          <Both text={line} second={beside?.bringIn?.lines[index]} />
        </p>
      ))}
      {bringIn.callFirst !== null && (
        <p>
          <Both text={bringIn.callFirst} second={beside?.bringIn?.callFirst} />
        </p>
      )}
    </section>
  )
}

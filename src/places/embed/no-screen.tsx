import { numbersOf } from '../../office/constants.ts'
import { dialed } from '../../office/plain-text.ts'
import type { Texts } from '../../opening/bundle.ts'

/** The few texts, read as they lie in the file: what makes sentences may be what failed. */
interface Plain {
  readonly ui?: {
    readonly embed?: { readonly 'not-loaded'?: string }
    readonly referral?: Readonly<Record<string, { readonly name?: string }>>
  }
}

/** What stands where a screen threw: whom to call, and the page's own words. */
export function NoScreen({ texts }: { texts: Texts | undefined }) {
  const { ui = {} } = (texts ?? {}) as Plain
  const { emergency, poisonHelp } = numbersOf(undefined)
  return (
    <div class="screen trouble">
      <p role="alert">{ui.embed?.['not-loaded']}</p>
      <ul class="foot-numbers">
        <li>
          {ui.referral?.emergency?.name} <a href={dialed(emergency)}>{emergency}</a>
        </li>
        <li>
          {ui.referral?.['poison-help']?.name} <a href={dialed(poisonHelp)}>{poisonHelp}</a>
        </li>
      </ul>
      <slot />
    </div>
  )
}

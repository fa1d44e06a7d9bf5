import { numbersOf } from '../../office/constants.ts'
import { dialed } from '../../office/plain-text.ts'
import type { Texts } from '../../opening/bundle.ts'
import { groupOf } from '../../tree/group.ts'

/** One of the few texts, read as it lies in the file: what makes sentences may be what failed. */
function textAt(texts: Texts | undefined, ...keys: readonly string[]): string | undefined {
  const text = keys.reduce<unknown>((inside, key) => groupOf(inside)[key], texts)
  return typeof text === 'string' ? text : undefined
}

/** What stands where a screen threw: whom to call, and the page's own words. */
export function NoScreen({ texts }: { texts: Texts | undefined }) {
  const { emergency, poisonHelp } = numbersOf(undefined)
  return (
    <div class="screen trouble">
      <p role="alert">{textAt(texts, 'ui', 'embed', 'not-loaded')}</p>
      <ul class="foot-numbers">
        <li>
          {textAt(texts, 'ui', 'referral', 'emergency', 'name')}{' '}
          <a href={dialed(emergency)}>{emergency}</a>
        </li>
        <li>
          {textAt(texts, 'ui', 'referral', 'poison-help', 'name')}{' '}
          <a href={dialed(poisonHelp)}>{poisonHelp}</a>
        </li>
      </ul>
      <slot />
    </div>
  )
}

import { dialed } from '../office/plain-text.ts'
import { useSpeech } from './setting.tsx'

/** A phone number, as a link to call it where the place can; digits keep their order in any script. */
export function Phone({ number }: { number: string }) {
  const { dials } = useSpeech()
  const text = <bdi>{number}</bdi>
  if (!dials) return <span class="phone">{text}</span>
  return (
    <a class="phone" href={dialed(number)}>
      {text}
    </a>
  )
}

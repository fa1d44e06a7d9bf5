import { useEffect } from 'preact/hooks'
import { inLatinDigits } from '../words/direction.ts'
import { useSpeech } from './setting.tsx'
import { StepHeading } from './step-heading.tsx'
import { Text } from './text.tsx'

const dayOf = (day: string, tag: string): string =>
  new Intl.DateTimeFormat(inLatinDigits(tag), { dateStyle: 'long', timeZone: 'UTC' }).format(
    new Date(day)
  )

/** What stands in place of a tree that was withdrawn: no question, no answer; the foot has the numbers. */
export function Withdrawn({ tree, on, quiet }: { tree: string; on: string; quiet: boolean }) {
  const { words } = useSpeech()
  const title = words.t(`${tree}:title`)
  const heading = words.t('ui:withdrawn.heading')
  useEffect(() => {
    document.title = `${heading} · ${title} · Jarside`
  }, [heading, title])
  return (
    <section class="withdrawn" data-withdrawn={tree}>
      <StepHeading step="withdrawn" quiet={quiet}>
        <Text k="ui:withdrawn.heading" />
      </StepHeading>
      <p class="notice">
        {title} · {dayOf(on, words.tag)}
      </p>
      <p>
        <Text k="ui:withdrawn.say" />
      </p>
    </section>
  )
}

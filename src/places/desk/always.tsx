import { useSetting } from '../../parts/setting.tsx'
import { Text } from '../../parts/text.tsx'
import { cautionText } from '../../words/tree-texts.ts'

/** What is said on every call, whatever comes out of it. */
export function Always() {
  const { words, tree } = useSetting()
  return (
    <section class="always">
      <h2>{words.t('ui:desk.always')}</h2>
      {(['who-must-not', 'call-poison-help', 'not-proof'] as const).map(caution => (
        <p key={caution} data-caution={cautionText(words, tree.id, caution) && caution}>
          <Text k={`${tree.id}:cautions.${caution}`} />
        </p>
      ))}
    </section>
  )
}

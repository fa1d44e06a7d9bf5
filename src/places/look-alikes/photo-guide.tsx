import { useSpeech } from '../../parts/setting.tsx'

const STEPS = ['closed', 'above', 'side', 'coin', 'light'] as const

/** How to take a photo that shows what matters. */
export function PhotoGuide() {
  const { words } = useSpeech()
  return (
    <details class="photo-guide">
      <summary>{words.t('ui:photo.guide')}</summary>
      <ol>
        {STEPS.map(step => (
          <li key={step}>{words.t(`ui:photo.step-${step}`)}</li>
        ))}
      </ol>
    </details>
  )
}

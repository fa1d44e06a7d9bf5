import { useSpeech } from './setting.tsx'

/** For whoever began with the wrong ferment: chooses another, with what was told so far. */
export function SwitchTree({ onSwitch }: { onSwitch: () => void }) {
  const { words } = useSpeech()
  return (
    <p class="switch">
      {words.t('ui:switch.ask')}{' '}
      <button type="button" class="quiet" data-move="switch" onClick={onSwitch}>
        {words.t('ui:switch.move')}
      </button>
    </p>
  )
}

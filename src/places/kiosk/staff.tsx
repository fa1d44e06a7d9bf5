import { useState } from 'preact/hooks'
import { Screen, type ScreenFrame } from '../../parts/screen.tsx'
import { type Speech, SpeechProvider } from '../../parts/setting.tsx'
import { StaffMenu, type StaffMenuProps } from './staff-menu.tsx'
import { StaffPin } from './staff-pin.tsx'

/** What staff see behind a long press: the PIN first, then their menu. */
export function Staff({
  speech,
  onLeave,
  menu,
  ...frame
}: ScreenFrame & {
  speech: Speech
  onLeave: () => void
  menu: Omit<StaffMenuProps, 'onNewPin'>
}) {
  const [passed, setPassed] = useState(false)
  const [anew, setAnew] = useState(false)
  const { settings, change } = menu.inHand
  return (
    <SpeechProvider value={speech}>
      <Screen {...frame} title={null} draft={false} onBack={onLeave} onStartOver={null}>
        {passed && !anew ? (
          <StaffMenu {...menu} onNewPin={() => setAnew(true)} />
        ) : (
          <StaffPin
            kept={anew ? null : settings.pin}
            onPassed={pin => {
              change({ pin })
              setPassed(true)
              setAnew(false)
            }}
          />
        )}
      </Screen>
    </SpeechProvider>
  )
}

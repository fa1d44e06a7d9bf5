import { useRef } from 'preact/hooks'
import { outcomeToShare } from '../../addresses/outcome-address.ts'
import { homeOf, sheetAddress } from '../../addresses/sheet-address.ts'
import { Qr } from '../../parts/qr.tsx'
import { useSetting } from '../../parts/setting.tsx'
import type { WalkInHand } from '../../parts/use-walk.ts'

/** What a visitor can take along, by phone, by hand or on paper; then the way to leave nothing behind. */
export function TakeHome({ walk, onDone }: { walk: WalkInHand; onDone: () => void }) {
  const { tree, words, office } = useSetting()
  const shared = outcomeToShare(tree, walk)
  const { scanned, typed } = sheetAddress(tree, shared, words.tag, homeOf(office))
  const section = useRef<HTMLElement>(null)
  return (
    <>
      <div class="take-home-bar">
        <button
          type="button"
          class="secondary take-home-jump"
          data-action="jump"
          onClick={() => {
            section.current?.scrollIntoView()
            section.current?.focus()
          }}
        >
          {words.t('ui:kiosk.take-home')}
        </button>
      </div>
      <section
        class="take-home"
        ref={section}
        tabIndex={-1}
        aria-label={words.t('ui:kiosk.take-home')}
      >
        <Qr text={scanned} label={words.t('ui:kiosk.square')} />
        <div class="take-home-words">
          <h2>{words.t('ui:kiosk.take-home')}</h2>
          <p>{words.t(shared === null ? 'ui:kiosk.scan-questions' : 'ui:kiosk.scan-steps')}</p>
          <p>
            {words.t('ui:kiosk.type')}{' '}
            <bdi class="take-home-address">{typed.replace(/^https?:\/\//, '')}</bdi>
          </p>
          <button type="button" class="secondary" data-action="print" onClick={() => print()}>
            {words.t('ui:print')}
          </button>
        </div>
        <button type="button" class="primary take-home-done" data-action="done" onClick={onDone}>
          {words.t('ui:kiosk.done')}
        </button>
      </section>
    </>
  )
}

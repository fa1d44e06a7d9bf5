import { useEffect, useState } from 'preact/hooks'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import { useLinked, useLinkedPage } from '../../opening/use-linked-page.ts'
import { LookAlike, LookAlikesNever } from '../../parts/look-alike.tsx'
import { Screen } from '../../parts/screen.tsx'
import { SpeechProvider, useSpeech } from '../../parts/setting.tsx'
import type { LookAlike as Pair } from '../../tree/look-alikes.ts'
import { preferred } from '../../words/languages.ts'
import { OwnPhoto } from './own-photo.tsx'

/** Every pair that callers mix up, one at a time, with room for a photo of their own beside it. */
export function LookAlikes({
  catalogue,
  openers,
  pairs,
  drawings
}: {
  catalogue: Catalogue
  openers: Openers
  pairs: readonly Pair[]
  drawings: Readonly<Record<string, string>>
}) {
  const linked = useLinked()
  const [chosen, setChosen] = useState(() =>
    pairs.some(({ id }) => id === linked.get('pair')) ? linked.get('pair') : pairs[0]?.id
  )
  const pair = pairs.find(({ id }) => id === chosen)
  const { speech, frame } = useLinkedPage(
    { catalogue, openers },
    () => linked.get('lang') ?? preferred(catalogue.languages, navigator.languages),
    { pair: chosen ?? '' }
  )
  const { words } = speech
  const title = words.t('ui:look-alikes.title')
  useEffect(() => {
    document.title = `${title} · Jarside`
  }, [title])
  return (
    <SpeechProvider value={speech}>
      <Screen
        {...frame}
        look="look-alikes-page"
        title={title}
        draft
        onBack={null}
        onStartOver={null}
      >
        <h1>{title}</h1>
        <p>{words.t('ui:look-alikes.intro')}</p>
        <p>
          <a href={`./#/${words.tag}`}>{words.t('ui:look-alikes.to-questions')}</a>
        </p>
        <nav class="look-alikes-list" aria-label={words.t('ui:look-alikes.all')}>
          {pairs.map(({ id, one, other }) => (
            <button
              key={id}
              type="button"
              data-choose-pair={id}
              aria-current={id === chosen ? 'true' : undefined}
              onClick={() => setChosen(id)}
            >
              {[one.above, other.above].map(picture => (
                <span
                  key={picture}
                  class="look-alikes-small"
                  aria-hidden="true"
                  // The project's own file, checked at build.
                  dangerouslySetInnerHTML={{ __html: drawings[picture] ?? '' }}
                />
              ))}
              <span class="look-alikes-name">{words.t(`look-alikes:${id}.title`)}</span>
            </button>
          ))}
        </nav>
        <div class="look-alikes-beside">
          {pair && (
            <section class="look-alikes-chosen">
              <h2>{words.t(`look-alikes:${pair.id}.title`)}</h2>
              <LookAlike pair={pair} drawings={drawings} />
              <LookAlikesNever />
            </section>
          )}
          <div>
            <OwnPhoto />
            <PhotoGuide />
          </div>
        </div>
      </Screen>
    </SpeechProvider>
  )
}

const STEPS = ['closed', 'above', 'side', 'coin', 'light'] as const

/** How to take a photo that shows what matters. */
function PhotoGuide() {
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

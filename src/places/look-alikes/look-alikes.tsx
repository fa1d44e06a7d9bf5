import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import { speechIn } from '../../opening/speech.ts'
import { useOffice } from '../../opening/use-office.ts'
import { usePageLanguage, useScreens } from '../../opening/use-screens.ts'
import { useToday } from '../../opening/use-today.ts'
import { Foot } from '../../parts/foot.tsx'
import { LookAlike, LookAlikesNever } from '../../parts/look-alike.tsx'
import { Masthead } from '../../parts/masthead.tsx'
import { SpeechProvider } from '../../parts/setting.tsx'
import type { LookAlike as Pair } from '../../tree/look-alikes.ts'
import { preferred } from '../../words/languages.ts'
import { SOURCE_TAG } from '../../words/words.ts'
import { OwnPhoto } from './own-photo.tsx'
import { PhotoGuide } from './photo-guide.tsx'

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
  const today = useToday()
  const office = useOffice('./office.json', '')
  const [linked] = useState(() => new URLSearchParams(location.hash.replace(/^#/, '')))
  const [tag, setTag] = useState(
    () => linked.get('lang') ?? preferred(catalogue.languages, navigator.languages)
  )
  const screens = useScreens(catalogue, openers, tag)
  usePageLanguage(screens.tag)
  const speech = useMemo(() => speechIn(screens.texts, screens.tag), [screens.texts, screens.tag])
  const [chosen, setChosen] = useState(() =>
    pairs.some(({ id }) => id === linked.get('pair')) ? linked.get('pair') : pairs[0]?.id
  )
  const pair = pairs.find(({ id }) => id === chosen)
  const { words } = speech
  const title = words.t('ui:look-alikes.title')
  useEffect(() => {
    document.title = `${title} · Jarside`
  }, [title])
  useEffect(() => {
    const query = new URLSearchParams({ pair: chosen ?? '' })
    if (screens.tag !== SOURCE_TAG) query.set('lang', screens.tag)
    history.replaceState(null, '', `#${query}`)
  }, [chosen, screens.tag])
  return (
    <SpeechProvider value={speech}>
      <div class="look-alikes-page">
        <Masthead
          title={title}
          draft
          languages={catalogue.languages}
          onLanguage={setTag}
          languageLost={screens.failed}
          onBack={null}
          onStartOver={null}
        />
        <main>
          <h1>{title}</h1>
          <p>{words.t('ui:look-alikes.intro')}</p>
          <p>
            <a href={`./#/${screens.tag}`}>{words.t('ui:look-alikes.to-questions')}</a>
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
        </main>
        <Foot office={office} today={today} />
      </div>
    </SpeechProvider>
  )
}

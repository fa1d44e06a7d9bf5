import { useEffect, useRef, useState } from 'preact/hooks'
import { useSpeech } from '../../parts/setting.tsx'

/** The longer side of what is kept, in pixels: enough to see hairs, little to hold. */
const MOST = 2000
const CLOSER = [1, 2, 3, 4] as const

type Shown =
  | { readonly kind: 'none' | 'unreadable' }
  | { readonly kind: 'photo'; image: ImageBitmap }

/**
 * The caller's own photo, beside the drawings. Only its points of color are kept, in this page's memory:
 * the file is let go at once, and with it where and when it was taken. Leaving the page forgets it.
 */
export function OwnPhoto() {
  const { words } = useSpeech()
  const [shown, setShown] = useState<Shown>({ kind: 'none' })
  const [closer, setCloser] = useState(1)
  const canvas = useRef<HTMLCanvasElement>(null)
  const forget = () => setShown({ kind: 'none' })

  useEffect(() => {
    // A page kept by the browser for going back would keep the photo too.
    addEventListener('pagehide', forget)
    return () => removeEventListener('pagehide', forget)
  }, [])
  useEffect(() => {
    if (shown.kind !== 'photo' || canvas.current === null) return undefined
    const { image } = shown
    const scale = Math.min(1, MOST / Math.max(image.width, image.height))
    canvas.current.width = Math.round(image.width * scale)
    canvas.current.height = Math.round(image.height * scale)
    canvas.current
      .getContext('2d')
      ?.drawImage(image, 0, 0, canvas.current.width, canvas.current.height)
    return () => image.close()
  }, [shown])

  const take = async (input: HTMLInputElement) => {
    const file = input.files?.[0]
    // The same file can be chosen again, and the field keeps no name of it.
    input.value = ''
    if (file === undefined) return
    setCloser(1)
    try {
      setShown({ kind: 'photo', image: await createImageBitmap(file) })
    } catch {
      setShown({ kind: 'unreadable' })
    }
  }
  return (
    <section class="own-photo" aria-label={words.t('ui:photo.title')}>
      <h2>{words.t('ui:photo.title')}</h2>
      <p>{words.t('ui:photo.kept')}</p>
      <div class="own-photo-choose">
        <label class="secondary">
          <input
            type="file"
            accept="image/*"
            capture="environment"
            class="visually-hidden"
            data-photo="camera"
            onChange={event => take(event.currentTarget)}
          />
          {words.t('ui:photo.camera')}
        </label>
        <label class="secondary">
          <input
            type="file"
            accept="image/*"
            class="visually-hidden"
            data-photo="file"
            onChange={event => take(event.currentTarget)}
          />
          {words.t('ui:photo.file')}
        </label>
        {shown.kind === 'photo' && (
          <button type="button" class="quiet" data-photo="remove" onClick={forget}>
            {words.t('ui:photo.remove')}
          </button>
        )}
      </div>
      <div role="status">
        {shown.kind === 'unreadable' && <p class="error">{words.t('ui:photo.unreadable')}</p>}
      </div>
      {shown.kind === 'photo' && (
        <>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: enlarged, it is moved about by arrow keys */}
          <section class="own-photo-frame" tabIndex={0} aria-label={words.t('ui:photo.yours')}>
            <canvas ref={canvas} class={`own-photo-picture closer-${closer}`} />
          </section>
          <fieldset class="own-photo-closer">
            <legend>{words.t('ui:photo.closer')}</legend>
            {CLOSER.map(times => (
              <label key={times}>
                <input
                  type="radio"
                  name="closer"
                  checked={closer === times}
                  onChange={() => setCloser(times)}
                />
                {times}×
              </label>
            ))}
          </fieldset>
        </>
      )}
    </section>
  )
}

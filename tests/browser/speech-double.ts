import type { Page } from 'playwright-core'

/**
 * Puts a speech into a page that speaks nothing: its voices come late, two of them offline, and a sentence
 * is said when the page hears `sentence-said`.
 */
export const speechDouble = (page: Page) =>
  page.addInitScript(() => {
    const heard: string[] = []
    let said: (() => void) | null = null
    const voice = (lang: string, localService: boolean) => ({
      lang,
      name: lang,
      voiceURI: lang,
      localService,
      default: false
    })
    let voices: ReturnType<typeof voice>[] = []
    const speech = new EventTarget()
    Object.assign(speech, {
      heard,
      getVoices: () => voices,
      speak(utterance: { text: string; onend: (() => void) | null }) {
        heard.push(utterance.text)
        said = () => utterance.onend?.()
      },
      cancel: () => heard.push('hush')
    })
    addEventListener('sentence-said', () => said?.())
    addEventListener('load', () => {
      voices = [voice('es_US', true), voice('en-US', true), voice('vi-VN', false)]
      speech.dispatchEvent(new Event('voiceschanged'))
    })
    Object.defineProperty(window, 'speechSynthesis', { value: speech })
    Object.defineProperty(window, 'SpeechSynthesisUtterance', {
      value: class {
        text: string
        constructor(text: string) {
          this.text = text
        }
      }
    })
  })

/** What the double was asked to say, and `hush` for each time that it was cut short. */
export const spokenAloud = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const heard: unknown = Reflect.get(window.speechSynthesis, 'heard')
    const list: string[] = Array.isArray(heard) ? heard.map(String) : []
    // Silence before the first word says nothing.
    return list.slice(list.findIndex(one => one !== 'hush'))
  })

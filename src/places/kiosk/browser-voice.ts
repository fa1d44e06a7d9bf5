import type { Voice } from '../../machine/reading.ts'

/** Of a browser's voice what tells whether it may speak here. */
export type VoiceKind = Pick<SpeechSynthesisVoice, 'lang' | 'localService' | 'name' | 'default'>

/** Of the browser's own speech what is used of it. */
export interface Synthesis<V extends VoiceKind = SpeechSynthesisVoice> {
  getVoices(): readonly V[]
  speak(utterance: SpeechSynthesisUtterance): void
  cancel(): void
  addEventListener?(type: 'voiceschanged', listener: () => void): void
  removeEventListener?(type: 'voiceschanged', listener: () => void): void
}

/** The regions whose voice is taken first: whose speech most callers here are used to. */
const REGIONS: Readonly<Record<string, readonly string[]>> = {
  en: ['us'],
  es: ['us', 'mx'],
  zh: ['cn', 'hans']
}
/** Written in the same letters and spoken otherwise: a Cantonese voice says no Mandarin. */
const OTHER_SPEECH: Readonly<Record<string, readonly string[]>> = { zh: ['hk', 'mo', 'yue'] }
/** Names under which some devices list a language. */
const ALIASES: Readonly<Record<string, readonly string[]>> = { zh: ['cmn'], ar: ['arb'] }

const partsOf = (lang: string): readonly string[] => lang.toLowerCase().split(/[-_]/)

/**
 * The voice in which a language is read: one of that language which needs no server, because what is
 * read says something of whoever listens. Null where the device has none.
 */
export function offlineVoice<V extends VoiceKind>(voices: readonly V[], tag: string): V | null {
  const regions = REGIONS[tag] ?? []
  const rank = ({ lang, default: isDefault }: V) => {
    const [, ...more] = partsOf(lang)
    const region = regions.findIndex(one => more.includes(one))
    return 2 * (region < 0 ? regions.length : region) + (isDefault ? 0 : 1)
  }
  const fitting = voices.filter(({ lang, localService }) => {
    const [language = '', ...more] = partsOf(lang)
    return (
      localService &&
      [tag, ...(ALIASES[tag] ?? [])].includes(language) &&
      !more.some(part => OTHER_SPEECH[tag]?.includes(part))
    )
  })
  return fitting.sort((one, other) => rank(one) - rank(other))[0] ?? null
}

/** Hears of the voices now and whenever there are others, because most browsers load them late. */
export function watchVoices<V extends VoiceKind>(
  synthesis: Synthesis<V>,
  onVoices: (voices: readonly V[]) => void
): () => void {
  const look = () => onVoices([...synthesis.getVoices()])
  synthesis.addEventListener?.('voiceschanged', look)
  look()
  return () => synthesis.removeEventListener?.('voiceschanged', look)
}

/**
 * The browser's speech as a voice. A pause is a cancelled sentence: some devices cancel everything on
 * `pause()`, and some never go on after it.
 */
export const browserVoice = (synthesis: Synthesis, voice: SpeechSynthesisVoice): Voice => ({
  say(sentence, onEnd) {
    const utterance = new SpeechSynthesisUtterance(sentence)
    utterance.voice = voice
    utterance.lang = voice.lang.replace('_', '-')
    let over = false
    const end = (how: 'said' | 'failed') => {
      if (over) return
      over = true
      onEnd(how)
    }
    utterance.onend = () => end('said')
    utterance.onerror = () => end('failed')
    synthesis.speak(utterance)
    return () => {
      // A sentence that was cancelled says that it ended, or failed.
      if (over) return
      over = true
      synthesis.cancel()
    }
  }
})

/** The browser's speech, where it has any. */
export const synthesisHere = (): Synthesis | null =>
  'speechSynthesis' in globalThis && 'SpeechSynthesisUtterance' in globalThis
    ? globalThis.speechSynthesis
    : null

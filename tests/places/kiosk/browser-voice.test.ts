import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import {
  browserVoice,
  offlineVoice,
  type Synthesis,
  watchVoices
} from '../../../src/places/kiosk/browser-voice.ts'

const voice = (lang: string, more: Partial<SpeechSynthesisVoice> = {}): SpeechSynthesisVoice => ({
  lang,
  name: `${lang} ${more.default === true ? 'default' : ''}`.trim(),
  voiceURI: lang,
  localService: true,
  default: false,
  ...more
})

/** A browser's speech that says nothing by itself. */
function scripted(voices: readonly SpeechSynthesisVoice[] = []) {
  const asked: SpeechSynthesisUtterance[] = []
  const listeners = new Set<() => void>()
  let here = voices
  let cancelled = 0
  const synthesis: Synthesis = {
    getVoices: () => here,
    speak: utterance => void asked.push(utterance),
    cancel() {
      cancelled += 1
    },
    addEventListener: (_, listener) => void listeners.add(listener),
    removeEventListener: (_, listener) => void listeners.delete(listener)
  }
  return {
    synthesis,
    asked,
    cancelled: () => cancelled,
    listeners,
    come(later: readonly SpeechSynthesisVoice[]) {
      here = later
      for (const listener of listeners) listener()
    }
  }
}

describe('the voice of a language', () => {
  test('is one that needs no network, or none', () => {
    const away = voice('es-US', { localService: false })
    expect(offlineVoice([away], 'es')).toBeNull()
    expect(offlineVoice([away, voice('es-ES')], 'es')?.lang).toBe('es-ES')
    expect(offlineVoice([voice('en-US')], 'es')).toBeNull()
    expect(offlineVoice([], 'en')).toBeNull()
  })

  test.each([
    ['en', ['en-GB', 'en_US', 'en-AU'], 'en_US'],
    ['es', ['es-ES', 'es_MX'], 'es_MX'],
    ['zh', ['zh-TW', 'cmn-Hans-CN'], 'cmn-Hans-CN'],
    ['vi', ['vi'], 'vi'],
    ['ar', ['fa-IR', 'ar-001'], 'ar-001']
  ])('in %s of %j is %s', (tag, langs, chosen) => {
    const voices = langs.map(lang => voice(lang))
    expect(offlineVoice(voices, tag)?.lang).toBe(chosen)
  })

  test('never speaks Cantonese to whoever reads Mandarin', () => {
    expect(
      offlineVoice(
        ['zh-HK', 'yue-HK', 'zh-Hant-HK'].map(lang => voice(lang)),
        'zh'
      )
    ).toBeNull()
  })

  test('is the device’s own choice among equals', () => {
    const voices = [voice('vi-VN'), voice('vi-VN', { default: true })]
    expect(offlineVoice(voices, 'vi')?.default).toBe(true)
  })
})

describe('voices', () => {
  test('that arrive late are heard of, and no more once nobody listens', () => {
    const { synthesis, come, listeners } = scripted()
    const heard: number[] = []
    const deaf = watchVoices(synthesis, voices => heard.push(voices.length))
    come([voice('en-US')])
    come([voice('en-US'), voice('es-US')])
    expect(heard).toEqual([0, 1, 2])
    deaf()
    expect(listeners.size).toBe(0)
  })

  test('of a browser that tells of no change are those it has', () => {
    const { getVoices, speak, cancel } = scripted([voice('en-US')]).synthesis
    const heard: number[] = []
    watchVoices({ getVoices, speak, cancel }, all => heard.push(all.length))()
    expect(heard).toEqual([1])
  })
})

describe('a sentence', () => {
  class Utterance {
    onend: (() => void) | null = null
    onerror: (() => void) | null = null
    voice: unknown = null
    lang = ''
    readonly text: string
    constructor(text: string) {
      this.text = text
    }
  }
  beforeEach(() => void vi.stubGlobal('SpeechSynthesisUtterance', Utterance))
  afterEach(() => void vi.unstubAllGlobals())
  const fire = (utterance: SpeechSynthesisUtterance | undefined, type: 'onend' | 'onerror') =>
    Reflect.get(utterance ?? {}, type)?.()

  test('is said in its voice, and tells once that it was', () => {
    const { synthesis, asked, cancelled } = scripted()
    const heard: string[] = []
    const hush = browserVoice(synthesis, voice('en_US')).say('One.', how => heard.push(how))
    expect(asked[0]).toMatchObject({ text: 'One.', lang: 'en-US', voice: { lang: 'en_US' } })
    fire(asked[0], 'onend')
    fire(asked[0], 'onerror')
    hush()
    expect(heard).toEqual(['said'])
    // What is over is not cancelled: the next sentence would go with it.
    expect(cancelled()).toBe(0)
  })

  test('that is broken off is cancelled, and tells nothing any more', () => {
    const { synthesis, asked, cancelled } = scripted()
    const heard: string[] = []
    browserVoice(synthesis, voice('en-US')).say('One.', how => heard.push(how))()
    fire(asked[0], 'onerror')
    expect(heard).toEqual([])
    expect(cancelled()).toBe(1)
  })

  test('that cannot be said tells so', () => {
    const { synthesis, asked } = scripted()
    const heard: string[] = []
    browserVoice(synthesis, voice('en-US')).say('One.', how => heard.push(how))
    fire(asked[0], 'onerror')
    expect(heard).toEqual(['failed'])
  })
})

import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Voice } from '../../machine/reading.ts'
import { browserVoice, offlineVoice, synthesisHere, watchVoices } from './browser-voice.ts'

/** What reads in a language, and the name of its voice. */
export interface Speaker {
  readonly name: string
  readonly voice: Voice
}

/** The voices of this device that need no network, by language; empty until the browser has loaded them. */
export function useVoices(tags: readonly string[]): ReadonlyMap<string, Speaker> {
  const synthesis = useMemo(synthesisHere, [])
  const [voices, setVoices] = useState<readonly SpeechSynthesisVoice[]>([])
  useEffect(() => {
    if (synthesis === null) return undefined
    // Some browsers go on speaking when the page is loaded anew.
    const silence = () => synthesis.cancel()
    silence()
    addEventListener('pagehide', silence)
    const deaf = watchVoices(synthesis, setVoices)
    return () => {
      removeEventListener('pagehide', silence)
      deaf()
    }
  }, [synthesis])
  return useMemo(() => {
    const found = tags.flatMap((tag): [string, Speaker][] => {
      const voice = offlineVoice(voices, tag)
      if (synthesis === null || voice === null) return []
      return [[tag, { name: voice.name, voice: browserVoice(synthesis, voice) }]]
    })
    return new Map(found)
  }, [synthesis, voices, tags.join()])
}

import { beforeEach, describe, expect, test } from 'vitest'
import { createReading, type Reading, type Voice } from '../../src/machine/reading.ts'

/** A voice that says what the test lets it say, and writes down what it was asked for. */
function scripted() {
  const heard: string[] = []
  let end: ((how: 'said' | 'failed') => void) | null = null
  const voice: Voice = {
    say(sentence, onEnd) {
      heard.push(sentence)
      end = onEnd
      return () => {
        heard.push('hush')
        // As browsers do: a cancelled sentence ends, too late for anybody to care.
        onEnd('failed')
      }
    }
  }
  return { voice, heard, end: (how: 'said' | 'failed' = 'said') => end?.(how) }
}

const sentences = ['One.', 'Two.', 'Three.']
let speaker: ReturnType<typeof scripted>
let reading: Reading

beforeEach(() => {
  speaker = scripted()
  reading = createReading()
  reading.send({ type: 'read', sentences, voice: speaker.voice })
})

/** What was begun, without the breaking off. */
const begun = () => speaker.heard.filter(one => one !== 'hush')

describe('a reading', () => {
  test('says one sentence after the other, and is silent at the end', () => {
    expect(reading.view()).toEqual({ state: 'speaking', at: 0, failed: false })
    speaker.end()
    speaker.end()
    expect(begun()).toEqual(sentences)
    expect(reading.view().state).toBe('speaking')
    speaker.end()
    expect(reading.view()).toMatchObject({ state: 'silent', failed: false })
  })

  test('pauses in the middle of a sentence, and goes on with its beginning', () => {
    speaker.end()
    reading.send({ type: 'pause' })
    expect(speaker.heard.at(-1)).toBe('hush')
    expect(reading.view()).toEqual({ state: 'paused', at: 1, failed: false })
    reading.send({ type: 'go-on' })
    expect(speaker.heard.at(-1)).toBe('Two.')
    speaker.end()
    expect(speaker.heard.at(-1)).toBe('Three.')
  })

  test.each(['speaking', 'paused'])('begins anew while it is %s', state => {
    speaker.end()
    if (state === 'paused') reading.send({ type: 'pause' })
    reading.send({ type: 'again' })
    expect(speaker.heard.at(-1)).toBe('One.')
    expect(reading.view()).toEqual({ state: 'speaking', at: 0, failed: false })
  })

  test.each(['speaking', 'paused'])(
    'that is stopped while %s is broken off and forgotten',
    state => {
      speaker.end()
      if (state === 'paused') reading.send({ type: 'pause' })
      reading.send({ type: 'stop' })
      expect(speaker.heard.at(-1)).toBe('hush')
      const length = speaker.heard.length
      for (const type of ['go-on', 'again', 'pause'] as const) reading.send({ type })
      speaker.end()
      expect(speaker.heard.length).toBe(length)
      expect(reading.view()).toEqual({ state: 'silent', at: 0, failed: false })
    }
  )

  test('whose voice fails is silent, says so, and can be asked for again', () => {
    speaker.end('failed')
    expect(reading.view()).toMatchObject({ state: 'silent', failed: true })
    reading.send({ type: 'read', sentences, voice: speaker.voice })
    expect(reading.view()).toEqual({ state: 'speaking', at: 0, failed: false })
  })

  test('tells of each sentence as it begins', () => {
    const at: number[] = []
    reading.subscribe(() => at.push(reading.view().at))
    speaker.end()
    speaker.end()
    expect(at).toEqual([1, 2])
  })

  test('of nothing does not begin', () => {
    const empty = createReading()
    empty.send({ type: 'read', sentences: [], voice: speaker.voice })
    expect(empty.view().state).toBe('silent')
  })
})

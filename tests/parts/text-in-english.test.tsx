import { render } from 'preact-render-to-string'
import { expect, test } from 'vitest'
import { SpeechProvider } from '../../src/parts/setting.tsx'
import { Text } from '../../src/parts/text.tsx'
import { createWords } from '../../src/words/words.ts'

const shown = (spanish: string) => {
  const texts = { en: { steps: { go: 'Call {{name}}.' } }, es: { steps: { go: spanish } } }
  const speech = {
    words: createWords(texts, 'es'),
    second: { words: createWords(texts, 'en'), shows: 'cautions' as const },
    dials: true,
    numbered: false
  }
  return render(
    <SpeechProvider value={speech}>
      <Text k="steps:go" values={{ name: '911' }} />
    </SpeechProvider>
  )
}

test('under a draft stands the English', () => {
  expect(shown('Llame al {{name}}.')).toBe(
    '<span class="first">Llame al 911.</span> <span class="second" lang="en">Call 911.</span>'
  )
})

test('English in place of a translation stands once, as English, and why after it', () => {
  expect(shown('Call {{name}}. (En inglés: anterior.)')).toBe(
    '<span lang="en">Call 911.</span> (En inglés: anterior.)'
  )
})

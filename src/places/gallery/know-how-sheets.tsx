import { knowHow, words as texts } from 'virtual:jarside/know-how'
import { KnowHowFound } from '../../parts/know-how-found.tsx'
import type { Setting } from '../../parts/setting.tsx'
import { sayKnowHow } from '../../words/know-how-text.ts'
import { wordsWith } from '../../words/words-with.ts'
import { alone, type Sheet, type State } from './sheet.ts'

const nothing = () => undefined

/** What comes of a how-to question. */
export function knowHowSheets({ words, office, today }: Setting): readonly Sheet[] {
  const joined = wordsWith(words, texts, /^(?:know-how:|ui:know-how\.)/)
  const answers = knowHow.answers.slice(0, 2).map(answer => ({
    said: sayKnowHow(answer, joined, knowHow.sources, { office, today }),
    beside: null,
    drawings: knowHow.drawings
  }))
  const state = (name: string, lead: 'emergency' | 'look' | null, found = answers): State => ({
    name,
    setting: { words: joined },
    show: (
      <KnowHowFound
        found={{ lead, ferment: null, answers: found.map(({ said }) => said.id) }}
        answers={found}
        office={office}
        today={today}
        onPick={nothing}
      />
    )
  })
  return alone(
    ['know-how-found', 'know-how-answer'],
    [
      state('two answers', null),
      state('about one jar', 'look'),
      state('an emergency', 'emergency'),
      state('not here', null, [])
    ]
  )
}

import { EMERGENCY } from '../tree/emergency.ts'
import type { SignsQuestion } from '../tree/tree.ts'
import type { MetNote, On, Turn } from './stop.ts'

/** A screen left by one of its turns, or by none of them. */
export function turnTaken({ turns }: SignsQuestion, first: number): On {
  const [taken = null] = turns.slice(first, first + 1)
  const before = taken === null ? turns : turns.slice(0, first)
  const plain = ({ signs, orUnsure }: Turn): Turn => ({ signs, orUnsure })
  return { kind: 'turn', taken: taken && plain(taken), before: before.map(plain) }
}

/** Every note that a sign of a screen can add, with the sign that adds it. */
export function notesOfSigns(question: SignsQuestion): readonly MetNote[] {
  return Object.entries(question.signs).flatMap(([sign, effects]) =>
    (['yes', 'unsure'] as const).flatMap(value =>
      // An emergency ends the walk: at no other end it can have been said.
      (effects[value].raise.includes(EMERGENCY) ? [] : effects[value].notes).map(note => ({
        note,
        when: { question: question.id, on: { kind: 'signs' as const, signs: [sign], value } }
      }))
    )
  )
}

import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate.ts'
import { emergencyTold } from '../../../src/parts/emergency-told.ts'
import {
  chooseTexts,
  emergencyTexts,
  outcomeTexts,
  questionTexts
} from '../../../src/places/kiosk/read-aloud.ts'
import { reportOn } from '../../../src/report/report.ts'
import type { Answers } from '../../../src/tree/answers.ts'
import { isAskedFromMemory } from '../../../src/tree/caution.ts'
import { must } from '../../../src/tree/must.ts'
import { say } from '../../../src/words/say.ts'
import { spokenSentences } from '../../../src/words/spoken-text.ts'
import { answerLabel } from '../../../src/words/tree-texts.ts'
import { createWords } from '../../../src/words/words.ts'
import { loadShipped } from '../../helpers/shipped.ts'
import { usualExcept } from '../../helpers/usual.ts'

const { trees, sources, words: texts } = await loadShipped()
const jar = must(trees[0], 'the first tree')
const english = createWords(texts, 'en')
const today = new Date('2026-11-25')
const UNMARKED = { some: false, seen: false }

/** What the screen of a walk shows that has come to some question. */
function askedAfter(answers: Answers, listed = false) {
  const evaluation = evaluate(jar, answers)
  const { walk } = evaluation
  const question = must(jar.observations[walk.asks?.observation ?? ''], 'the question asked')
  const container = walk.outcome.container
  const recalled = question.about !== 'person' && isAskedFromMemory(jar, container)
  const sweptWith = listed ? null : evaluation.sweptWith
  return { question, walked: walk, answers, recalled, sweptWith, listed, evaluation }
}

const saidOf = (answers: Answers, words = english) =>
  say(reportOn(evaluate(jar, answers), null, today), words, sources)

/** Whether these stand in a list in this order, with others between them. */
const inOrder = (list: readonly string[], parts: readonly (string | null | undefined)[]) => {
  const places = parts.map(part => list.indexOf(part ?? '\u0000'))
  return places.every((place, at) => place >= 0 && place > (places[at - 1] ?? -1))
}

describe('what is read of a question', () => {
  test('is what is asked, how to look, and the line over all signs with its three answers', () => {
    const read = questionTexts(askedAfter({}), english, UNMARKED)
    expect(read[0]).toBe(english.t('observations:people-signs.ask'))
    expect(read).toContain(english.t('observations:people-signs.sweep'))
    expect(read.slice(-3)).toEqual([
      english.t('ui:sweep.no'),
      english.t('ui:sweep.yes'),
      english.t('ui:not-sure')
    ])
  })

  test('is every sign in sight once they are listed, and what the buttons under them say', () => {
    const asked = askedAfter({}, true)
    const label = 'observations:people-signs.signs'
    const read = questionTexts(asked, english, UNMARKED)
    const { signs } = jar.observations['people-signs'] as {
      signs?: { id: string; volunteered: boolean }[]
    }
    for (const { id, volunteered } of signs ?? []) {
      expect(read.includes(english.t(`${label}.${id}.label`)), id).toBe(!volunteered)
    }
    expect(read.at(-2)).toBe(english.t('observations:people-signs.none'))
    const marked = questionTexts(asked, english, { some: true, seen: true })
    expect(marked.slice(-2)).toEqual([
      english.t('ui:that-is-all'),
      english.t('ui:not-sure-of-the-rest')
    ])
  })

  test('is every answer of a choice in the order of the screen, "not sure" last', () => {
    const { 'surface-texture': _, ...before } = usualExcept(jar, {})
    const upTo = Object.fromEntries(
      Object.entries(before).filter(([id]) => /signs$/.test(id))
    ) as Answers
    const asked = askedAfter(upTo)
    expect(asked.question.id).toBe('surface-texture')
    const read = questionTexts(asked, english, UNMARKED)
    const answers = read.slice(read.indexOf(english.t('ui:kiosk.answers')) + 1)
    expect(answers.length).toBeGreaterThan(9)
    expect(answers.at(-1)).toBe(answerLabel(english, 'surface-texture', 'unsure'))
    expect(answers[0]).toBe(english.t('observations:surface-texture.answers.chalky-powder.label'))
  })
})

describe('what is read of an outcome', () => {
  const moldy = usualExcept(jar, { 'surface-texture': 'dry-fuzzy' })

  test.each(Object.keys(texts))(
    'in %s: signal, verdict, reason, use, steps, calls, who must not',
    tag => {
      const words = createWords(texts, tag)
      const said = saidOf(moldy, words)
      const [verdict] = said.verdicts
      const read = outcomeTexts(said, words)
      const who = said.sections.find(({ id }) => id === 'who-must-not')
      expect(
        inOrder(read, [
          verdict?.signalWord,
          verdict?.name,
          verdict?.message,
          verdict?.why,
          said.use,
          `1. ${said.doNow[0]}`,
          words.t('ui:who-to-call'),
          said.calls[0]?.say,
          who?.title,
          who?.brief
        ])
      ).toBe(true)
      for (const step of [...said.doNow, ...said.later]) {
        expect(
          read.some(text => text.endsWith(`. ${step}`)),
          step
        ).toBe(true)
      }
    }
  )

  test('says the numbers digit by digit, and that nobody has reviewed it', () => {
    const said = saidOf(moldy)
    const read = spokenSentences(outcomeTexts(said, english), 'en')
    const phones = said.calls.flatMap(({ phone }) => phone ?? [])
    expect(phones.length).toBeGreaterThan(0)
    for (const phone of phones)
      expect(
        read.some(text => text.includes(phone)),
        phone
      ).toBe(false)
    expect(outcomeTexts(said, english).at(-1)).toBe(said.standing.draft)
  })
})

describe('what is read of an emergency', () => {
  const answers: Answers = { 'people-signs': { 'severe-symptoms': 'yes' } }

  test('is what was understood, whom to call, the steps and the numbers, and nothing else', () => {
    const evaluation = evaluate(jar, answers)
    const said = saidOf(answers)
    expect(said.emergency).toBe(true)
    const read = emergencyTexts(said, emergencyTold(jar, answers, evaluation.walk), english)
    expect(read[0]).toContain(english.t('observations:people-signs.signs.severe-symptoms.label'))
    expect(inOrder(read, [said.verdicts[0]?.signalWord, said.verdicts[0]?.message, '9 1 1'])).toBe(
      true
    )
    expect(read.at(-1)).toContain('1, 8 0 0, 2 2 2, 1 2 2 2')
    const steps = said.doNow.filter(step => step !== said.verdicts[0]?.message)
    expect(read.length).toBe(4 + steps.length + said.calls.length - 1)
  })
})

test('what is read of the choice is every ferment on offer by its name, then what of others', () => {
  const read = chooseTexts(trees.slice(0, 2), english)
  expect(read.slice(2, 4)).toEqual(trees.slice(0, 2).map(({ id }) => english.t(`${id}:title`)))
  expect(read.at(-1)).toBe(english.t('ui:something-else-how'))
})

import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { reportOn } from '../../src/report/report.ts'
import { say } from '../../src/words/say.ts'
import { LONGEST_MESSAGE, textMessage } from '../../src/words/text-message.ts'
import { createWords } from '../../src/words/words.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const { trees, words, sources } = await loadShipped()
const LINK = 'https://jarside.larkspur.example/#/es/kombucha-jar/likely-mold/never'
const TODAY = new Date('2026-11-29T12:00:00Z')

/** Every outcome that one answer away from the usual comes to. */
const outcomes = trees.flatMap(tree =>
  Object.values(tree.observations).flatMap(observation => {
    const answers =
      observation.kind === 'signs'
        ? observation.signs.map(({ id }) => ({ [id]: 'yes' as const }))
        : observation.kind === 'choice'
          ? observation.answers.map(({ id }) => id)
          : []
    return answers.map(answer => {
      const told = usualExcept(tree, { [observation.id]: answer })
      return { name: `${tree.id}, ${observation.id}`, evaluation: evaluate(tree, told) }
    })
  })
)

describe.each(['en', 'es'])('an outcome as a text message in %s', tag => {
  const spoken = createWords(words, tag)
  test('is as long as four parts allow, and never without what it is, the call and the link', () => {
    expect(outcomes.length).toBeGreaterThan(500)
    for (const { name, evaluation } of outcomes) {
      const said = say(reportOn(evaluation, null, TODAY, false), spoken, sources)
      const message = textMessage(said, LINK)
      const [first] = said.verdicts
      expect(message.startsWith(first?.message ?? first?.name ?? '?'), name).toBe(true)
      expect(message.endsWith(LINK), name).toBe(true)
      expect(message.length, `${name}: ${message}`).toBeLessThanOrEqual(LONGEST_MESSAGE)
      if (said.emergency) expect(message, name).toContain('911')
      if (first?.id === 'poison-help') expect(message, name).toContain('1-800-222-1222')
    }
  })

  test('names the call of somebody who needs help, also where a vessel may burst first', () => {
    const jar = trees.find(({ id }) => id === 'kombucha-jar')
    expect.assert(jar !== undefined)
    const told = usualExcept(jar, {
      'people-signs': { 'mild-upset': 'yes' },
      'container-signs': { 'burst-or-out-of-reach': 'yes' }
    })
    const said = say(reportOn(evaluate(jar, told), null, TODAY, false), spoken, sources)
    expect(said.verdicts.map(({ track }) => track).slice(0, 2)).toEqual(['container', 'person'])
    const message = textMessage(said, LINK)
    for (const { message: sentence } of said.verdicts.slice(0, 2)) {
      expect(message).toContain(sentence ?? '?')
    }
    expect(message).toContain('1-800-222-1222')
    expect(message.endsWith(LINK)).toBe(true)
  })
})

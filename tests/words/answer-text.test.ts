import { describe, expect, test } from 'vitest'
import type { SignValue } from '../../src/tree/answers.ts'
import type { Sign } from '../../src/tree/observation.ts'
import { answerText } from '../../src/words/answer-text.ts'
import { shippedReader, TREES } from '../reader/shipped-reader.ts'

const screens = TREES.flatMap(id => {
  const { tree, words } = shippedReader(id)
  return Object.values(tree.observations).flatMap(observation =>
    observation.kind === 'signs' && observation.signs.filter(each => !each.volunteered).length > 2
      ? [[`${id}: ${observation.id}`, observation, words] as const]
      : []
  )
})

describe('a screen of signs read back', () => {
  test.each(screens)('%s of which nothing is known is one short label', (_, screen, all) => {
    const [first, ...rest] = screen.signs.filter(each => !each.volunteered)
    const unsure = (ids: readonly Sign[]) =>
      Object.fromEntries(ids.map(({ id }) => [id, 'unsure' as SignValue]))
    for (const words of all) {
      const whole = answerText(words, screen, unsure(screen.signs))
      expect(whole).toBe(words.t(`observations:${screen.id}.unsure`))
      const seen = first?.id ?? ''
      const known = answerText(words, screen, { [seen]: 'yes', ...unsure(rest) })
      expect(known).toBe(
        `${words.t(`observations:${screen.id}.signs.${seen}.label`)}; ${words.t('ui:unsure-of-rest')}`
      )
    }
  })

  test.each(screens)('%s names the one sign that is not known', (_, screen, [words]) => {
    const [first, second] = screen.signs.filter(each => !each.volunteered)
    if (!first || !second || !words) throw new Error('two signs and a language')
    const text = answerText(words, screen, { [first.id]: 'unsure', [second.id]: 'no' })
    expect(text).toContain(words.t(`observations:${screen.id}.signs.${first.id}.label`))
  })
})

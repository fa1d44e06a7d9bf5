import { describe, expect, test } from 'vitest'
import { textsIn } from '../../src/load/texts.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { words, trees } = await loadShipped()

/** The signs that a screen's hint lists, one by one. */
const SIGNS: readonly (readonly [sign: string, caution: string])[] = [
  ['severe-symptoms', 'call-911'],
  ['illness-signs', 'call-doctor']
]

/** The words that say what is meant, whatever joins them in a list. */
const wordsIn = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}°.]+/u)
    .map(word => word.replace(/\.$/, ''))
    .filter(word => word.length > 3 || /\d/.test(word))

describe.each(['en', 'es'])('what to watch for, in %s', tag => {
  const asked = textsIn(words[tag]?.observations)

  test.each(trees.map(({ id }) => id))('%s lists every sign that the first screen asks for', id => {
    const said = textsIn(words[tag]?.[id])
    for (const [sign, caution] of SIGNS) {
      const hint = asked.get(`people-signs.signs.${sign}.hint`) ?? ''
      const list = wordsIn(said.get(`cautions.${caution}`) ?? '')
      expect(hint).not.toBe('')
      const left = wordsIn(hint).filter(word => !list.includes(word))
      // "Cannot keep liquids down" and "pregnant" are said in other words there.
      expect(left.filter(word => !OTHERWISE.has(word))).toEqual([])
    }
  })
})

const OTHERWISE = new Set(['cannot', 'keep', 'pregnant', 'with', 'puede', 'retener', 'embarazo'])

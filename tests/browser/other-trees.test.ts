import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import { type Answers, isInterval } from '../../src/tree/answers.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'
import { axeFaults } from './axe.ts'
import { cutOff, spilling } from './layout.ts'
import { begin, playOn, verdictsOn } from './play.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const { trees } = await loadShipped()
const others = trees.slice(1)

/** An ordinary, untroubled batch, of which nobody knows what would have to be worked out. */
function ordinary(tree: Tree): Answers {
  const derived = Object.values(tree.observations).filter(
    one => one.kind === 'measure' && one.derived !== undefined
  )
  return usualExcept(tree, Object.fromEntries(derived.map(({ id }) => [id, 'unsure'])))
}

/** The same as a caller tells it on the screens. */
function told(tree: Tree): Readonly<Record<string, string | readonly string[]>> {
  return Object.fromEntries(
    Object.entries(ordinary(tree)).map(([id, answer]) => {
      if (typeof answer === 'string') return [id, answer]
      if (!isInterval(answer)) return [id, []]
      const { [id]: observation } = tree.observations
      const [instrument] = observation?.kind === 'measure' ? observation.instruments : []
      return [id, [`${answer.reading}`, ...(instrument === undefined ? [] : [instrument.id])]]
    })
  )
}

/** Everything that is wrong with a screen, its folds open. */
async function faultsOf(page: Page): Promise<readonly string[]> {
  await page.locator('details').evaluateAll(folds => {
    for (const fold of folds) fold.setAttribute('open', '')
  })
  return [...(await spilling(page)), ...(await cutOff(page)), ...(await axeFaults(page))]
}

describe('every ferment is asked about from its drawing to its outcome', () => {
  test.each(others)('$id, on a phone and in Spanish', async tree => {
    const { page } = await visit({ viewport: { width: 360, height: 740 } }, { hash: '#/es/' })
    await page.locator('html[lang="es"]').waitFor()
    expect(await faultsOf(page)).toEqual([])
    await begin(page, tree.id)
    const faults: string[] = []
    await playOn(page, told(tree), null, async screen => {
      faults.push(...(await faultsOf(page)).map(fault => `${screen ?? 'outcome'}: ${fault}`))
    })
    expect(faults).toEqual([])
    const { outcome } = walk(tree, ordinary(tree))
    expect(await verdictsOn(page)).toEqual(
      [outcome.person, outcome.container, outcome.batch].filter(verdict => verdict !== null)
    )
  })
})

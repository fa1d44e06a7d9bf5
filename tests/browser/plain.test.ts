import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { plainFiles } from '../../src/cli/plain.ts'
import { wordsOfTree } from '../../src/cli/words-of-tree.ts'
import { follow } from '../../src/plain/follow.ts'
import type { Exit, PlainWalk } from '../../src/plain/stop.ts'
import { unfold } from '../../src/plain/unfold.ts'
import { randomNumbers } from '../../src/science/random-numbers.ts'
import { at, must } from '../../src/tree/must.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { answerLabel } from '../../src/words/tree-texts.ts'
import { verdictText } from '../../src/words/verdict-text.ts'
import { createWords, type Words } from '../../src/words/words.ts'
import { runCommand } from '../cli/run-command.ts'
import { JARS } from '../helpers/jars.mjs'
import { openShipped } from '../helpers/shipped.ts'
import { randomAnswers } from '../tables/table-answers.ts'
import { axeFaults } from './axe.ts'
import { touchLanguage, verdictsShown } from './kiosk.ts'
import { play } from './play.ts'
import { workerBrowser } from './worker-browser.ts'

const folder = mkdtempSync(join(tmpdir(), 'jarside-plain-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const address = (name: string) => new URL(name, `${pathToFileURL(folder).href}/`).href

const project = await openShipped()
const tree = must(
  project.loaded.trees.find(({ id }) => id === 'kombucha-jar'),
  'tree'
)
const plain = unfold(tree)
const { texts } = wordsOfTree(tree, project.loaded)
const TODAY = new Date('2026-11-30')

beforeAll(() => {
  for (const { name, text } of plainFiles(project, [tree], ['en', 'es'], TODAY)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true })
    writeFileSync(join(folder, name), text)
  }
})

/** The link of an exit, by what is written on it. */
function nameOf(words: Words, walk: PlainWalk, stop: number, { on }: Exit, said: unknown): string {
  const { question, exits } = at(walk.stops, stop)
  const asks = must(tree.questions[question], 'question').asks
  if (on.kind === 'answers') return answerLabel(words, asks, String(said))
  if (on.kind !== 'signs') return words.t('ui:plain.go-on')
  const one = exits.every(exit => exit.on.kind !== 'signs' || exit.on.signs.length === 1)
  if (on.value === 'unsure') return words.t(one ? 'ui:not-sure' : 'ui:plain.not-sure-one')
  if (on.value === 'yes') return words.t(one ? 'ui:plain.yes' : 'ui:plain.yes-one')
  return words.t(one ? 'ui:plain.no' : 'ui:plain.none')
}

/** Where an exit says that it leads. */
function onwards(
  words: Words,
  { stops, numbers }: PlainWalk,
  stop: number,
  { leads }: Exit
): string {
  if ('end' in leads) return words.t('ui:plain.on-end')
  const { question } = at(stops, leads.stop)
  if (question === at(stops, stop).question) return words.t('ui:plain.on-here')
  return words.t('ui:plain.on', { number: must(numbers.get(question), 'number') })
}

const exactly = (text: string): RegExp =>
  new RegExp(`^${text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}$`)

/** Follows the links of the written pages, as somebody with these answers who can run no script. Readings are not known: they stand under their instruments. */
async function clickThrough(page: Page, words: Words, of: Tree, next: () => number) {
  const drawn = Object.entries(randomAnswers(of, next)).filter(
    ([id]) => of.observations[id]?.kind !== 'measure'
  )
  const followed = follow(of, plain, Object.fromEntries(drawn))
  await page.goto(address(`${words.tag}/${of.id}/index.html`))
  await page.getByRole('link', { name: words.t('ui:plain.begin') }).click()
  let stop = 0
  for (const exit of followed.exits) {
    const said = followed.said.get(at(plain.stops, stop).question)
    const name = nameOf(words, plain, stop, exit, said)
    const whole = `${name} ${onwards(words, plain, stop, exit)}`
    await page
      .locator('.from:target .ways a')
      .filter({ hasText: exactly(whole) })
      .click()
    if ('stop' in exit.leads) stop = exit.leads.stop
  }
  const end = at(plain.ends, followed.end)
  return { end, heading: (await page.locator('h1').textContent()) ?? '' }
}

describe('without a script, from files, with no server', () => {
  for (const tag of ['en', 'es']) {
    test(`the links lead to the verdict, in ${tag}`, async () => {
      const browser = await workerBrowser()
      const context = await browser.newContext({ javaScriptEnabled: false })
      const page = await context.newPage()
      const words = createWords(texts, tag)
      const next = randomNumbers(20261130)
      for (let jar = 0; jar < 2; jar++) {
        const { end, heading } = await clickThrough(page, words, tree, next)
        const names = [end.person, end.container, end.batch].flatMap(id =>
          id === null ? [] : [verdictText(words, tree.id, id, 'name')]
        )
        expect(names.some(name => heading.includes(name))).toBe(true)
      }
      await context.close()
    })
  }

  test('nothing runs off the side at 320 pixels, and axe finds nothing, in the light and in the dark', async () => {
    const browser = await workerBrowser()
    for (const colorScheme of ['light', 'dark'] as const) {
      const context = await browser.newContext({
        viewport: { width: 320, height: 640 },
        colorScheme
      })
      const page = await context.newPage()
      const ask = plain.stops.findIndex(
        ({ question }) => tree.questions[question]?.kind === 'measure'
      )
      const { question } = at(plain.stops, ask)
      for (const name of [
        ...['index.html', 'es/index.html', 'es/kombucha-jar/index.html'],
        `es/kombucha-jar/${question}-1.html#s${ask}`,
        ...['es/kombucha-jar/people-signs-1.html#s0', 'es/kombucha-jar/end-3.html']
      ]) {
        await page.goto(address(name))
        const wide = await page.evaluate(() => document.documentElement.scrollWidth)
        expect(`${name} ${wide}`).toBe(`${name} 320`)
        expect(await axeFaults(page, colorScheme)).toEqual([])
      }
      await context.close()
    }
  })
})

describe('the kiosk as one file, with no server and no network', () => {
  const file = join(folder, 'kiosk.html')
  beforeAll(async () => {
    const packed = await runCommand([
      ...['pack', '--single-file', '--built', inject('built'), '--out', file],
      ...['--tree', 'kombucha-jar', '--lang', 'es']
    ])
    expect(packed).toMatchObject({ code: 0, errors: '' })
  })

  test.each(['en', 'es'])('tells a fuzzy spot, in %s, and asks for nothing', async tag => {
    const context = await (await workerBrowser()).newContext({ offline: true })
    context.setDefaultTimeout(240_000)
    const page = await context.newPage()
    const asked: string[] = []
    const faults: string[] = []
    page.on('request', request => asked.push(request.url()))
    page.on('console', message => faults.push(message.text()))
    page.on('pageerror', error => faults.push(error.message))
    await page.goto(pathToFileURL(file).href)
    await touchLanguage(page, tag)
    await play(page, JARS['white-fuzz'] ?? {}, async screen => {
      if (screen !== 'surface-texture') return
      expect(await page.locator('.card .picture > svg').count()).toBeGreaterThan(9)
    })
    expect(await verdictsShown(page)).toEqual(['likely-mold'])
    const words = createWords(texts, tag)
    expect(await page.locator('.outcome').textContent()).toContain(
      verdictText(words, tree.id, 'likely-mold', 'name')
    )
    // The office's own number, and a typeface, are in the file.
    expect(await page.locator('.foot-office').textContent()).toContain('555-0110')
    const loaded = await page.evaluate(() =>
      [...document.fonts].filter(({ status }) => status === 'loaded').map(({ family }) => family)
    )
    expect(loaded.join()).toContain('Literata')
    expect(asked.filter(url => !url.startsWith('data:'))).toEqual([pathToFileURL(file).href])
    expect(faults).toEqual([])
    await context.close()
  })
})

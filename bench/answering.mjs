import { JARS } from '../tests/helpers/jars.mjs'
import { median, quantile, tenth } from './figures.mjs'

const MEASURES = ['jar-ph', 'day']
const LEAST = 40
/** What 95 of 100 answers may take, in times of what an empty screen takes. */
const GOAL = 2

/** From an answer pressed to the next screen painted, over the walks of all the jars there are. */
export async function measureAnswers(browser, address) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } })
  const page = await context.newPage()
  const session = await context.newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  const times = []
  const slowest = { ms: 0, screen: '' }
  for (const jar of Object.values(JARS)) {
    await page.goto('about:blank')
    await page.goto(`${address}#/kombucha-jar`)
    await page.waitForSelector('.question')
    await page.waitForLoadState('networkidle')
    for (;;) {
      const screen = await prepared(page, jar)
      if (screen === null) break
      const ms = await page.evaluate(pressed, screen.button)
      times.push(ms)
      if (ms > slowest.ms) Object.assign(slowest, { ms, screen: screen.observation })
    }
  }
  const idleMs = median(await page.evaluate(twoFrames))
  const p95Ms = quantile(times, 0.95)
  await context.close()
  if (times.length < LEAST) throw new Error(`only ${times.length} answers were given`)
  return {
    answers: times.length,
    medianMs: median(times),
    p95Ms,
    maxMs: quantile(times, 1),
    // What is measured when nothing happens at all: the wait for two frames.
    idleMs,
    // The goal is twice the empty screen.
    timesIdle: tenth(p95Ms / idleMs),
    goal: GOAL,
    slowestScreen: slowest.screen
  }
}

/** Marks and types what the jar's caller tells; gives the button that sends it, or null at the outcome. */
async function prepared(page, jar) {
  const question = page.locator('.question')
  if ((await question.count()) === 0) return null
  const observation = await question.getAttribute('data-observation')
  const answer = jar[observation]
  if (answer === undefined) throw new Error(`this jar says nothing of ${observation}`)
  if (typeof answer === 'string')
    return { observation, button: `.question [data-answer="${answer}"]` }
  if (MEASURES.includes(observation)) {
    const [reading, instrument] = answer
    if (instrument !== undefined) await page.check(`.question input[value="${instrument}"]`)
    await page.fill(`#measure-${observation}`, reading)
    return { observation, button: '.question [type="submit"]' }
  }
  for (const sign of answer) await page.check(`[data-sign="${sign}"]`)
  return { observation, button: '.question [data-answer="none"]' }
}

/** Runs in the page: presses, waits until another screen stands there, and for two frames more. */
function pressed(button) {
  const shown = () => document.querySelector('.question')?.getAttribute('data-observation') ?? 'end'
  const before = shown()
  const frame = () => new Promise(requestAnimationFrame)
  const start = performance.now()
  document.querySelector(button).click()
  return (async () => {
    // Drawing may be put off to a task of its own: look again after each, not only after each frame.
    const { port1, port2 } = new MessageChannel()
    const task = () =>
      new Promise(done => {
        port1.onmessage = done
        port2.postMessage(null)
      })
    while (shown() === before) await task()
    await frame()
    await frame()
    return performance.now() - start
  })()
}

/** Runs in the page: how long two frames take when nothing is to be drawn, time after time. */
async function twoFrames() {
  const frame = () => new Promise(requestAnimationFrame)
  const times = []
  for (let run = 0; run < 20; run++) {
    const start = performance.now()
    await frame()
    await frame()
    times.push(performance.now() - start)
  }
  return times
}

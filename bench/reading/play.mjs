import { seen } from './seen.mjs'

/** The places a caller comes to, each in the window that it is used in. */
export const PLACES = {
  page: { width: 390, height: 844 },
  kiosk: { width: 1080, height: 1920 },
  embed: { width: 390, height: 844 },
  desk: { width: 1280, height: 800 }
}

const MOST_SCREENS = 40

/** Somebody else's page that holds nothing but its heading and the element. */
export const hostPage = (tree, language) => `<!doctype html><html lang="${language}">
<meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Host</title>
<script type="module" src="./jarside-walk.js"></script><style>body { margin: 0 }</style>
<jarside-walk tree="${tree}" lang="${language}"></jarside-walk>`

/**
 * Plays one caller in one place and language to the outcome. `answerTo` gives what the caller answers to an
 * observation, as `callers.ts` makes it; at the desk the call begins with what the caller `says`. Gives what
 * was seen on every screen, the last one being the outcome, with the presses that led on from it.
 *
 * @throws Error when the desk takes something that is not so.
 */
export async function play(browser, address, { place, language, tree, says, answerTo }) {
  const context = await browser.newContext({ viewport: PLACES[place], locale: 'en-US' })
  const page = await context.newPage()
  const faults = []
  page.on('pageerror', error => faults.push(error.message))
  const screens = []
  const look = async observation => {
    await page.evaluate(painted)
    screens.push({ observation, presses: 0, ...(await page.evaluate(seen)) })
  }
  const press = async target => {
    await target.click()
    screens.at(-1).presses++
  }
  try {
    const opening = await opened(page, address, { place, language, tree, look, press })
    const before = opening + (place === 'desk' ? await volunteered(page, says, answerTo) : 0)
    for (let screen = 0; ; screen++) {
      const question = page.locator('.question')
      await page.locator('.question, .outcome, .emergency').first().waitFor()
      if ((await question.count()) === 0) break
      if (screen === MOST_SCREENS) throw new Error('the walk does not end')
      const observation = await question.getAttribute('data-observation')
      await look(observation)
      const early = page.locator('[data-action="stop-here"]')
      if ((await early.count()) > 0) {
        await press(early)
        await page.locator('.outcome, .emergency').first().waitFor()
        break
      }
      await answered(page, question, observation, answerTo, press, look)
      const next = `.question:not([data-observation="${observation}"]), .outcome, .emergency`
      await page.locator(next).first().waitFor()
    }
    await look(null)
    screens[0].presses += before
    if (faults.length > 0) throw new Error(faults.join('\n'))
  } finally {
    await context.close()
  }
  return screens
}

/** Opens the place as its user comes to it, up to the first question; gives the presses that no screen has counted. */
async function opened(page, address, { place, language, tree, look, press }) {
  let presses = 0
  switch (place) {
    case 'page':
      await page.goto(`${address}#/${language === 'en' ? '' : `${language}/`}`)
      await page.locator('.choose').waitFor()
      await page.waitForLoadState('networkidle')
      await look('choose')
      await press(page.locator(`[data-tree="${tree}"]`))
      break
    case 'kiosk':
      await page.goto(`${address}kiosk.html`)
      await page.locator('.start').waitFor()
      await look('start')
      await press(page.locator(`.start [data-language="${language}"]`))
      await page.locator('[data-tree]').first().waitFor()
      await look('choose')
      await press(page.locator(`[data-tree="${tree}"]`))
      break
    case 'embed':
      await page.goto(`${address}host-${tree}-${language}.html`)
      break
    case 'desk': {
      await page.goto(`${address}desk.html`)
      await page.locator('.desk .question').waitFor()
      const chosen = page.locator('.desk-tree')
      if ((await chosen.inputValue()) !== tree) {
        await chosen.selectOption(tree)
        presses++
        await page.waitForLoadState('networkidle')
      }
      if (language !== 'en') {
        await page.locator(`.desk-head [data-language="${language}"]`).click()
        presses++
        await page.locator(`.question .second[lang="${language}"]`).first().waitFor()
      }
      break
    }
  }
  await page.locator('.question').waitFor()
  await page.waitForLoadState('networkidle')
  return presses
}

/** Types what a caller says and takes of the offers what is so; gives the keys that it takes. */
async function volunteered(page, says, answerTo) {
  const field = page.locator('.fact-input')
  await field.fill(says)
  await field.press('Enter')
  await page.locator('.fact-message p, .fact').first().waitFor()
  // A line and its Enter are one.
  let keys = 1
  for (;;) {
    const offers = await page.locator('.fact-candidate').evaluateAll(factsOf)
    const index = offers.findIndex(fact => isTold(fact, answerTo))
    if (index < 0) break
    for (let down = 0; down <= index; down++) await field.press('ArrowDown')
    await field.press('Enter')
    keys += index + 2
  }
  for (const fact of await page.locator('.fact').evaluateAll(factsOf)) {
    if (!isTold(fact, answerTo)) throw new Error(`“${says}” is taken as ${JSON.stringify(fact)}`)
  }
  // It leaves the field: from here on keys answer.
  await field.press('Escape')
  return keys + 1
}

/** Runs in the page: the facts that elements stand for, each an observation and its answer. */
function factsOf(elements) {
  return elements.map(element => JSON.parse(element.getAttribute('data-fact') ?? '[]'))
}

/** Whether a fact is what the caller would answer: the same answer, reading or sign. */
function isTold([observation, answer], answerTo) {
  const truth = answerTo(observation)
  if (typeof answer === 'string' || typeof truth === 'string') return answer === truth
  if (truth === undefined) return false
  return answer.every(([key, value]) => (key === 'instrument' ? true : truth[key] === value))
}

/** Gives one answer: what is there is marked or typed, then sent. */
async function answered(page, question, observation, answerTo, press, look) {
  const answer = answerTo(observation)
  if (typeof answer === 'string') {
    await press(question.locator(`[data-answer="${answer}"]`))
    return
  }
  if ('reading' in answer) {
    if (answer.instrument !== undefined) {
      await press(question.locator(`label:has(input[value="${answer.instrument}"])`))
    }
    const field = page.locator(`#measure-${observation}`)
    // A number and its Enter are one.
    await field.fill(`${answer.reading}`)
    await press(question.locator('[type="submit"]'))
    return
  }
  const values = Object.entries(answer)
  const sweep = question.locator('.sweep [data-answer="some"]')
  const along = question.locator('[data-along]')
  const second = (await along.count()) > 0 ? await along.getAttribute('data-along') : observation
  const some = signs => Object.values(signs).some(value => value !== 'no')
  // One line over all signs, or two over those of two screens: whoever has one of them reads the list too.
  if ((some(answer) || some(answerTo(second))) && (await sweep.count()) > 0) {
    await press(sweep)
    await look(observation)
  }
  for (const [sign, value] of values) {
    if (value === 'yes') await press(question.locator(`label[for="${observation}-${sign}"]`))
  }
  const rest = values.some(([, value]) => value === 'unsure') ? 'unsure' : 'none'
  await press(question.locator(`[data-answer="${rest}"]`))
}

/** Runs in the page: until what was drawn is painted, in its own letters. */
async function painted() {
  await document.fonts.ready
  const frame = () => new Promise(requestAnimationFrame)
  await frame()
  await frame()
}

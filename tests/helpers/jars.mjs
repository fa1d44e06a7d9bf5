/**
 * Jars to play in a browser, by the answers their callers give: `none`, `unsure`, an answer id, a list of
 * signs, or a reading with its instrument. `look`: the screens worth a picture on the way.
 */
const well = {
  'people-signs': 'none',
  'container-signs': 'none',
  'jar-signs': 'none',
  drinkers: 'none'
}
const sour = { 'jar-ph': ['3.2', 'meter'], day: ['9'] }
const plain = { 'spots-and-color': 'plain-color', 'smell-and-liquid': 'none' }

export const JARS = {
  'new-film': {
    ...well,
    'surface-texture': 'wet-film',
    ...plain,
    day: ['4'],
    'starter-kind': 'mature-liquid',
    look: ['people-signs', 'surface-texture', 'day']
  },
  'merging-islands': { ...well, 'surface-texture': 'wet-islands', ...plain, ...sour },
  strands: { ...well, 'surface-texture': 'strands-or-sediment', ...plain, ...sour },
  blisters: { ...well, 'surface-texture': 'wet-bumps-or-blisters', ...plain, ...sour },
  'white-fuzz': { ...well, 'surface-texture': 'dry-fuzzy' },
  'green-fuzz': {
    ...well,
    'jar-signs': ['continuous-vessel'],
    'surface-texture': 'unsure',
    'side-light': 'hairs-or-powder',
    look: ['side-light']
  },
  'wrinkled-film': {
    ...well,
    'surface-texture': 'flat-wrinkled-film',
    'looked-before': 'first-look',
    'jar-ph': ['3.4', 'meter'],
    ...plain,
    day: ['8']
  },
  'pink-with-hibiscus': {
    ...well,
    'surface-texture': 'wet-film',
    ...plain,
    'spots-and-color': 'even-tint',
    'colored-ingredient': 'added',
    ...sour,
    look: ['spots-and-color']
  },
  'pink-without': {
    ...well,
    'surface-texture': 'wet-film',
    'spots-and-color': 'even-tint',
    'colored-ingredient': 'not-added'
  },
  maggots: { ...well, 'jar-signs': ['insects-inside'], 'surface-texture': 'wet-film' },
  'day-nine-by-strip': {
    ...well,
    'surface-texture': 'wet-film',
    ...plain,
    'jar-ph': ['4.4', 'narrow-strip'],
    day: ['9'],
    'looked-before': 'first-look',
    look: ['smell-and-liquid', 'day']
  },
  'somebody-ill': {
    'people-signs': ['illness-signs'],
    drinkers: ['someone-drank'],
    'container-signs': 'none',
    'jar-signs': 'none',
    'surface-texture': 'dry-fuzzy'
  },
  emergency: { 'people-signs': ['severe-symptoms'] },
  'burst-jar': {
    ...well,
    'container-signs': ['burst-or-out-of-reach'],
    'surface-texture': 'wet-film',
    ...plain,
    ...sour
  },
  'lead-pot': { ...well, 'jar-signs': ['lead-risk-vessel'], 'surface-texture': 'wet-film' }
}

/** Plays a jar from the first screen to its outcome; calls `each` on every screen before it is answered. */
export async function playJar(page, jar, each = () => undefined) {
  await page.click('[data-tree="kombucha-jar"]')
  for (let screen = 0; screen < 14; screen++) {
    await page.waitForSelector('.question, .outcome, .emergency')
    if ((await page.locator('.question').count()) === 0) return
    const observation = await page.locator('.question').getAttribute('data-observation')
    await page.waitForTimeout(0)
    await each(observation)
    await answer(page, observation, jar)
  }
  throw new Error('the walk does not end')
}

async function answer(page, observation, jar) {
  const told = jar[observation]
  if (told === undefined) throw new Error(`this jar says nothing of ${observation}`)
  const sweep = page.locator('.question .sweep')
  // One line over all signs comes first, also over those of the next screen; any answer but no opens the list.
  if ((await sweep.count()) > 0) {
    const along = sweep.locator('[data-along]')
    const second = (await along.count()) > 0 ? await along.getAttribute('data-along') : observation
    if (told !== 'none' || jar[second] !== 'none')
      await sweep.locator('[data-answer="some"]').click()
  }
  if (typeof told === 'string') {
    await page.click(`.question [data-answer="${told}"]`)
    return
  }
  if (observation === 'jar-ph' || observation === 'day') {
    const [reading, instrument] = told
    if (instrument !== undefined) await page.check(`.question input[value="${instrument}"]`)
    await page.fill(`#measure-${observation}`, reading)
    await page.click('.question [type="submit"]')
    return
  }
  for (const sign of told) await page.check(`[data-sign="${sign}"]`)
  await page.click('.question [data-answer="none"]')
}

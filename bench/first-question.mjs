import { median } from './figures.mjs'

const RUNS = 5
/** 400 kbit/s each way, 400 ms there and back. */
const SLOW_NETWORK = {
  offline: false,
  latency: 400,
  downloadThroughput: 400_000 / 8,
  uploadThroughput: 400_000 / 8
}

/** From navigation to the first question painted, in a page or in an element of ours, and what came over the wire for it. */
export async function measureFirstQuestion(browser, address) {
  const slow = []
  const quick = []
  for (let run = 0; run < RUNS; run++) {
    slow.push(await visited(browser, address, SLOW_NETWORK))
    quick.push(await visited(browser, address, null))
  }
  const times = (visits, key) => median(visits.map(visit => visit[key]))
  return {
    runs: RUNS,
    bytes: slow[0].bytes,
    slowNetworkMs: times(slow, 'questionMs'),
    slowNetworkFirstScreenMs: times(slow, 'screenMs'),
    cpuOnlyMs: times(quick, 'questionMs')
  }
}

async function visited(browser, address, network) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } })
  const page = await context.newPage()
  const session = await context.newCDPSession(page)
  await session.send('Network.enable')
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  if (network !== null) await session.send('Network.emulateNetworkConditions', network)
  const files = listenTo(session)
  await page.addInitScript(watchForQuestion)
  await page.goto(address)
  await page.waitForFunction(() => window.questionMs !== undefined)
  const { questionMs, screenMs } = await page.evaluate('({ questionMs, screenMs })')
  // Fonts and drawings may still be on their way: they count too, by themselves.
  await page.waitForLoadState('networkidle')
  await context.close()
  return { questionMs, screenMs, bytes: bytesOf(files(), questionMs) }
}

/** Runs in the page before anything else: notes when the first screen and the first question stand painted. */
function watchForQuestion() {
  const painted = then => requestAnimationFrame(() => requestAnimationFrame(then))
  const watch = (selector, name) => {
    const look = () => {
      const element = document.querySelector('jarside-walk')?.shadowRoot
      const there = document.querySelector(selector) ?? element?.querySelector(selector)
      if (!there) requestAnimationFrame(look)
      else
        painted(() => {
          window[name] = performance.now()
        })
    }
    look()
  }
  watch('.masthead', 'screenMs')
  watch('.question', 'questionMs')
}

/** What the browser says of each file: its kind, when it was there, how many bytes it took with its headers. */
function listenTo(session) {
  const files = new Map()
  let start
  session.on('Network.requestWillBeSent', ({ requestId, request, timestamp }) => {
    start ??= timestamp
    files.set(requestId, { url: request.url, bytes: 0, atMs: Number.POSITIVE_INFINITY })
  })
  session.on('Network.responseReceived', ({ requestId, type }) => {
    Object.assign(files.get(requestId) ?? {}, { kind: type.toLowerCase() })
  })
  session.on('Network.loadingFinished', ({ requestId, encodedDataLength, timestamp }) => {
    Object.assign(files.get(requestId) ?? {}, {
      bytes: encodedDataLength,
      atMs: (timestamp - start) * 1000
    })
  })
  return () => [...files.values()]
}

function bytesOf(files, questionMs) {
  const sum = chosen => chosen.reduce((total, { bytes }) => total + bytes, 0)
  const kinds = [...new Set(files.map(({ kind }) => kind))].sort()
  return {
    requests: files.length,
    all: sum(files),
    beforeTheQuestion: sum(files.filter(({ atMs }) => atMs <= questionMs)),
    byKind: Object.fromEntries(
      kinds.map(kind => [kind, sum(files.filter(file => file.kind === kind))])
    )
  }
}

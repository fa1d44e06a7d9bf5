import { once } from 'node:events'
import { createWriteStream } from 'node:fs'

const TREES = ['kombucha-jar', 'kombucha-bottle', 'brined-vegetables', 'sourdough-starter']
const BATCH = ['normal-growth', 'yeast-strands', 'wait-and-recheck', 'likely-mold']
const METHODS = ['phone', 'phone', 'call-back', 'walk-in', 'email']
const TOPICS = ['canning', 'pickling', 'freezing', 'drying']

/** A made-up record, another one for each number; about one in twenty is a later edit of an earlier one. */
export function madeUp(number) {
  const of = number % 20 === 19 ? number - 7 : number
  const hex = Math.imul(of + 1, 0x9e3779b1) >>> 0
  const id = hex.toString(16).padStart(8, '0')
  const about = of % 3 === 0
  const day = new Date(Date.UTC(2024, 0, 1 + (of % 1096)))
  return {
    kind: 'contact',
    id: `${id}-0000-4000-8000-${of.toString(16).padStart(12, '0')}`,
    edit: of === number ? 0 : 1,
    mark: (Math.imul(number + 1, 0x85ebca6b) >>> 0).toString(16).padStart(8, '0'),
    date: day.toISOString().slice(0, 10),
    volunteer: (of % 40) + 1,
    tree: about ? null : TREES[of % 4],
    edition: about ? null : 1,
    fingerprint: about ? null : '0123456789ab',
    topic: about ? TOPICS[of % 4] : null,
    referred: false,
    batch: about ? null : BATCH[(of >> 2) % 4],
    container: null,
    sheet: of % 2 === 0,
    referral: of % 9 === 0 ? 'state-specialist' : null,
    method: METHODS[of % 5],
    direct: of % 5 !== 4,
    count: 1,
    minutes: of % 17,
    language: of % 6 === 0 ? 'es' : 'en',
    area: of % 11 === 0 ? null : `99${String(1 + (of % 120)).padStart(3, '0')}`,
    knowHow: null,
    state: of % 25 === 0 ? 'pending' : 'resolved',
    review: false
  }
}

/** Writes so many lines of one log to a file. */
export async function writeLog(file, from, until) {
  const stream = createWriteStream(file)
  for (let index = from; index < until; index++) {
    if (!stream.write(`${JSON.stringify(madeUp(index))}\n`)) await once(stream, 'drain')
  }
  stream.end()
  await once(stream, 'finish')
}

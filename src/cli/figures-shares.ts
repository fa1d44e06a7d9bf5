import { readFileSync } from 'node:fs'
import { askedObservations, type Counted } from '../figures/shares.ts'
import { nearestNames } from '../findings/nearest-name.ts'
import type { Answer, Signs, SignValue } from '../tree/answers.ts'
import type { Observation, SignsObservation } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import { readAnswer, readSign } from './read-answer.ts'

/** What a file of shares says, and one sentence for each thing in it that cannot be meant. */
export interface ReadShares {
  readonly counted: Counted
  readonly faults: readonly string[]
}

/** The text of the file that `--shares` names. @throws BadUse where it cannot be read. */
export function sharesText(file: string): string {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    throw new BadUse(`\`${file}\` cannot be read. Name a JSON file of counts.`)
  }
}

/**
 * Reads `{ "<observation>": { "<answer>": count } }`. Answers are written as on the command line; of a
 * screen of signs `none`, `unsure`, a sign, or several joined by `+`.
 */
export function readShares(tree: Tree, text: string): ReadShares {
  const file = parsed(text)
  if (!isRecord(file)) {
    const faults = ['The file is no JSON object of observations, each with its answers and counts.']
    return { counted: {}, faults }
  }
  const asked = askedObservations(tree)
  const counted: Record<string, { answer: Answer; count: number }[]> = {}
  const faults: string[] = []
  for (const [id, counts] of Object.entries(file)) {
    const observation = asked.find(one => one.id === id)
    if (observation === undefined) faults.push(notAsked(tree, asked, id))
    else if (!isRecord(counts))
      faults.push(`\`${id}\` needs an object of answers and their counts.`)
    else {
      const read = readCounts(observation, counts)
      faults.push(...read.faults)
      counted[id] = read.counts
    }
  }
  return { counted, faults }
}

function readCounts(observation: Observation, counts: Readonly<Record<string, unknown>>) {
  const faults: string[] = []
  const read = Object.entries(counts).flatMap(([said, count]) => {
    if (typeof count !== 'number' || !Number.isSafeInteger(count) || count < 0) {
      faults.push(
        `\`${observation.id}\`: the count of \`${said}\` must be a whole number, 0 or more.`
      )
      return []
    }
    try {
      return [{ answer: answerOf(observation, said), count }]
    } catch (error) {
      if (!(error instanceof BadUse)) throw error
      faults.push(error.message)
      return []
    }
  })
  if (faults.length === 0 && read.every(({ count }) => count === 0)) {
    faults.push(`\`${observation.id}\` has no answer that was ever given: leave it out.`)
  }
  return { counts: read, faults }
}

function answerOf(observation: Observation, said: string): Answer {
  return observation.kind === 'signs'
    ? signsSaid(observation, said)
    : readAnswer(observation, said.trim())
}

/** A whole screen: the signs named, the others no; or all of them unsure. */
function signsSaid(observation: SignsObservation, said: string): Answer {
  const all = (value: SignValue): Signs =>
    Object.fromEntries(
      observation.signs.filter(sign => !sign.volunteered).map(({ id }) => [id, value])
    )
  const named = said.split('+').map(part => part.trim())
  if (named.length === 1 && named[0] === 'none') return all('no')
  if (named.length === 1 && named[0] === 'unsure') return all('unsure')
  const signs = named.map(part => {
    if (part !== 'none' && part !== 'unsure') return readSign(observation, part)
    throw new BadUse(`\`${observation.id}\`: \`${part}\` stands alone, not beside other signs.`)
  })
  return Object.assign({}, all('no'), ...signs)
}

function notAsked(tree: Tree, asked: readonly Observation[], id: string): string {
  const near = didYouMean(
    nearestNames(
      id,
      asked.map(one => one.id)
    )
  )
  return `\`${tree.id}\` does not ask \`${id}\`.${near}`
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

import { answersToKeep } from '../evaluate/keep.ts'
import type { Answer, Answers, SignValue } from '../tree/answers.ts'
import { isInterval, isSignValue } from '../tree/answers.ts'
import type { Observation } from '../tree/observation.ts'
import { measured } from '../tree/reading.ts'
import type { Tree } from '../tree/tree.ts'

/** What a link said, after everything that makes no sense any more has been left out. */
export interface ReadLink {
  readonly answers: Answers
  /** `whole`; or made with another edition; or some of it could not be read. */
  readonly standing: 'whole' | 'other-edition' | 'damaged'
}

const FINGERPRINT_LENGTH = 12
/** The last part of a whole link. Cut short, `none~insects-inside.yes` would read as `none`. */
const END = 'end'

/**
 * The answers about batch and container as the fragment of a link, with the tree's fingerprint.
 * Nothing about a person is in it: those questions are asked again.
 */
export function writeLink(tree: Tree, answers: Answers): string {
  const pairs = Object.entries(answersToKeep(tree, answers)).map(
    ([observation, answer]) =>
      `${observation}=${answerText(tree.observations[observation], answer)}`
  )
  const parts = [`f=${tree.fingerprint.slice(0, FINGERPRINT_LENGTH)}`, ...pairs, END]
  return `${tree.id}?${parts.map(encodeURI).join('&')}`
}

/** Reads a link's query for a tree; answers that the tree does not know are left out and said to be. */
export function readLink(tree: Tree, query: string): ReadLink {
  const parts = query.split('&').filter(part => part !== '')
  // Without its end a link was cut, and the last part may say less than it did.
  let damaged = parts.pop() !== END
  const answers: Record<string, Answer> = {}
  let fingerprint: string | null = null
  for (const part of parts) {
    const [name, value] = splitPart(part)
    if (name === 'f') {
      fingerprint = value
      continue
    }
    const observation = Object.hasOwn(tree.observations, name) ? tree.observations[name] : undefined
    const answer =
      observation && observation.about !== 'person' && !Object.hasOwn(answers, name)
        ? readAnswer(observation, value)
        : undefined
    if (answer === undefined) damaged = true
    else answers[name] = answer
  }
  const same = fingerprint === tree.fingerprint.slice(0, FINGERPRINT_LENGTH)
  return { answers, standing: !same ? 'other-edition' : damaged ? 'damaged' : 'whole' }
}

function splitPart(part: string): [string, string] {
  const place = part.indexOf('=')
  if (place < 0) return ['', '']
  try {
    return [decodeURI(part.slice(0, place)), decodeURI(part.slice(place + 1))]
  } catch {
    return ['', '']
  }
}

function answerText(observation: Observation | undefined, answer: Answer): string {
  if (typeof answer === 'string') return answer
  if (isInterval(answer)) {
    return answer.instrument === undefined
      ? `${answer.reading}`
      : `${answer.reading}@${answer.instrument}`
  }
  // A screen told in full leaves its noes out; one told in part says each, and the rest stays open.
  const isWhole =
    observation?.kind === 'signs' &&
    observation.signs.every(({ id, volunteered }) => volunteered || Object.hasOwn(answer, id))
  const signs = Object.entries(answer).filter(([, value]) => !isWhole || value !== 'no')
  return [isWhole ? 'none' : 'some', ...signs.map(([sign, value]) => `${sign}.${value}`)].join('~')
}

function readAnswer(observation: Observation, text: string): Answer | undefined {
  switch (observation.kind) {
    case 'choice':
      return text === 'unsure' || observation.answers.some(({ id }) => id === text)
        ? text
        : undefined
    case 'measure':
      return text === 'unsure' ? text : readReading(observation, text)
    case 'signs': {
      const [all, ...marks] = text.split('~')
      if (all !== 'none' && all !== 'some') return undefined
      const asked = observation.signs.filter(({ volunteered }) => !volunteered)
      const signs: Record<string, SignValue> = Object.fromEntries(
        all === 'none' ? asked.map(({ id }) => [id, 'no' as const]) : []
      )
      for (const one of marks) {
        const [sign = '', value] = one.split('.')
        const isKnown = observation.signs.some(({ id }) => id === sign)
        if (!isKnown || !isSignValue(value)) return undefined
        signs[sign] = value
      }
      return signs
    }
  }
}

function readReading(
  observation: Extract<Observation, { kind: 'measure' }>,
  text: string
): Answer | undefined {
  const [number = '', instrument] = text.split('@')
  if (!/^-?\d+(\.\d+)?$/.test(number)) return undefined
  // Days are counted, never measured: the page takes none in parts either.
  if (observation.unit === 'day' && number.includes('.')) return undefined
  try {
    return measured(observation, Number(number), instrument)
  } catch {
    // Outside the span, or an instrument that is no longer known.
    return undefined
  }
}

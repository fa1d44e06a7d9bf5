import { type Call, callOf, type Fact } from '../evaluate/facts.ts'
import { nearestNames } from '../findings/nearest-name.ts'
import type { Observation } from '../tree/observation.ts'
import { noneOf, unsureOf } from '../tree/tell.ts'
import type { Tree } from '../tree/tree.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import { readAnswer } from './read-answer.ts'

/** What `--given`, `--none` and `--unsure` said, in their order. */
export interface GivenOptions {
  readonly given: readonly string[]
  readonly none: readonly string[]
  readonly unsure: readonly string[]
}

/** What there is to name: one tree, and the others for pointing somebody at the right one. */
export interface NameableTrees {
  readonly tree: Tree
  readonly others: readonly Tree[]
  /** Every observation of the catalogue, asked by a tree or not. */
  readonly observations: readonly string[]
}

/**
 * Turns the facts of a command line into answers, as a call's: of two things told of one observation
 * either can be so.
 *
 * `--none` and `--unsure` speak of what the facts leave open, wherever they stand on the line.
 *
 * @throws BadUse when an observation or an answer is unknown, or two facts cannot both be meant.
 */
export function readTold(
  nameable: NameableTrees,
  options: GivenOptions
): Pick<Call, 'answers' | 'either'> {
  const facts = options.given.map((fact): Fact => {
    const { id, said } = split(fact)
    const observation = observationOf(nameable, id)
    return { observation: id, answer: readAnswer(observation, said) }
  })
  const { answers: given, either } = callOf(nameable.tree, facts)
  let answers = given
  const twice = options.none.find(id => options.unsure.includes(id))
  if (twice) throw new BadUse(`\`${twice}\` cannot be both \`--none\` and \`--unsure\`: give one.`)
  for (const id of options.none) {
    const observation = observationOf(nameable, id)
    if (observation.kind !== 'signs') {
      throw new BadUse(`\`${id}\` has no signs to rule out. Use \`--given ${id}=…\` instead.`)
    }
    answers = noneOf(answers, observation)
  }
  for (const id of options.unsure) {
    const observation = observationOf(nameable, id)
    // A choice that is answered stays so: being unsure as well takes nothing back.
    answers =
      observation.kind === 'signs' || !Object.hasOwn(answers, id)
        ? unsureOf(answers, observation)
        : answers
  }
  return { answers, either }
}

function split(fact: string): { id: string; said: string } {
  const place = fact.indexOf('=')
  if (place < 1 || place === fact.length - 1) {
    throw new BadUse(
      `\`${fact}\` says no answer. Write an observation, \`=\`, and its answer: \`surface-texture=dry-fuzzy\`.`
    )
  }
  return { id: fact.slice(0, place).trim(), said: fact.slice(place + 1).trim() }
}

function observationOf({ tree, others, observations }: NameableTrees, id: string): Observation {
  const found = Object.hasOwn(tree.observations, id) ? tree.observations[id] : undefined
  if (found) return found
  const asking = others.filter(other => Object.hasOwn(other.observations, id))
  if (asking.length > 0) {
    const names = asking.map(other => `\`${other.id}\``).join(', ')
    throw new BadUse(`\`${tree.id}\` does not ask \`${id}\`. Walk the tree that does: ${names}.`)
  }
  if (observations.includes(id)) throw new BadUse(`No tree asks \`${id}\`. Leave it out.`)
  const near = didYouMean(nearestNames(id, Object.keys(tree.observations)))
  throw new BadUse(
    `There is no observation \`${id}\`.${near} \`jarside list\` shows every observation of a tree.`
  )
}

import { verdict, verdictsOf } from '../../tree/caution.ts'
import { must } from '../../tree/must.ts'
import { literalOf } from '../open.ts'
import type { SaidDiagrams, Sentence } from './said.ts'

/** Who frees a batch that no check of the caller's own does. */
const SPECIALIST = 'state-specialist'

/**
 * Where a batch waits for a check that somebody can make: it may not be used yet, nobody who had some or
 * will have some is the reason, and the vessel is under no pressure, which has a wait of its own.
 */
export function waitsOf(said: SaidDiagrams): number {
  const { occasion, compiled } = said
  const { facts, left, emergency, ill } = occasion
  const { tree, diagrams, variables } = compiled
  const nobody = variables.map(({ observation, values }, index) =>
    tree.observations[observation]?.about === 'person'
      ? diagrams.select(
          index,
          values.map(({ answer }) => (answer === 'no' ? 1 : 0))
        )
      : 1
  )
  const pressure = facts.or(...verdictsOf(tree, 'container').map(id => occasion.verdict(id)))
  const referred = facts.or(
    ...verdictsOf(tree, 'batch')
      .filter(id => isReferred(tree, id))
      .map(id => occasion.verdict(id))
  )
  const who = facts.or(...said.sentences.map(one => (one.does.ask === 'who' ? one.said : 0)))
  const apart = facts.or(left, emergency, ill, pressure, referred, who, askedOf(said))
  return facts.without(facts.and(occasion.use('not-yet'), ...nobody), apart)
}

/** Where a verdict that could free it has a specialist called first: nothing that is looked at frees it. */
function askedOf(said: SaidDiagrams): number {
  const { occasion, compiled } = said
  const { facts } = occasion
  const free = facts.or(
    ...verdictsOf(compiled.tree, 'batch')
      .filter(id => verdict(compiled.tree, id).ceiling === 'as-directed')
      .map(id => occasion.verdict(id))
  )
  return facts.and(
    free,
    saidWhere(said, ({ does }) => does.call?.[SPECIALIST] !== undefined)
  )
}

/** A verdict that withholds the batch and names nobody's second look: somebody else decides. */
function isReferred(tree: SaidDiagrams['compiled']['tree'], id: string): boolean {
  const steps = tree.advice.verdicts[id]
  return (
    verdict(tree, id).ceiling === 'not-yet' && steps !== undefined && steps.recheck === undefined
  )
}

/** Where some sentence of this batch that fits is said. */
export function saidWhere(
  { sentences, occasion }: SaidDiagrams,
  fits: (one: Sentence) => boolean
): number {
  const ofThis = sentences.filter(({ kind }) => kind === 'step' || kind === 'note')
  return occasion.facts.or(...ofThis.filter(fits).map(({ said }) => said))
}

/** Where it is so for some value of a coordinate, all else equal. */
export function forSome(
  { compiled, occasion }: SaidDiagrams,
  where: number,
  index: number
): number {
  const { values } = must(compiled.variables[index], 'variable')
  return occasion.facts.or(
    ...values.map((_, value) => compiled.diagrams.restrict(where, index, value))
  )
}

/** Where it is so as well once what is told after a wait is told, whatever of it is told. */
export function whenAskedAgain({ compiled, occasion }: SaidDiagrams, where: number): number {
  const { tree, diagrams } = compiled
  return tree.askedAgain.reduce((so, condition) => {
    const literal = literalOf(compiled, condition)
    if (literal === undefined) return so
    const { index, open } = literal
    const restricted = open.flatMap((is, value) =>
      is ? [diagrams.restrict(so, index, value)] : []
    )
    return occasion.facts.and(...restricted)
  }, where)
}

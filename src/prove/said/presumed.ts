import type { Condition } from '../../tree/tree.ts'
import { literalOf } from '../open.ts'
import type { Occasion } from './occasion.ts'

/** Where the answers meet all the conditions. */
export function meeting({ compiled, facts }: Occasion, all: readonly Condition[]): number {
  return facts.and(
    ...all.map(condition => {
      const literal = literalOf(compiled, condition)
      if (literal === undefined) return 0
      return compiled.diagrams.select(
        literal.index,
        literal.open.map(is => (is ? 1 : 0))
      )
    })
  )
}

/** Where the answers rule out what goes by that name. */
export function ruledOut(occasion: Occasion, name: string): number {
  const all = occasion.compiled.tree.presumptions[name] ?? []
  return occasion.facts.or(...all.map(each => meeting(occasion, each)))
}

import type { Facts, Finding } from '../../findings/finding.ts'
import type { Place, Places } from '../../findings/place.ts'
import type { Tree } from '../../tree/tree.ts'
import { found } from '../found.ts'
import type { Ledger, Property } from '../property.ts'
import { standing, undecided } from '../proved.ts'
import { verdictsSpokenOf } from './verdicts-are-given.ts'

/** Something that is stated, and the sources behind it. */
interface Statement {
  readonly what: 'question' | 'rule' | 'verdict' | 'note'
  readonly name: string
  readonly because: readonly string[]
  readonly place: Place | undefined
}

/**
 * Every question, rule and note, and the advice of every verdict that the tree gives, names a source,
 * and every source named is described. Counted by what is stated.
 */
export const sourcesArePresent: Property = {
  id: 'sources-are-present',
  kind: 'shape',
  needsWalks: false,
  prove({ tree }, places, ledger) {
    if (ledger === undefined) return undecided(this.id, this.kind, NO_LEDGER)
    const cases = statementsOf(tree, places).map(each => against(each, ledger))
    return standing(this.id, this.kind, cases)
  }
}

/** Why nothing is decided about sources when a tree is proved by itself. */
export const NO_LEDGER = 'the sources were not given'

function statementsOf(tree: Tree, places: Places): readonly Statement[] {
  const { questions, after, rules, advice } = tree
  const asked = (under: string) => (question: Tree['after'][number]) => ({
    what: 'question' as const,
    name: question.id,
    because: question.because,
    place: places[`${under}/${question.id}`]
  })
  return [
    ...Object.values(questions).map(asked('questions')),
    ...after.map(asked('after')),
    ...rules.map(({ id, because }) => ({
      what: 'rule' as const,
      name: id,
      because,
      place: places[`rules/${id}`]
    })),
    ...verdictsSpokenOf(tree).map(({ id }) => ({
      what: 'verdict' as const,
      name: id,
      because: advice.verdicts[id]?.because ?? [],
      place: places[`advice/${id}`] ?? places[`verdicts/${id}`]
    })),
    ...Object.entries(advice.notes).map(([id, { because }]) => ({
      what: 'note' as const,
      name: id,
      because,
      place: places[`notes/${id}`]
    }))
  ]
}

function against({ what, name, because, place }: Statement, ledger: Ledger): readonly Finding[] {
  if (because.length === 0) {
    const facts: Facts = { what, name }
    return [found('source-missing', place, facts)]
  }
  return because
    .filter(source => !Object.hasOwn(ledger, source))
    .map(source => found('unknown-source', place, { name: source, near: [] }))
}

import type { Variable } from '../../diagrams/space.ts'
import type { Lens } from '../../tree/lens.ts'
import { must } from '../../tree/must.ts'
import type { Track } from '../../tree/observation.ts'
import type { SaidDiagrams } from './said.ts'
import { forSome } from './waits.ts'

const SIDES: readonly Lens[] = ['person', 'container', 'batch', 'use']

/**
 * Where measuring in that unit could still change a verdict or the use: now, at some other time, for
 * other people or plans, once the gas is out, or once what nobody is sure of is known.
 */
export function measuringMatters(said: SaidDiagrams, unit: string): number {
  const { compiled, occasion } = said
  const { facts } = occasion
  const coordinates = (fits: (variable: Variable, about: Track | undefined) => boolean) =>
    compiled.variables.flatMap((variable, index) =>
      fits(variable, compiled.tree.observations[variable.observation]?.about) ? [index] : []
    )
  const isUnit = ({ observation }: Variable, wanted: string) => {
    const asked = compiled.tree.observations[observation]
    return asked?.kind === 'measure' && asked.unit === wanted
  }
  const measured = coordinates((variable, about) => about === 'batch' && isUnit(variable, unit))
  // Time goes by in days, and in whatever else the tree asks again after a wait: hours, or a second look.
  const again = new Set(compiled.tree.askedAgain.map(({ observation }) => observation))
  const days = coordinates(
    (variable, about) =>
      about === 'batch' && (isUnit(variable, 'day') || again.has(variable.observation))
  )
  const now = facts.or(
    ...measured.flatMap(index => SIDES.map(side => changedBy(said, side, index)))
  )
  const someDay = days.reduce((so, index) => facts.or(so, forSome(said, so, index)), now)
  const questions = Object.values(compiled.tree.questions)
  // What is only heard when told: whom it is for, what it is planned for.
  const isPlan = ({ observation }: Variable) =>
    questions.every(
      question =>
        question.asks !== observation || (question.kind === 'signs' && question.volunteered)
    )
  const whoever = coordinates(
    (variable, about) => about === 'person' || about === 'container' || isPlan(variable)
  ).reduce((so, index) => facts.or(so, forSome(said, so, index)), someDay)
  return compiled.variables.reduce((so, { values }, index) => {
    const unsure = values.map(({ answer }) => (answer === 'unsure' ? 1 : 0))
    return facts.or(
      so,
      facts.and(compiled.diagrams.select(index, unsure), forSome(said, so, index))
    )
  }, whoever)
}

/** Where one side of the outcome is not the same for all values of a coordinate. */
function changedBy({ compiled }: SaidDiagrams, side: Lens, index: number): number {
  const { diagrams, variables } = compiled
  const { values } = must(variables[index], 'variable')
  const each = [
    ...new Set(values.map((_, value) => diagrams.restrict(compiled.of(side), index, value)))
  ]
  const most = each.reduce((a, b) => diagrams.join(a, b))
  const least = each.reduce((a, b) => diagrams.meet(a, b))
  return diagrams.combine([most, least], ([a, b]) => (a === b ? 0 : 1))
}

import { type Does, leavesAlone, onlyForbids, onlyKeepsShut } from '../../tree/does.ts'
import type { Occasion } from './occasion.ts'
import type { StepSpot } from './said.ts'

/** The spots of the steps to do now, none of which says less than another of them says already. */
export const saidOnce = (occasion: Occasion, spots: readonly StepSpot[]): readonly StepSpot[] =>
  forbiddenOnce(occasion, leftOnce(occasion, calledOnce(occasion, spots)))

/** Where somebody is called now, what says to call them if not sure gives way. */
function calledOnce(
  { facts, compiled }: Occasion,
  spots: readonly StepSpot[]
): readonly StepSpot[] {
  const { does } = compiled.tree.advice
  const now = new Map<string, number>()
  for (const { step, list, where } of spots) {
    for (const [whom, when] of Object.entries(does[step]?.call ?? {})) {
      if (when === 'now' && list === 'do-now') now.set(whom, facts.or(now.get(whom) ?? 0, where))
    }
  }
  return spots.flatMap(spot => {
    const { call = {}, onceCalled } = does[spot.step] ?? {}
    if (onceCalled === undefined || spot.list !== 'do-now') return [spot]
    const whom = Object.keys(call).filter(each => call[each] === 'if-worse')
    const again = facts.or(...whom.map(each => now.get(each) ?? 0))
    const inPlace = onceCalled.map(step => ({
      ...spot,
      step,
      where: facts.and(spot.where, again)
    }))
    return [{ ...spot, where: facts.without(spot.where, again) }, ...inPlace].filter(
      ({ where }) => where !== 0
    )
  })
}

/** Where a jar is left as it is, what only keeps it closed gives way. */
const leftOnce = (occasion: Occasion, spots: readonly StepSpot[]): readonly StepSpot[] =>
  givingWay(occasion, spots, leavesAlone, onlyKeepsShut)

/** Where nobody is to have any and it is left where it is, what only says the first gives way. */
const forbiddenOnce = (occasion: Occasion, spots: readonly StepSpot[]): readonly StepSpot[] =>
  givingWay(occasion, spots, does => does?.use === 'none' && leavesAlone(does), onlyForbids)

/** The spots without those that say less, where one to do now says more. */
function givingWay(
  { facts, compiled }: Occasion,
  spots: readonly StepSpot[],
  saysMore: (does: Does | undefined) => boolean,
  saysLess: (does: Does | undefined) => boolean
): readonly StepSpot[] {
  const { does } = compiled.tree.advice
  const doNow = spots.filter(({ list }) => list === 'do-now')
  const more = facts.or(
    ...doNow.flatMap(({ step, where }) => (saysMore(does[step]) ? [where] : []))
  )
  return spots.flatMap(spot => {
    if (spot.list !== 'do-now' || !saysLess(does[spot.step])) return [spot]
    const where = facts.without(spot.where, more)
    return where === 0 ? [] : [{ ...spot, where }]
  })
}

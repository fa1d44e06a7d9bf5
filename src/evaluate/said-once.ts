import { leavesAlone, onlyForbids, onlyKeepsShut } from '../tree/does.ts'
import type { Tree } from '../tree/tree.ts'

/** The steps to do now, none of which says less than another of them says already. */
export const saidOnce = (tree: Tree, steps: readonly string[]): readonly string[] =>
  forbiddenOnce(tree, leftOnce(tree, calledOnce(tree, steps)))

/** Nobody hears "call if you are not sure" below "call now". */
function calledOnce({ advice }: Tree, steps: readonly string[]): readonly string[] {
  const callsOf = (step: string) => Object.entries(advice.does[step]?.call ?? {})
  const now = new Set(
    steps.flatMap(callsOf).flatMap(([whom, when]) => (when === 'now' ? [whom] : []))
  )
  const said = steps.flatMap(step => {
    const again = callsOf(step).some(([whom, when]) => when === 'if-worse' && now.has(whom))
    return again ? (advice.does[step]?.onceCalled ?? [step]) : [step]
  })
  return [...new Set(said)]
}

/** Whoever is told to leave a jar as it is need not be told to leave it closed. */
function leftOnce({ advice: { does } }: Tree, steps: readonly string[]): readonly string[] {
  if (!steps.some(step => leavesAlone(does[step]))) return steps
  return steps.filter(step => !onlyKeepsShut(does[step]))
}

/** "Stop having any" says less than "nobody has any more, and leave it where it is". */
function forbiddenOnce({ advice: { does } }: Tree, steps: readonly string[]): readonly string[] {
  const saysMore = steps.some(step => does[step]?.use === 'none' && leavesAlone(does[step]))
  return saysMore ? steps.filter(step => !onlyForbids(does[step])) : steps
}

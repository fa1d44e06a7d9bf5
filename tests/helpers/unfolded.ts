import type { SpokenAdvice } from '../../src/evaluate/advice.ts'

/** Advice with the steps that are folded after the first ones among them: for what is said anywhere, or nowhere. */
export const unfolded = (advice: SpokenAdvice): SpokenAdvice => ({
  ...advice,
  doNow: [...advice.doNow, ...advice.later],
  later: []
})

import {
  BATCH_VERDICTS,
  CONTAINER_VERDICTS,
  LOGGED_REFERRALS,
  type Subject,
  type WhatWasTold
} from '../../contacts/contact.ts'
import type { Either } from '../../evaluate/either.ts'
import { type Evaluation, evaluate } from '../../evaluate/evaluate.ts'
import { answersToKeep, nobodyTold } from '../../evaluate/keep.ts'
import type { Tree } from '../../tree/tree.ts'

const FINGERPRINT_LENGTH = 12

/** The tree of a call, as a record names it. */
export const subjectOf = ({ id, edition, fingerprint }: Tree): Subject => ({
  tree: id,
  edition,
  fingerprint: fingerprint.replace(/^sha256[:-]/, '').slice(0, FINGERPRINT_LENGTH),
  topic: null
})

/** A call that was about no tree, or in which nothing was decided. */
export const NOTHING_TOLD: WhatWasTold = {
  referred: false,
  batch: null,
  container: null,
  sheet: false,
  referral: null
}

/** What stands in a record where a person needs help: that somebody was sent on, and nothing else. */
export const REFERRED: WhatWasTold = {
  referred: true,
  batch: null,
  container: null,
  sheet: false,
  referral: null
}

/**
 * What a record may hold of a call. It comes of the answers about the jar alone, as if nobody had told
 * anything of people: what only those bring, a use, a note, a sheet or a referral, cannot be in it. A
 * verdict about a person is logged as referred.
 */
export function toldOfCall(evaluation: Evaluation): WhatWasTold {
  if (evaluation.possible.atLeast.person !== null) return REFERRED
  const { possible, settled } = ofJarAlone(evaluation)
  const only = (track: 'batch' | 'container') => {
    const [one, ...others] = possible[track]
    return others.length > 0 ? undefined : one
  }
  const refer = settled?.advice.refer ?? []
  return {
    referred: false,
    batch: BATCH_VERDICTS.find(id => id === only('batch')) ?? null,
    container: CONTAINER_VERDICTS.find(id => id === only('container')) ?? null,
    sheet: false,
    referral: LOGGED_REFERRALS.find(to => refer.some(named => named === to)) ?? null
  }
}

/** In how many days the jar is looked at again; null where the jar alone names no hour. */
export function recheckInDays(evaluation: Evaluation): number | null {
  const recheck = ofJarAlone(evaluation).settled?.advice.recheck ?? null
  return recheck !== null && 'hours' in recheck ? Math.ceil(recheck.hours[1] / 24) : null
}

/** What the answers come to as if nobody had told anything of people. */
export function ofJarAlone({ tree, answers, either }: Evaluation): Evaluation {
  const aboutJar = ({ observation }: Either) => tree.observations[observation]?.about !== 'person'
  return evaluate(
    tree,
    { ...answersToKeep(tree, answers), ...nobodyTold(tree) },
    either.filter(aboutJar)
  )
}

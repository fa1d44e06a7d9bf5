import type { Tree } from './tree.ts'

/** The part of a tree that proves and says nothing: a first screen, a sketch or a generated tree has no more. */
export const SAYS_NOTHING = {
  after: [],
  rules: [],
  spokenRules: [],
  askedAgain: [],
  presumptions: {},
  openCases: {},
  unfoundFaults: {},
  advice: {
    verdicts: {},
    notes: {},
    does: {},
    urgency: [],
    whileIll: { adds: [], atADistance: [], refer: [] },
    followUps: [],
    unsureNote: {}
  },
  fingerprint: '',
  wordsFingerprint: ''
} satisfies Partial<Tree>

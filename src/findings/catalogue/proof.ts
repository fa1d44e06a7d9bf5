import type { Facts } from '../facts.ts'
import { type Entry, quoted } from '../wording.ts'

/** What proving can find: walks that a rule or a law forbids. */
export const PROOF_FINDINGS = {
  'rule-refuted': {
    says: f =>
      `The rule ${quoted(f.rule)} claims ${quoted(f.claim)}, but a walk gets ${quoted(f.gets)}.`,
    remedy: () =>
      'Follow the walk: mend the answer that strays, or, if the walk is right, the rule.'
  },
  'unsure-reassures': {
    says: f =>
      `${quoted(f.answer)} ${about(f)} lets the batch be used where another answer would not.`,
    remedy: f => `Lower \`use:\` under ${quoted(f.answer)}, or ask on until it is settled.`
  },
  'unsure-danger-too-gentle': {
    says: f =>
      `\`unsure\` ${about(f)}, a danger sign, gives ${quoted(f.gets)}; ${quoted(f.wants)} is the least.`,
    remedy: f =>
      `Raise or lower to ${quoted(f.wants)} under \`unsure:\` of every question that asks it.`
  },
  'unsure-person-note-missing': {
    says: f => `\`unsure\` ${about(f)}, a danger sign, adds no advice for the person.`,
    remedy: () => 'Add the note that `unsure-note:` in `shared/verdicts.yaml` names.'
  }
} satisfies Record<string, Entry>

const about = (f: Facts): string =>
  f.sign ? `about ${quoted(f.sign)} of ${quoted(f.observation)}` : `about ${quoted(f.observation)}`

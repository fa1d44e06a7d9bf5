import { type Entry, named, quoted } from '../wording.ts'

/** What a rule can have wrong in itself, before anything is proved. */
export const RULE_FINDINGS = {
  'no-usual-answer': {
    says: f =>
      `Nothing about ${quoted(f.observation)} is marked usual, so no rule with \`rest: usual\` can speak (${f.rules} here).`,
    remedy: f =>
      `In observations.yaml mark what an ordinary, untroubled jar shows about ${quoted(f.observation)}: \`usual: true\` on an answer, \`usual:\` with a range on a measure.`
  },
  'rule-never-applies': {
    says: f => `The rule ${quoted(f.rule)} can never apply${f.why ? `: ${f.why}` : ''}.`,
    remedy: () => 'Change its `when:` so that some set of answers meets it, or remove the rule.'
  },
  'rule-asks-unasked': {
    says: f =>
      `The rule ${quoted(f.rule)} speaks of ${quoted(f.observation)}, which this tree does not ask.`,
    remedy: f => `Ask ${quoted(f.observation)} in the tree, or leave it out of the rule.`
  },
  'condition-not-for-kind': {
    says: f =>
      `${quoted(f.observation)}, ${f.kind}, cannot be answered with what ${quoted(f.rule)} asks of it.`,
    remedy: f => `Write ${f.wants}.`
  },
  'rule-claims-not-one': {
    says: f =>
      `The rule ${quoted(f.rule)} makes ${f.count === 0 ? 'no claim' : `${f.count} claims at once`}.`,
    remedy: f => `Make one claim: ${named(f.known)}. Write a rule for each.`
  }
} satisfies Record<string, Entry>

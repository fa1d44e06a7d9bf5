import type { Facts } from '../facts.ts'
import { type Entry, named, quoted } from '../wording.ts'

/** What proving can find: walks that a rule or a law forbids. */
export const PROOF_FINDINGS = {
  'rule-refuted': {
    says: f =>
      `The rule ${quoted(f.rule)} claims ${quoted(f.claim)}, but a walk gets ${quoted(f.gets)}.`,
    remedy: () => 'Follow the walk: fix the answer that strays, or, if the walk is right, the rule.'
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
  },
  'second-answer-reassures': {
    says: f =>
      `Beside ${quoted(f.answer)} of ${quoted(f.observation)} the second answer ${quoted(f.second)} of ${quoted(f.settler)} makes the outcome gentler.`,
    remedy: f =>
      `In observations.yaml list the answers of ${quoted(f.observation)} most worrying first, or let ${quoted(f.second)} stand for another of them.`
  },
  'listed-too-early': {
    says: f =>
      `The answer ${quoted(f.answer)} of ${quoted(f.observation)} is listed before ${quoted(f.next)}, and is gentler on this walk.`,
    remedy: f =>
      `In observations.yaml list ${quoted(f.next)} first, or, where neither is worse in all cases, say \`unordered: true\`.`
  },
  'danger-uncovered': {
    says: f =>
      f.rules === 0
        ? `No rule keeps the danger sign ${quoted(f.answer)} of ${quoted(f.observation)} from ending gently.`
        : `The rules about the danger sign ${quoted(f.answer)} of ${quoted(f.observation)} leave out some sets of answers.`,
    remedy: f =>
      `Write a rule \`when: { ${f.observation}: ${f.answer} }\` with \`at-least:\` a verdict on its own track, or with \`use-at-most:\`.`
  },
  'question-never-reached': {
    says: f =>
      `No set of answers leads to the question ${quoted(f.question)}: each way there takes two answers to one observation.`,
    remedy: f => `Lead to ${quoted(f.question)} from where it is needed, or remove it.`
  },
  'verdict-never-given': {
    says: f =>
      `No set of answers gives the verdict ${quoted(f.verdict)}: a more cautious one about the ${f.track} always stands in its place.`,
    remedy: () => 'Raise it where nothing more cautious is raised, or leave it out.'
  },
  'idle-question': {
    says: f =>
      `Whatever is answered to the question ${quoted(f.question)}, no outcome and no note changes.`,
    remedy: f =>
      `Let some answer about ${quoted(f.observation)} raise a verdict, lower \`use:\`, add a note or lead elsewhere, or leave the question out.`
  },
  'idle-sign': {
    says: f =>
      `Whatever the answer to the sign ${quoted(f.sign)} of ${quoted(f.observation)}, no outcome and no note changes.`,
    remedy: f => `Say what follows from ${quoted(f.sign)}, or take it off the screen.`
  },
  'too-few-upper-bounds': {
    says: f =>
      `${f.upper} of ${f.rules} rules ${f.upper === 1 ? 'says' : 'say'} what must not alarm; ${f.least} ${f.least === 1 ? 'is' : 'are'} the least.`,
    remedy: () =>
      'Write rules with `at-most:`, `nothing-about:`, `use-at-least:` or a `use-is:` that allows something, about what an ordinary jar shows.'
  },
  'rule-said-twice': {
    says: f =>
      `The rule ${quoted(f.rule)} says the same as ${quoted(f.first)}: ${quoted(f.claim)}, of the same sets of answers.`,
    remedy: () =>
      'Leave one of them out and name the sources of both in the other; where it was meant for other answers, fix its `when:`.'
  },
  'source-missing': {
    says: f => `The ${f.what} ${quoted(f.name)} names no source.`,
    remedy: () =>
      'Name one under `because:`. What stands in no publication is `common-practice`, `own-caution` or `from-memory`.'
  },
  'rests-on-too-little': {
    says: f =>
      `The rule ${quoted(f.rule)} is about a danger and rests on ${named(f.sources, 'and')} alone, which nobody here read in the original; its basis ${quoted(f.basis)} does not say so.`,
    remedy: f => `Write \`basis:\` ${named(f.least)}, or add a source that was read.`
  },
  'sentences-contradict': {
    says: f =>
      `The ${f.one} and the ${f.other} are part of one outcome and contradict each other about the ${f.matter}.`,
    remedy: () =>
      'Let the note that makes one of them wrong name it under `drops:`, or write into the one that comes first that it does, with `first: true`.'
  },
  'kept-food-changed': {
    says: f => `While food is kept for the health department, the ${f.sentence} changes it.`,
    remedy: () =>
      'Take it out of what is written for somebody ill, or correct what `steps.yaml` says that it does.'
  },
  'sent-to-what-may-burst': {
    says: f => `Beside a vessel that may burst, the ${f.sentence} sends somebody near.`,
    remedy: () =>
      'Take it out of the steps of that verdict, or correct what `steps.yaml` says that it does.'
  },
  'opened-warm': {
    says: f => `The ${f.sentence} opens a vessel that may be warm and under pressure.`,
    remedy: () =>
      'Have it chilled for 24 hours before, in the words and in `steps.yaml`: `vessel: [chill, open]` or `after: chill`.'
  },
  'urgent-comes-late': {
    says: f =>
      `The step ${quoted(f.first)} is more urgent than ${quoted(f.later)} and is said after it.`,
    remedy: () => 'Let the verdict or note of the more urgent track say it.'
  },
  'reason-not-said': {
    says: f => `Nothing says why a batch is ${quoted(f.missing)}: ${quoted(f.answer)} shows it.`,
    remedy: f =>
      `Give the answer that raises it a note, or list ${quoted(f.missing)} under \`reason-for:\` in the line of the note that says why, in \`steps.yaml\`.`
  },
  'too-much-at-once': {
    says: f => `More than ${f.most} steps that cannot wait come together.`,
    remedy: () =>
      'Say one of them elsewhere, or correct what `steps.yaml` says that it does: a call now, nobody has any, leave it.'
  },
  'put-off': {
    says: f => `The step ${quoted(f.step)} cannot wait, and is marked as what can.`,
    remedy: () => 'Take `later: true` out of its line in `steps.yaml`.'
  },
  'wait-without-time': {
    says: f => `A batch waits, and nothing says ${f.missing}: ${quoted(f.answer)} shows it.`,
    remedy: () =>
      'Give the note or the verdict a `recheck:`, or let one of its steps look, ask or measure. A note that waits for who will have some is marked `ask: who` in `steps.yaml`.'
  },
  'check-not-named': {
    says: f =>
      `A batch waits for time and acid, and nothing names the ${f.missing} that is missing: ${quoted(f.answer)} shows it.`,
    remedy: f =>
      f.missing === 'acid'
        ? 'Let a note that is said there add the step that measures.'
        : 'Let a note that is said there name the day, with `recheck: { day: … }`, or in words and with `dated: true`.'
  },
  'wait-without-end': {
    says: f =>
      `With ${quoted(f.answer)}, asked again after a wait in which nothing changed, the batch waits as before.`,
    remedy: () =>
      'Ask whether it was looked at before and let the second look end; or say in the words by when the wait is over and what then, and write `ends: true`.'
  },
  'ruled-out-presumed': {
    says: f =>
      String(f.what).startsWith('day ')
        ? `The ${f.sentence} names ${f.what} as one to come, and is said when it is past.`
        : `The ${f.sentence} presumes ${quoted(f.what)}, and is said where the answers rule it out.`,
    remedy: () =>
      'Let a note name it under `drops:`, say it elsewhere, or write words that presume nothing.'
  },
  'found-out-for-nothing': {
    says: f =>
      `The ${f.sentence} is said where nothing that it finds out could change a verdict or the use.`,
    remedy: () =>
      'Let the note that settles the matter drop it, or mark the note that adds it `not-when-discarded: true`.'
  },
  'open-case-closed': {
    says: f => `The law ${quoted(f.law)} holds for ${quoted(f.case)}, which is listed as open.`,
    remedy: () => 'Remove it from `open-cases:`.'
  },
  'saying-refuted': {
    says: f =>
      f.how === 'late'
        ? `The rule ${quoted(f.rule)} wants ${quoted(f.step)} said before ${quoted(f.before)}, but a walk says it after.`
        : f.how === 'said'
          ? `The rule ${quoted(f.rule)} wants ${quoted(f.step)} never said, but a walk says it.`
          : `The rule ${quoted(f.rule)} wants ${quoted(f.step)} said, but a walk says nothing of it.`,
    remedy: () =>
      'Follow the walk: fix the verdict or note that strays, or, if it is right, the rule.'
  },
  'fault-found': {
    says: f =>
      `The slip ${quoted(f.fault)} is listed as one that nothing finds, and ${quoted(f.by)} finds it.`,
    remedy: () => 'Remove it from `unfound-faults:`.'
  },
  'fault-not-made': {
    says: f =>
      `The slip ${quoted(f.fault)} is listed as one that nothing finds, and no such slip makes this tree less cautious.`,
    remedy: () =>
      'Remove it from `unfound-faults:`, or write its name as `jarside check --faults` does.'
  },
  'review-day-unfit': {
    says: f =>
      `The tree is ${f.state}, ${f.reviewed ? `reviewed on ${f.reviewed}` : 'with no day of review'}, and its next review is due on ${f.due}.`,
    remedy: f => `Write ${f.wants}.`
  }
} satisfies Record<string, Entry>

const about = (f: Facts): string =>
  f.sign ? `about ${quoted(f.sign)} of ${quoted(f.observation)}` : `about ${quoted(f.observation)}`

import { type Entry, isFilled, meant, named, quoted } from '../wording.ts'

const unknown = (what: string, remedy: string): Entry => ({
  says: f =>
    `There is no ${what} ${quoted(f.name)}${f.within ? ` in ${quoted(f.within)}` : ''}.${meant(f)}`,
  remedy: f =>
    isFilled(f.near)
      ? `Write ${named(f.near)}, or ${remedy}.`
      : `${remedy[0]?.toUpperCase()}${remedy.slice(1)}.`
})

/** What the names in a file can have wrong: what they refer to, and what is left open. */
export const LINK_FINDINGS = {
  'unknown-question': unknown('question', 'add that question to the tree'),
  'unknown-observation': unknown('observation', 'describe it in `observations.yaml`'),
  'unknown-answer': unknown('answer', 'add it to the observation, in its order of worry'),
  'unknown-sign': unknown('sign', 'add it to the observation'),
  'unknown-verdict': unknown('verdict', 'describe it in `shared/verdicts.yaml`'),
  'unknown-note': unknown('note', 'add it under `notes:` with its sources'),
  'unknown-step': unknown(
    'step',
    'let a verdict or a note say it first: only what is said can be dropped'
  ),
  'unknown-presumption': unknown('presumption', 'add it under `presumptions:`'),
  'deed-missing': {
    says: f => `Nothing says what the step ${quoted(f.step)} does.`,
    remedy: f =>
      `Write a line for ${quoted(f.step)} under \`steps:\` in \`steps.yaml\`: what it does to the batch and the vessel, whom it calls, what it measures; \`{}\` where it does none of it.`
  },
  'deed-unused': {
    says: f => `No tree has the ${f.what} ${quoted(f.name)}, of which this says what it does.`,
    remedy: f => `Remove the line, or correct the name ${quoted(f.name)}.`
  },
  'unknown-tree': unknown('tree', 'add it to `trees/`'),
  'unknown-picture': unknown('drawing', 'draw it in `shared/pictures` and show it by an answer'),
  'unknown-source': unknown('source', 'describe it in `shared/sources.yaml`'),
  'unknown-piece': unknown('piece', 'add it to `shared/pieces/`'),
  'unknown-exit': unknown('exit', 'list it under `exits:` of the piece'),
  'unknown-number': unknown('phone number', 'add it under `numbers:` of the office pack'),
  'missing-exit': {
    says: f =>
      `The piece ${quoted(f.piece)} leaves by ${quoted(f.exit)}, and the tree does not say where to.`,
    remedy: f =>
      `Write \`${f.piece}: { ${f.exit}: … }\` under \`pieces:\`, with the question that follows.`
  },
  'missing-unsure': {
    says: f =>
      `The question ${quoted(f.question)} does not say what follows from "not sure"${f.sign ? ` about ${quoted(f.sign)}` : ''}.`,
    remedy: () =>
      'Add `unsure:`, under `answers:` of a choice, beside `ranges:` of a measure, or at a sign or its question. Not knowing must never reassure: where some answer raises a wait or lowers `use`, so must it; else lead on.'
  },
  'missing-answer': {
    says: f =>
      `The question ${quoted(f.question)} leaves out ${named(f.answers, 'and')} of ${quoted(f.asks)}.`,
    remedy: () => 'Add what is left out, or `others:` for all of it at once.'
  },
  'settling-answer-listed': {
    says: f =>
      `The answer ${quoted(f.answer)} of ${quoted(f.asks)} counts as an answer to ${quoted(f.settles)}, so nothing is read here.`,
    remedy: () => 'Keep `unsure` alone: the walk goes back to the question that was settled.'
  },
  'leads-nowhere': {
    says: f => `In the question ${quoted(f.question)}, ${quoted(f.answer)} leads nowhere.`,
    remedy: () => 'Add `to:` with a question, or `end:` with a verdict on the batch.'
  },
  'two-destinations': {
    says: f =>
      `In the question ${quoted(f.question)}, ${quoted(f.answer)} goes on and ends at once.`,
    remedy: () =>
      'Keep `to:` or `end:`, not both. A verdict can be raised on the way with `raise:`.'
  },
  'end-not-batch': {
    says: f =>
      `The walk ends with ${quoted(f.verdict)}, a verdict about the ${f.track} and not the batch.`,
    remedy: f => `Raise ${quoted(f.verdict)} with \`raise:\`, and end with a verdict on the batch.`
  },
  'range-gap': {
    says: f => `The ranges of ${quoted(f.question)} leave out ${f.gap}.`,
    remedy: () =>
      'Let one range begin where the other stops: `under` with `at-least`, or `at-most` with `over`.'
  },
  'range-overlap': {
    says: f => `Two ranges of ${quoted(f.question)} both hold ${f.both}.`,
    remedy: () =>
      'Let one range begin where the other stops: `under` with `at-least`, or `at-most` with `over`.'
  },
  'range-empty': {
    says: f => `No reading of ${quoted(f.asks)} lies in this range.`,
    remedy: f => `Set its ends in order, within ${f.from} to ${f.to}.`
  },
  'like-another-kind': {
    says: f =>
      `The question ${quoted(f.question)} answers like ${quoted(f.like)}, which asks ${quoted(f.other)} and not ${quoted(f.asks)}.`,
    remedy: () => 'Name a question that asks the same observation and is not itself `like` another.'
  },
  'stands-for-unknown': {
    says: f =>
      `The answer ${quoted(f.answer)} stands for ${quoted(f.name)}, which is no answer of ${quoted(f.settles)}.${meant(f)}`,
    remedy: f => `Name one of ${named(f.known, 'and')}.`
  },
  'missing-stands-for': {
    says: f =>
      `The observation ${quoted(f.observation)} settles ${quoted(f.settles)}, but its answer ${quoted(f.answer)} stands for nothing.`,
    remedy: f => `Add \`stands-for:\` with an answer of ${quoted(f.settles)}.`
  },
  'day-not-counted': {
    says: f =>
      `The recheck falls on day ${f.day}, and the tree does not say which observation counts its days.`,
    remedy: () => 'Add `counts-days:` with that observation at the top of the tree, or give hours.'
  },
  'counts-no-days': {
    says: f => `${quoted(f.observation)} counts no days that this tree asks for.`,
    remedy: () => 'Name an observation of kind `measure` and unit `day` that a question asks.'
  },
  'settles-nothing': {
    says: f =>
      `The observation ${quoted(f.observation)} cannot settle ${quoted(f.settles)}, which has no single answer.`,
    remedy: () => 'Let it settle an observation of kind `choice`, or leave `settles:` out.'
  }
} satisfies Record<string, Entry>

import type { Facts } from '../facts.ts'
import { type Entry, isFilled, meant, named, quoted } from '../wording.ts'

/** What the words can have wrong: every text has its place, and every place its text. */
export const WORD_FINDINGS = {
  'missing-text': {
    says: f => `${quoted(f.text)} has no English words.${meant(f)}`,
    remedy: f => `Add it to ${quoted(f.file)}.`
  },
  'orphaned-text': {
    says: f => `Nothing shows the text ${quoted(f.text)}.${meant(f)}`,
    remedy: () => 'Remove it, or use the name that the tree uses.'
  },
  'text-not-translated': {
    says: f => `${quoted(f.text)} has English words and none in ${quoted(f.tag)}.${meant(f)}`,
    remedy: f => `Translate it in ${quoted(f.file)}.`
  },
  'text-without-english': {
    says: f => `The text ${quoted(f.text)} translates nothing: English has none.${meant(f)}`,
    remedy: () => 'Use the name that the English text has, or remove it.'
  },
  'number-not-decided': {
    says: f =>
      `${quoted(f.text)} says ${f.number}, and ${quoted(f.tree)} decides by no such limit.`,
    remedy: f =>
      `Say the limit of the tree, or as an instrument has to read for it.${
        f.part === ''
          ? ''
          : ` What the sentence states besides is listed under \`states:\` in its line in \`steps.yaml\`.`
      }`
  },
  'limit-not-bound': {
    says: f =>
      `The answer ${quoted(f.answer)} says ${f.number}, and binds it to no limit of a tree.`,
    remedy: () =>
      'Name the tree, the measure and the number under `limits:`, or list it under `states:` where no tree decides by it.'
  },
  'limit-not-decided': {
    says: f =>
      `The answer ${quoted(f.answer)} binds ${f.number} to ${quoted(f.measure)} of ${quoted(f.tree)}, which draws no limit there.`,
    remedy: f => `Say what the tree decides by: ${named(f.known, 'or')}.`
  },
  'limit-not-said': {
    says: f =>
      `The answer ${quoted(f.answer)} binds ${f.number}, the limit of ${quoted(f.measure)} of ${quoted(f.tree)}, and its English words do not say it.`,
    remedy: () => 'Say the number in digits, or take it out of `limits:`.'
  },
  'answer-too-long': {
    says: f => `The answer ${quoted(f.answer)} says ${f.sentences} sentences.`,
    remedy: f =>
      `Say it in ${f.most} short sentences at most: somebody reads it aloud while a caller waits.`
  },
  'told-too-short-or-long': {
    says: f =>
      `What the caller ${quoted(f.caller)} tells is ${f.sentences} ${f.sentences === 1 ? 'sentence' : 'sentences'} long.`,
    remedy: f =>
      `Let the caller tell ${f.fewest} to ${f.most} sentences, with the facts in no order.`
  },
  'placeholder-differs': {
    says: f => `The text ${quoted(f.text)} has other gaps to fill than the English: ${unlike(f)}.`,
    remedy: () => 'Copy each name in double braces letter for letter from the English.'
  },
  'number-differs': {
    says: f => `The text ${quoted(f.text)} says other numbers than the English: ${unlike(f)}.`,
    remedy: () => 'Write each number in digits, as the English does and as often.'
  }
} satisfies Record<string, Entry>

/** What a translation leaves out and what it adds. */
const unlike = ({ lacks, adds }: Facts): string =>
  [
    isFilled(lacks) ? `it lacks ${named(lacks, 'and')}` : '',
    isFilled(adds) ? `it adds ${named(adds, 'and')}` : ''
  ]
    .filter(part => part !== '')
    .join(', and ')

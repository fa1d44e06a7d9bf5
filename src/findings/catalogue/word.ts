import type { Facts } from '../facts.ts'
import { clean, type Entry, isFilled, meant, named, quoted } from '../wording.ts'

/** Where a rule is wrong about a sentence: the line that accepts it, to be copied whole. */
const listed = ({ id, rule, finds }: Facts): string =>
  ' Where it is right as it stands, list it under `accepted:` in the glossary: ' +
  `text \`${clean(String(id))}\`, rule \`${rule}\`, finds \`${clean(String(finds))}\`, and why.`

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
    remedy: f =>
      'Write each number with its unit in digits, as the English does, as often and in its order.' +
      listed(f)
  },
  'negation-differs': {
    says: f =>
      `The text ${quoted(f.text)} denies more or less than the English, by its clauses: ${unlike(f)}.`,
    remedy: f => `Say no where the English says it, one prohibition to a sentence.${listed(f)}`
  },
  'term-differs': {
    says: f => `The text ${quoted(f.text)} uses other terms than the English: ${unlike(f)}.`,
    remedy: f =>
      `Use the words of the glossary. Where it lacks a form that fits, add it to the term there.${listed(f)}`
  },
  'part-left-out': {
    says: f =>
      `The text ${quoted(f.text)} has other parts than the English (${f.rule}): ${unlike(f)}.`,
    remedy: f => `Say every item and every sentence of the English, part for part.${listed(f)}`
  },
  'left-in-english': {
    says: f => `The text ${quoted(f.text)} has words left in English: ${named(f.adds, 'and')}.`,
    remedy: () =>
      'Translate them. What the language writes alike is listed under `alike:` in its glossary.'
  },
  'form-unfit': {
    says: f =>
      `The text ${quoted(f.text)} is not in the form of its language (${f.rule}): ${unlike(f)}.`,
    remedy: f =>
      `Use its letters, quotes and marks, and the words and address agreed on.${listed(f)}`
  },
  'said-two-ways': {
    says: f =>
      `The text ${quoted(f.text)} says ${quoted(f.target)}, and elsewhere ${quoted(f.english)} is said otherwise.`,
    remedy: () =>
      'Say it in one way, or list the English with the reason under `said-two-ways:` in the glossary.'
  },
  'review-of-nothing': {
    says: f =>
      `A review is written down of ${quoted(f.text)}, and there is no such text.${meant(f)}`,
    remedy: () => 'Remove the line, or correct its name: `jarside translate accept` writes it.'
  },
  'note-of-nothing': {
    says: f =>
      `Translators are told something of ${quoted(f.name)}, and there is no such text or gap.${meant(f)}`,
    remedy: () => 'Remove the line, or correct its name.'
  },
  'gap-not-explained': {
    says: f =>
      `Translators are not told what stands in the gap ${quoted(f.gap)} of ${quoted(f.text)}.`,
    remedy: () => 'Say it under `gaps:` in shared/translator-notes.yaml.'
  },
  'accepted-for-nothing': {
    says: f => `What the glossary accepts of ${quoted(f.text)} is not found there any more.`,
    remedy: () => 'Remove the line, so that it does not hide the next slip.'
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

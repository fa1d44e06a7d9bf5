/** What only the terminal says, to authors and reviewers: in English, as the manual pages are. */
export const PROMPTS = {
  moves: 'b back · c change an answer · w why do you ask · q quit',
  signs: '0 rules the others out, u leaves them unsure, 4? is unsure about 4 alone.',
  others: 'Noted. And the others?',
  told: { yes: '[yes]', no: '[no]', unsure: '[not sure]' },
  last: 'the last one',
  first: 'This is the first question.',
  nothingToChange: 'Nothing is answered yet.',
  changeWhich: 'Change which answer? Type its number, or nothing to go on.',
  finished: 'a advice for next time · c change an answer · q finish',
  emergency: 'b take that answer back · q finish',
  skip: 'Type nothing to skip a question.',
  nothingToAdd: 'Nothing to add to that.',
  stopped: 'Stopped. Nothing is kept.',
  reviewDue: (due: string) => `Review due ${due}.`,
  notFinished: (observation: string, ask: string) =>
    `Not finished. Next: \`${observation}\`. ${ask}`,
  atLeast: (verdicts: readonly string[], use: string) =>
    `No verdict yet. Whatever comes, it ends no gentler than ${verdicts.join(', ')}; use ${use}.`
} as const

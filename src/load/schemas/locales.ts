import { z } from 'zod'
import { id, refusedAs, text } from './common.ts'

// Plural forms hang on a key by an underscore: `day_one`.
const KEY = 'a name of small letters, digits, hyphens or underscores'
const key = z
  .string()
  .max(64)
  .regex(/^[a-z0-9]+(?:[-_][a-z0-9]+)*$/, KEY)
  .meta({ id: 'key', ...refusedAs(KEY) })

const said = (what: string) => text.optional().describe(what)

const choice = z
  .strictObject({
    label: text.describe('The answer in a few words.'),
    hint: said('How to know it when one sees it.')
  })
  .meta({ id: 'answer' })

const observation = z
  .strictObject({
    ask: said('The question, as a heading.'),
    how: said('How to look, smell or measure.'),
    sweep: said(
      'Of a screen of signs: what it is about, in one line under the question. With it the question is asked as yes or no first, and the list opens on yes or not sure.'
    ),
    why: said('Why it is asked.'),
    answers: z.record(key, choice).optional().describe('The answers of a choice.'),
    signs: z.record(key, choice).optional().describe('The signs of a screen.'),
    none: said('The answer that none of the signs is there.'),
    unsure: z.union([text, choice]).optional().describe('The answer of somebody who cannot tell.'),
    instruments: z.record(key, text).optional().describe('What it is measured with.'),
    unit: said('The unit of a measure.')
  })
  .meta({ id: 'observation' })

const verdict = z
  .strictObject({
    name: said('The name of the verdict.'),
    message: said('What it tells, in one or two sentences.'),
    'message-as-directed': said('In place of message while it may be drunk as directed.'),
    'message-not-yet': said('In place of message while it may not be drunk yet.'),
    'message-never': said('In place of message when it may never be drunk.'),
    'message-while-ill': said('In place of message while somebody needs help.'),
    'use-as-directed': said('What may be drunk, under this verdict: as directed.'),
    'use-not-yet': said('What may be drunk, under this verdict: nothing yet.'),
    'use-never': said('What may be drunk, under this verdict: nothing ever.'),
    why: said('Why one comes to this verdict.')
  })
  .meta({ id: 'verdict-words' })

const lookAlike = z
  .strictObject({
    title: said('The two, as a heading.'),
    one: said('The name of the one that alarms less.'),
    other: said('The name of the one that alarms more.'),
    same: said('What both have in common.'),
    differences: z
      .record(
        key,
        z
          .strictObject({ one: said('How it is there.'), other: said('How it is there.') })
          .meta({ id: 'difference' })
      )
      .optional()
      .describe('How they differ, by feature.'),
    sure: said('How to make sure.')
  })
  .meta({ id: 'look-alike-words' })

const followUp = z
  .strictObject({ ask: said('What the caller asks.'), answer: said('What is answered.') })
  .meta({ id: 'follow-up-words' })

const knowHow = z
  .strictObject({
    ask: said('The question, as a heading.'),
    said: said(
      'Other words in which callers ask it, parted by semicolons: they are searched and never shown.'
    ),
    answer: said('What is answered, in two or three short sentences.'),
    pictures: z
      .record(id, said('What is done in the drawing.'))
      .optional()
      .describe('What is done, by drawing, in the order in which it is done.')
  })
  .meta({ id: 'know-how-words' })

const picture = z
  .strictObject({
    short: said('What is seen, in a few words.'),
    long: said('What is seen, for somebody who cannot see it.')
  })
  .meta({ id: 'picture-words' })

type Texts = string | { readonly [key: string]: Texts }
const texts: z.ZodType<Texts> = z
  .lazy(() => z.union([text, z.record(key, texts)]))
  .meta({ id: 'texts' })

/** The words of one tree in one language. */
export const treeWordsSchema = z.strictObject({
  title: said('What the tree is about, as a heading.'),
  about: said('For which jars it is, and for which it is not.'),
  examples: said('What a caller may say of it, fact by fact, for the field of the desk.'),
  use: z.record(key, text).optional().describe('What may be drunk, by use: never, not-yet …'),
  verdicts: z
    .record(id, verdict)
    .optional()
    .describe('Words of this ferment, in place of those in verdicts.json.'),
  cautions: z.record(id, text).optional().describe('Cautions that are said with every outcome.'),
  observations: z
    .record(id, observation)
    .optional()
    .describe(
      'Words of what this ferment alone observes, and in place of those in observations.json.'
    ),
  steps: z.record(id, text).optional().describe('Steps that this ferment alone says.'),
  notes: z.record(id, text).optional().describe('Notes that this ferment alone says.'),
  'rules-of-thumb': z.record(id, text).optional().describe('Amounts and times worth knowing.'),
  card: z
    .strictObject({
      fields: z.record(id, text).describe('What is written down when a batch is begun.'),
      checks: z.record(id, text).describe('What is ticked.')
    })
    .optional()
    .describe('The batch record card of this ferment.')
})

/** The words of one language, by file. What is left out is found by comparing with the trees. */
export const LOCALE_SCHEMAS = {
  observations: z.record(id, observation),
  verdicts: z.record(id, verdict),
  steps: z.record(id, text),
  notes: z.record(id, text),
  ui: z.record(key, texts),
  'look-alikes': z.record(id, lookAlike),
  'follow-ups': z.record(id, followUp),
  'know-how': z.record(id, knowHow),
  practice: z.record(id, text),
  pictures: z.record(id, picture)
} as const

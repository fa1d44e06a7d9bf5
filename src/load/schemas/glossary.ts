import { z } from 'zod'
import { RULES } from '../../translation/pair.ts'
import { text } from './common.ts'

const forms = z.array(text)

const termSchema = z
  .strictObject({
    en: forms.describe(
      'How English says it: `mold*` is every word that begins so, `throw * out` has one between.'
    ),
    to: forms.describe('How the language says it.'),
    'also-en': forms
      .optional()
      .describe('What else may stand in the English where the language says it.'),
    'also-to': forms.optional().describe('What else the language may say where English says it.'),
    holds: z
      .enum(['en', 'to'])
      .optional()
      .describe('`en`: only what English says must be said. `to`: only what is added is a fault.')
  })
  .meta({ id: 'term' })

/** `shared/glossary/<language>.yaml`: what is agreed on between English and one language. */
export const glossarySchema = z.strictObject({
  terms: z
    .record(text, termSchema)
    .describe('Words that stand in a sentence where their English does.'),
  avoid: z.record(text, text).describe('Words never used, each with what is said instead.'),
  familiar: forms.describe('Forms of an address that is not used here.'),
  exact: z
    .record(text, forms.min(1))
    .describe('English texts that have these translations and no other.'),
  commands: forms.describe('Commands of that address, where they begin a sentence.'),
  genders: z
    .record(
      text,
      z.strictObject({
        never: forms.min(1).describe('Articles that do not go with them.'),
        nouns: forms.min(1).describe('The nouns.')
      })
    )
    .describe('Nouns with the articles that never stand before them.'),
  alike: forms.describe('Words that both languages write alike.'),
  accepted: z
    .array(
      z.strictObject({
        text: text.describe('The text: the file’s name, a colon and its key.'),
        rule: z.enum(RULES).describe('The rule that finds something in it.'),
        finds: text.describe('What it finds, as the finding says it: `-mold +yeast`.'),
        because: text.describe('Why the sentence stays as it is.')
      })
    )
    .describe('What the rules find and a reader has looked at. Each ends with what it accepts.'),
  'said-two-ways': z
    .record(text, text)
    .describe('English texts that have more than one translation, each with the reason.')
})
export type AuthoredGlossary = z.infer<typeof glossarySchema>

import { z } from 'zod'
import { text } from './common.ts'

/** `shared/translator-notes.yaml`: what the English alone does not tell whoever translates it. */
export const translatorNotesSchema = z.strictObject({
  gaps: z
    .record(text, text)
    .describe(
      'What stands in a gap, by its name: `day` for `{{day}}`. It holds wherever the gap does.'
    ),
  phrases: z
    .record(text, text)
    .describe('What words mean that mislead, wherever an English text has them.'),
  texts: z
    .record(text, text)
    .describe(
      'Notes by the text: the file’s name, a colon and its key. `*` stands for one name: `ui:unit-names.*`.'
    )
})
export type AuthoredTranslatorNotes = z.infer<typeof translatorNotesSchema>

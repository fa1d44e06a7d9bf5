import { z } from 'zod'
import { OFFICE_TRIGGERS } from '../../office/office-pack.ts'
import { day, id, refusedAs, text } from './common.ts'

/** One text, which is English, or the same text by language tag. */
const localText = z
  .union([text, z.strictObject({ en: text.describe('The English text.') }).catchall(text)])
  .meta({ id: 'local-text' })
  .describe('A text, which is English, or the same text by language: en, es …')

const CLOCK = 'a time written as hours and minutes, like `16:30`'
const clock = z
  .string()
  .regex(/^(?:[01]\d|2[0-3]):[0-5]\d$/, CLOCK)
  .meta({ id: 'clock', ...refusedAs(CLOCK) })

const zone = z.string().refine(isZone, 'a time zone by its place, like `America/Chicago`')

const COUNTRY = 'a country by its two letters, like `US`'
const ADDRESS = 'an address that begins with http:// or https://, without `#` or `?`'

/**
 * `public/office.json`: one office's numbers, hours and referrals.
 *
 * Emergency and poison help are no triggers here: no office replaces those numbers.
 */
export const officePackSchema = z.strictObject({
  office: z
    .strictObject({
      name: text.describe('The name of the office.'),
      county: text.describe('The county that it serves.')
    })
    .describe('The office that answers.'),
  country: z
    .string()
    .regex(/^[A-Z]{2}$/, COUNTRY)
    .meta(refusedAs(COUNTRY))
    .describe('It chooses the numbers for emergencies and poisoning, which nothing here replaces.'),
  address: z
    .url({ protocol: /^https?$/ })
    .refine(address => !/[#?]/.test(address), 'an address without `#` or `?`')
    .meta({ pattern: '^https?:[^#?]+$', ...refusedAs(ADDRESS) })
    .optional()
    .describe('Where the public finds this installation; it stands on sheets.'),
  numbers: z
    .array(
      z.strictObject({
        id: id.describe('A name for it; referrals use it.'),
        label: text.describe('Who answers.'),
        phone: text.describe('The number as it is dialed.'),
        'verified-on': day.describe('The day on which somebody last rang it to make sure.'),
        owner: text.describe('Whose task that is: a role, no name.')
      })
    )
    .describe('The phone numbers.'),
  hours: z
    .strictObject({
      zone: zone.describe('The time zone by its place, such as America/Chicago.'),
      week: z
        .array(
          z.strictObject({
            days: z
              .array(z.enum(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']))
              .min(1)
              .describe('The days with these hours.'),
            opens: clock.describe('From when, such as 08:00.'),
            closes: clock.describe('Until when, such as 16:30.')
          })
        )
        .describe('The hours of an ordinary week.'),
      closed: z.array(day).describe('Days on which nobody answers.')
    })
    .describe('When somebody answers.'),
  referrals: z
    .array(
      z.strictObject({
        trigger: z.enum(OFFICE_TRIGGERS).describe('What it answers to.'),
        name: localText.describe('Who is called.'),
        number: id.optional().describe('The name of one of the numbers.'),
        say: localText.optional().describe('What to ask for.')
      })
    )
    .describe('Who is called for what.'),
  notices: z
    .array(
      z.strictObject({
        id: id.describe('A name for it.'),
        text: localText.describe('What is shown.'),
        from: day.optional().describe('The first day on which it is shown.'),
        until: day.optional().describe('The last day on which it is shown.')
      })
    )
    .describe('Notices for a time, such as winter hours.'),
  'valid-until': day.describe('The last day on which these numbers may be trusted.')
})
export type AuthoredOffice = z.infer<typeof officePackSchema>

function isZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name })
    return true
  } catch {
    return false
  }
}

import { z } from 'zod'
import { COUNTRY_NUMBERS } from '../../office/constants.ts'
import { OFFICE_MEASURES, OFFICE_TRIGGERS, WEEKDAYS } from '../../office/office-pack.ts'
import {
  CLOCK,
  COUNTY_CODE,
  isZone,
  PAGES_FOLDER,
  PHONE,
  PLAIN_TEXT
} from '../../office/plain-text.ts'
import { day, id, refusedAs } from './common.ts'

const PLAIN = 'a text that says something, without markup'
const text = z
  .string()
  .regex(PLAIN_TEXT, PLAIN)
  .meta({ id: 'plain-text', ...refusedAs(PLAIN) })

const NUMBER = 'a phone number, like `555-0110` or `555-0110 ext. 12`'
const phone = z
  .string()
  .regex(PHONE, NUMBER)
  .meta({ id: 'phone', ...refusedAs(NUMBER) })

/** One text, which is English, or the same text by language tag. */
const localText = z
  .union([text, z.strictObject({ en: text.describe('The English text.') }).catchall(text)])
  .meta({ id: 'local-text' })
  .describe('A text, which is English, or the same text by language: en, es …')

const TIME = 'a time written as hours and minutes, like `16:30`'
const clock = z
  .string()
  .regex(CLOCK, TIME)
  .meta({ id: 'clock', ...refusedAs(TIME) })

const zone = z.string().refine(isZone, 'a time zone by its place, like `America/Chicago`')

const COUNTY = 'five digits, two for the state and three for the county, like `99001`'
const countyCode = z
  .string()
  .regex(COUNTY_CODE, COUNTY)
  .meta({ id: 'county-code', ...refusedAs(COUNTY) })

const FOLDER = 'a folder, like `plain/`, or an address that begins with http:// or https://'
const folder = z
  .string()
  .regex(PAGES_FOLDER, FOLDER)
  .meta({ id: 'pages-folder', ...refusedAs(FOLDER) })

/** Where the numbers for emergencies and poisoning are known. */
const COUNTRIES = Object.keys(COUNTRY_NUMBERS)
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
    .enum(COUNTRIES)
    .describe('It chooses the numbers for emergencies and poisoning, which nothing here replaces.'),
  address: z
    .url({ protocol: /^https?$/ })
    .refine(address => !/[#?]/.test(address), 'an address without `#` or `?`')
    .meta({ pattern: '^https?:[^#?]+$', ...refusedAs(ADDRESS) })
    .optional()
    .describe('Where the public finds this installation; it stands on sheets.'),
  'plain-pages': folder
    .optional()
    .describe(
      'Where the pages of `jarside plain` lie, seen from the other pages: linked where no script runs. It holds from the next build on.'
    ),
  numbers: z
    .array(
      z.strictObject({
        id: id.describe('A name for it; referrals use it.'),
        label: text.describe('Who answers.'),
        phone: phone.describe('The number as it is dialed.'),
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
          z
            .strictObject({
              days: z.array(z.enum(WEEKDAYS)).min(1).describe('The days with these hours.'),
              opens: clock.describe('From when, such as 08:00.'),
              closes: clock.describe('Until when, such as 16:30.')
            })
            .refine(({ opens, closes }) => opens < closes, 'hours that open before they close')
        )
        .describe('The hours of an ordinary week.'),
      closed: z.array(day).describe('Days on which nobody answers.')
    })
    .describe('When somebody answers.'),
  measures: z
    .array(z.enum(OFFICE_MEASURES))
    .optional()
    .describe('What the office measures, in its hours, for callers who bring it in.'),
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
  'non-discrimination': localText
    .optional()
    .describe(
      'Whom the office serves, in its own words and in each language as it was given: it stands at the foot of sheets. No machine translates it; where a language has none, the English stands.'
    ),
  log: z
    .strictObject({
      'keep-months': z
        .int()
        .min(1)
        .max(240)
        .optional()
        .describe('Records of the contact log are kept so many months, then only their sums.'),
      counties: z
        .array(
          z.strictObject({
            code: countyCode.describe('Its five digits.'),
            name: text.describe('Its name.')
          })
        )
        .optional()
        .describe("The counties that callers come from, the office's own first.")
    })
    .optional()
    .describe('How the desk keeps its log of contacts.'),
  translations: z
    .enum(['drafts', 'reviewed-only'])
    .optional()
    .describe(
      'Whether draft translations are shown, with the English beside what to do. `reviewed-only`: the English in their place. It holds from the next build on.'
    ),
  'valid-until': day.describe('The last day on which these numbers may be trusted.')
})
export type AuthoredOffice = z.infer<typeof officePackSchema>

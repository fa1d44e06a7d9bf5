import { z } from 'zod'
import { OFFICE_TRIGGERS } from '../../office/office-pack.ts'
import { day, id, text } from './common.ts'

/** One text, which is English, or the same text by language tag. */
const localText = z.union([text, z.strictObject({ en: text }).catchall(text)])

const clock = z
  .string()
  .regex(/^(?:[01]\d|2[0-3]):[0-5]\d$/, 'a time written as hours and minutes, like `16:30`')

const zone = z.string().refine(isZone, 'a time zone by its place, like `America/Chicago`')

/**
 * `public/office.json`: one office's numbers, hours and referrals.
 *
 * Emergency and poison help are no triggers here: no office replaces those numbers.
 */
export const officePackSchema = z.strictObject({
  office: z.strictObject({ name: text, county: text }),
  country: z.string().regex(/^[A-Z]{2}$/, 'a country by its two letters, like `US`'),
  address: z
    .url({ protocol: /^https?$/ })
    .refine(address => !/[#?]/.test(address), 'an address without `#` or `?`')
    .optional(),
  numbers: z.array(
    z.strictObject({ id, label: text, phone: text, 'verified-on': day, owner: text })
  ),
  hours: z.strictObject({
    zone,
    week: z.array(
      z.strictObject({
        days: z.array(z.enum(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'])).min(1),
        opens: clock,
        closes: clock
      })
    ),
    closed: z.array(day)
  }),
  referrals: z.array(
    z.strictObject({
      trigger: z.enum(OFFICE_TRIGGERS),
      name: localText,
      number: id.optional(),
      say: localText.optional()
    })
  ),
  notices: z.array(
    z.strictObject({ id, text: localText, from: day.optional(), until: day.optional() })
  ),
  'valid-until': day
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

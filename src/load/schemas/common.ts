import { z } from 'zod'
import { OFFICE_TRIGGERS } from '../../office/office-pack.ts'
import { USES } from '../../tree/tree.ts'

const NAME = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/
const DAY = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/
const RESERVED = ['unsure', 'others', 'none', 'rest']

const named = 'a name of small letters, digits and single hyphens, like `wet-film`'

/** The name of anything authored. */
export const id = z.string().max(80).regex(NAME, { error: named, abort: true })

/** The name of an answer or sign: words that every question understands are taken. */
export const answerId = id.refine(
  name => !RESERVED.includes(name),
  `a name of its own (\`${RESERVED.join('`, `')}\` are taken)`
)

/** One name or several. */
export const ids = z.union([id, z.array(id)])

/** A list of names, as authors write one entry or several. */
export const listed = (entries: string | readonly string[] | undefined): readonly string[] =>
  entries === undefined ? [] : typeof entries === 'string' ? [entries] : entries

/** A day of the calendar. */
export const day = z
  .string()
  .regex(DAY, { error: 'a day written as year-month-day, like `2027-11-01`', abort: true })
  .refine(isOfCalendar, 'a day that the calendar has')

/** A text that says something. */
export const text = z.string().regex(/\S/, 'a text that says something')

/** What may be drunk or eaten. */
export const use = z.enum(USES)

/** Who is called, by what has happened. */
export const trigger = z.enum(['emergency', 'poison-help', ...OFFICE_TRIGGERS])

/** Callers' own words, by language. */
export const said = z.record(z.string(), z.array(text))

/** The ends that a part of a measure's line may have. */
export const rangeKeys = {
  'at-least': z.number().optional(),
  over: z.number().optional(),
  under: z.number().optional(),
  'at-most': z.number().optional()
}

/** A part of a measure's line. */
export const range = z.strictObject(rangeKeys)

/** When to look again. */
export const recheck = z.union([
  z.strictObject({ hours: z.tuple([z.number().min(0), z.number().min(0)]) }),
  z.strictObject({ day: z.number().int().min(0) })
])

function isOfCalendar(day: string): boolean {
  const date = new Date(`${day}T00:00:00Z`)
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(day)
}

import { z } from 'zod'
import { OFFICE_TRIGGERS } from '../../office/office-pack.ts'
import { USES } from '../../tree/tree.ts'

const NAME = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/
const DAY = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/
/** The same days with the lengths of the months, for schemas, which can ask no calendar. */
const OF_CALENDAR: readonly RegExp[] = [
  /\d{4}-(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])/,
  /\d{4}-(?:0[469]|11)-(?:0[1-9]|[12]\d|30)/,
  /\d{4}-02-(?:0[1-9]|1\d|2[0-8])/,
  /(?:\d\d(?:0[48]|[2468][048]|[13579][26])|(?:[02468][048]|[13579][26])00)-02-29/
]
const RESERVED = ['unsure', 'others', 'none', 'rest']

const named = 'a name of small letters, digits and single hyphens, like `wet-film`'

/** The name of anything authored. */
export const id = z
  .string()
  .max(80)
  .regex(NAME, { error: named, abort: true })
  .meta({ id: 'name', ...refusedAs(named) })

/** The name of an answer or sign: words that every question understands are taken. */
export const answerId = id
  .refine(
    name => !RESERVED.includes(name),
    `a name of its own (\`${RESERVED.join('`, `')}\` are taken)`
  )
  .meta({ id: 'answer-name', not: { enum: RESERVED } })

/** One name or several. */
export const ids = z.union([id, z.array(id)]).meta({ id: 'names' })

/** The sources of a statement. */
export const because = ids.describe(
  'On what this rests: one source of shared/sources.yaml, or a list of several.'
)

/** A list of names, as authors write one entry or several. */
export const listed = (entries: string | readonly string[] | undefined): readonly string[] =>
  entries === undefined ? [] : typeof entries === 'string' ? [entries] : entries

/** A day of the calendar. */
export const day = z
  .string()
  .regex(DAY, { error: 'a day written as year-month-day, like `2027-11-01`', abort: true })
  .refine(isOfCalendar, 'a day that the calendar has')
  .meta({
    id: 'day',
    pattern: `^(?:${OF_CALENDAR.map(({ source }) => source).join('|')})$`,
    ...refusedAs('a day that the calendar has, like `2027-11-01`')
  })

/** A text that says something. */
export const text = z
  .string()
  .regex(/\S/, 'a text that says something')
  .meta({ id: 'text', ...refusedAs('a text that says something') })

/** What may be drunk or eaten. */
export const use = z.enum(USES).meta({ id: 'use' })

/** Who is called, by what has happened. */
export const trigger = z
  .enum(['emergency', 'poison-help', ...OFFICE_TRIGGERS])
  .meta({ id: 'trigger' })

/** Callers' own words, by language. */
export const said = z
  .record(z.string(), z.array(text))
  .meta({ id: 'said' })
  .describe('What callers say for it, by language, such as `en: [hairy, like velvet]`.')

/** The ends that a part of a measure's line may have. */
export const rangeKeys = {
  'at-least': z.number().optional().describe('From this reading on, itself included.'),
  over: z.number().optional().describe('Above this reading, itself left out.'),
  under: z.number().optional().describe('Below this reading, itself left out.'),
  'at-most': z.number().optional().describe('Up to this reading, itself included.')
}

/** A part of a measure's line. */
export const range = z.strictObject(rangeKeys).meta({ id: 'range' })

/** When to look again. */
export const recheck = z
  .union([
    z.strictObject({
      hours: z
        .tuple([z.number().min(0), z.number().min(0)])
        .describe('From how many hours to how many, such as `[24, 48]`.')
    }),
    z.strictObject({ day: z.number().int().min(0).describe('On which day of the ferment.') })
  ])
  .meta({ id: 'recheck' })
  .describe('When to look again: within hours, or on a day.')

/** What an editor says where the form is not kept. */
export function refusedAs(wants: string): { readonly patternErrorMessage: string } {
  return { patternErrorMessage: `Write ${wants.replaceAll('`', '')}.` }
}

function isOfCalendar(day: string): boolean {
  const date = new Date(`${day}T00:00:00Z`)
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(day)
}

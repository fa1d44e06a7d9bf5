import { type OfficeHours, type OpenHours, WEEKDAYS } from '../office/office-pack.ts'
import { inLatinDigits } from './direction.ts'

/** The first of January of 2024 was a Monday. */
const MONDAY = Date.UTC(2024, 0, 1)
const DAY = 86_400_000

/** The hours of an ordinary week: "Mon – Thu 8:00 AM – 4:30 PM; Fri …". */
export function hoursText({ week }: OfficeHours, tag: string): string {
  const write = new Intl.DateTimeFormat(inLatinDigits(tag), {
    timeZone: 'UTC',
    hour: 'numeric',
    minute: '2-digit'
  })
  const clock = (time: string) => Date.parse(`2024-01-01T${time}:00Z`)
  return week
    .map(hours => {
      const between = write.formatRange(clock(hours.opens), clock(hours.closes))
      return `${daysText(hours.days, tag)} ${between}`
    })
    .join('; ')
}

/** Days in a row as the first and the last of them. */
function daysText(days: OpenHours['days'], tag: string): string {
  const write = new Intl.DateTimeFormat(tag, { timeZone: 'UTC', weekday: 'short' })
  const name = (index: number) => write.format(MONDAY + index * DAY)
  const places = WEEKDAYS.flatMap((day, index) => (days.includes(day) ? [index] : []))
  const runs: number[][] = []
  for (const place of places) {
    const run = runs.at(-1)
    if (run?.at(-1) === place - 1) run.push(place)
    else runs.push([place])
  }
  return runs
    .map(run => [...new Set([run[0] ?? 0, run.at(-1) ?? 0])].map(name).join('–'))
    .join(', ')
}

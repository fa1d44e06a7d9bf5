import { aloud, type Breach, isAbout, LIMITS, MOST_NEEDLESS, needlessShare } from './limits.ts'
import type { Reading } from './measure.ts'
import { ALOUD, minutes, SILENTLY } from './words.ts'

const LANGUAGES: Readonly<Record<string, string>> = { en: 'English', es: 'Spanish' }

/** A table in Markdown, its columns as wide as what is in them. */
export function tableOf(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = head.map((name, index) =>
    Math.max(3, name.length, ...rows.map(row => (row[index] ?? '').length))
  )
  const line = (row: readonly string[]) =>
    `| ${widths.map((width, index) => (row[index] ?? '').padEnd(width)).join(' | ')} |`
  return [line(head), line(widths.map(width => '-'.repeat(width))), ...rows.map(line)].join('\n')
}

/** The callers of one place in one language, a line each. */
export function placeTable(readings: readonly Reading[]): string {
  const desk = readings.some(({ place }) => place === 'desk')
  const head = desk
    ? ['caller', 'asked (needless)', 'aloud: questions', 'card', 'small print', 'in sight', 'keys']
    : ['caller', 'asked (needless)', 'before (in sight)', 'outcome (in sight)', 'screens', 'taps']
  const both = ({ inSight, whole }: Reading['before']) => `${whole} (${inSight})`
  const rows = readings.map(reading => {
    const { caller, asked, needless, before, outcome, screens, presses } = reading
    const first = [caller, `${asked.length} (${needless.length})`]
    const cells = desk
      ? [reading.aloud.asked, reading.aloud.card, reading.aloud.smallPrint, outcome.inSight]
      : [both(before), both(outcome), screens]
    const time = desk ? minutes(aloud(reading), ALOUD) : minutes(reading.toVerdict, SILENTLY)
    return [...first, ...[...cells, presses, time].map(String)]
  })
  return tableOf([...head, 'min'], rows)
}

/** Each goal with the worst number that it is about. */
export function goalsTable(readings: readonly Reading[]): string {
  const rows = LIMITS.flatMap(limit => {
    const about = readings.filter(reading => isAbout(limit, reading))
    const [worst] = [...about].sort((a, b) => limit.of(b) - limit.of(a))
    if (worst === undefined) return []
    const kept = about.filter(reading => limit.of(reading) <= limit.most).length
    const where = `${worst.caller}, ${worst.place}, ${worst.language}`
    return [
      [
        `${limit.what}${limit.caller ? `: ${limit.caller}` : ''}`,
        `${limit.most}`,
        `${limit.of(worst)} (${where})`,
        `${kept} of ${about.length}`
      ]
    ]
  })
  const share = `${needlessShare(readings)}`
  return tableOf(
    ['goal', 'at most', 'worst', 'kept by'],
    [...rows, ['% needless questions', `${MOST_NEEDLESS}`, `${share} (all of them)`, '']]
  )
}

/** One breach, as a sentence. */
export const breachLine = ({ caller, place, language, what, number, most }: Breach): string =>
  `${caller}, ${place}, ${language}: ${number} ${what}, goal ${most}`

/** Everything measured, as Markdown. */
export function document(readings: readonly Reading[], on: string): string {
  const places = [...new Set(readings.map(({ place }) => place))]
  const languages = [...new Set(readings.map(({ language }) => language))]
  const tables = places.flatMap(place =>
    languages.flatMap(language => {
      const its = readings.filter(each => each.place === place && each.language === language)
      if (its.length === 0) return []
      const title = `## ${place[0]?.toUpperCase()}${place.slice(1)}, ${LANGUAGES[language] ?? language}`
      return [title, needlessLine(its), placeTable(its)]
    })
  )
  return [
    '# What a caller has to read',
    `Written by \`npm run -s reading -- --write docs/reading.md\` on ${on}. Twelve callers ([\`callers.yaml\`](../bench/reading/callers.yaml)) are played in Chromium to their outcome, in the place and window each is used in.`,
    NOTES.map(note => `- ${note}`).join('\n'),
    '## Against the goals',
    goalsTable(readings),
    ...tables
  ].join('\n\n')
}

const NOTES = [
  '_before_: words shown before the outcome; _outcome_: at the outcome; each whole, with nothing unfolded, and in brackets what is in sight without scrolling, nothing over it. Head, foot and the answers so far count once. In Spanish, the English beside cautions counts too.',
  '_screens_: heights of everything before the outcome in windows of 844 pixels (the kiosk: 1,920), and one for the outcome.',
  `_min_: to the verdict (everything before the outcome, and of the outcome what is in sight) at ${SILENTLY} words a minute; at the desk read aloud at ${ALOUD} (Brysbaert 2019, doi 10.1016/j.jml.2019.104047: both of English).`,
  '_aloud_: questions with how to look and the names of the answers; the card: the first verdict up to its last step now, and any danger told at once. What the caller saw is not read back. The small print under answers is apart. With a caller who speaks Spanish it is counted in Spanish, where there is any.',
  '_keys_: an answer by its key, a mark, a number with its Enter, a choice of ferment or language: one each.',
  '_needless_: whatever else had been answered to the question, all else told the same, verdicts, use, steps, calls and the day to look again would be what they are.'
]

function needlessLine(readings: readonly Reading[]): string {
  const counts = new Map<string, number>()
  for (const id of readings.flatMap(({ needless }) => needless))
    counts.set(id, (counts.get(id) ?? 0) + 1)
  const most = [...counts].sort(([, a], [, b]) => b - a).map(([id, count]) => `${id} ${count}`)
  return `Needless: ${needlessShare(readings)} %${most.length > 0 ? ` (${most.join(', ')})` : ''}.`
}

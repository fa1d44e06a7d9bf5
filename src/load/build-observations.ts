import type { Observation, Range } from '../tree/observation.ts'
import type { Shaped } from './project.ts'
import type { FindingReport } from './report.ts'
import type { AuthoredObservation, AuthoredObservations } from './schemas/observations.ts'

type Choice = AuthoredObservation & { kind: 'choice' }
type Measure = AuthoredObservation & { kind: 'measure' }

/** Every observation of the catalogue, with what settles what checked. */
export function buildObservations(
  { value, doc }: Shaped<AuthoredObservations>,
  report: FindingReport
): ReadonlyMap<string, Observation> {
  for (const [id, observation] of Object.entries(value)) {
    if (observation.kind === 'measure') checkInputs(id, observation, { value, doc }, report)
    if (observation.kind !== 'choice' || observation.settles === undefined) continue
    const settled = Object.hasOwn(value, observation.settles)
      ? value[observation.settles]
      : undefined
    const place = doc.place([id, 'settles'], 'value')
    const name = observation.settles
    if (settled === undefined) {
      report.add('unknown-observation', place, {
        name,
        near: report.near(name, Object.keys(value))
      })
    } else if (settled.kind !== 'choice' || settled.settles !== undefined || name === id) {
      report.add('settles-nothing', place, { observation: id, settles: name })
    } else checkStandsFor(id, observation, name, settled, { value, doc }, report)
  }
  return new Map(Object.entries(value).map(([id, authored]) => [id, build(id, authored)]))
}

function checkInputs(
  id: string,
  { derived }: Measure,
  { value, doc }: Shaped<AuthoredObservations>,
  report: FindingReport
): void {
  for (const [input, name] of Object.entries(derived?.from ?? {})) {
    if (Object.hasOwn(value, name)) continue
    const near = report.near(name, Object.keys(value))
    const place = doc.place([id, 'derived', 'from', input], 'value')
    report.add('unknown-observation', place, { name, near })
  }
}

function checkStandsFor(
  id: string,
  observation: Choice,
  settles: string,
  settled: Choice,
  { doc }: Shaped<AuthoredObservations>,
  report: FindingReport
): void {
  const names = Object.keys(settled.answers)
  for (const [answer, { 'stands-for': name }] of Object.entries(observation.answers)) {
    if (name === undefined) {
      const place = doc.place([id, 'answers', answer])
      report.add('missing-stands-for', place, { observation: id, settles, answer })
    } else if (!names.includes(name)) {
      const place = doc.place([id, 'answers', answer, 'stands-for'], 'value')
      const near = report.near(name, names)
      report.add('stands-for-unknown', place, { answer, name, settles, known: names, near })
    }
  }
}

function build(id: string, authored: AuthoredObservation): Observation {
  const { about } = authored
  switch (authored.kind) {
    case 'choice':
      return {
        kind: 'choice',
        id,
        about,
        answers: Object.entries(authored.answers).map(([answer, marks]) => ({
          id: answer,
          danger: marks.danger ?? false,
          usual: marks.usual ?? false,
          ...(marks['stands-for'] !== undefined && { standsFor: marks['stands-for'] })
        })),
        ...(authored.settles !== undefined && { settles: authored.settles }),
        ...(authored.unordered === true && { unordered: true })
      }
    case 'signs':
      return {
        kind: 'signs',
        id,
        about,
        signs: Object.entries(authored.signs).map(([sign, marks]) => ({
          id: sign,
          danger: marks.danger ?? false,
          volunteered: marks.volunteered ?? false
        }))
      }
    case 'measure':
      return {
        kind: 'measure',
        id,
        about,
        unit: authored.unit,
        instruments: Object.entries(authored.instruments ?? {}).map(([instrument, plusMinus]) => ({
          id: instrument,
          plusMinus
        })),
        span: authored.span,
        ...(authored.usual && { usual: rangeOf(authored.usual) }),
        ...(authored.derived && { derived: authored.derived })
      }
  }
}

interface AuthoredRange {
  readonly 'at-least'?: number | undefined
  readonly over?: number | undefined
  readonly under?: number | undefined
  readonly 'at-most'?: number | undefined
}

/** A part of a measure's line, from the words that authors write it in. */
export function rangeOf(authored: AuthoredRange): Range {
  return {
    ...(authored['at-least'] !== undefined && { atLeast: authored['at-least'] }),
    ...(authored.over !== undefined && { over: authored.over }),
    ...(authored.under !== undefined && { under: authored.under }),
    ...(authored['at-most'] !== undefined && { atMost: authored['at-most'] })
  }
}

import type { BareEnd } from './state.ts'
import type { End, MetNote, Stop, When } from './stop.ts'

type EndNotes = Pick<End, 'always' | 'perhaps'>

/** For each end the notes that every walk to it meets, and those that some walk to it can meet. */
export function endsWithNotes(
  stops: readonly Stop[],
  ends: readonly BareEnd[]
): readonly EndNotes[] {
  const into = new Map<number, { readonly from: number; readonly notes: readonly MetNote[] }[]>()
  const toEnd = ends.map((): { from: number; notes: readonly MetNote[] }[] => [])
  for (const [from, { exits }] of stops.entries()) {
    for (const { leads, notes } of exits) {
      if ('end' in leads) toEnd[leads.end]?.push({ from, notes })
      else into.set(leads.stop, [...(into.get(leads.stop) ?? []), { from, notes }])
    }
  }
  const always = alwaysMet(stops)
  return ends.map(({ emergency }, end) => {
    if (emergency !== null) return { always: emergency, perhaps: new Map() }
    const ways = toEnd[end] ?? []
    const perhaps = new Map<string, When[]>()
    const seen = new Set<number>()
    const gather = (notes: readonly MetNote[]) => {
      for (const { note, when } of notes) if (when !== null) addOnce(perhaps, note, when)
    }
    const visit = (stop: number) => {
      if (seen.has(stop)) return
      seen.add(stop)
    }
    for (const { from, notes } of ways) {
      gather(notes)
      visit(from)
    }
    for (const stop of seen) {
      for (const { from, notes } of into.get(stop) ?? []) {
        gather(notes)
        visit(from)
      }
    }
    const sets = ways.map(({ from, notes }) => union(always.get(from) ?? new Set(), certain(notes)))
    const every = intersection(sets)
    for (const note of every) perhaps.delete(note)
    return { always: [...every], perhaps }
  })
}

/** The notes that every way to a stop meets. */
function alwaysMet(stops: readonly Stop[]): ReadonlyMap<number, ReadonlySet<string>> {
  const met = new Map<number, ReadonlySet<string>>([[0, new Set()]])
  const waiting = [0]
  for (let stop = waiting.pop(); stop !== undefined; stop = waiting.pop()) {
    const here = met.get(stop) ?? new Set()
    for (const { leads, notes } of stops[stop]?.exits ?? []) {
      if (!('stop' in leads)) continue
      const there = met.get(leads.stop)
      const arriving = union(here, certain(notes))
      const now = there === undefined ? arriving : intersection([there, arriving])
      if (there !== undefined && there.size === now.size) continue
      met.set(leads.stop, now)
      waiting.push(leads.stop)
    }
  }
  return met
}

/** What an exit says to everybody who takes it; of a screen's signs each depends on its own. */
const certain = (notes: readonly MetNote[]): ReadonlySet<string> =>
  new Set(
    notes.filter(({ when }) => when === null || when.on.kind !== 'signs').map(one => one.note)
  )

const union = (a: ReadonlySet<string>, b: ReadonlySet<string>) => new Set([...a, ...b])

function intersection(sets: readonly ReadonlySet<string>[]): ReadonlySet<string> {
  const [first, ...others] = sets
  return new Set([...(first ?? [])].filter(one => others.every(other => other.has(one))))
}

function addOnce(perhaps: Map<string, When[]>, note: string, when: When): void {
  const before = perhaps.get(note) ?? []
  const key = JSON.stringify(when)
  if (before.some(one => JSON.stringify(one) === key)) return
  perhaps.set(note, [...before, when])
}

/** A line's step from one layer to the next: where it leaves the upper one, where it comes to the lower. */
export interface Hop {
  /** The upper of the two layers. */
  readonly layer: number
  readonly from: number
  readonly to: number
  /** Steps of one group run along one line. */
  readonly group: string
}

/** Where the layers stand, and at what height each step runs across. */
export interface Routed {
  readonly tops: readonly number[]
  readonly height: number
  /** Null where it goes straight down. */
  trackOf(hop: Hop): number | null
}

/** Between two lines that run side by side. */
const TRACK = 7
/** Between a layer and the lines under it, so that an arrow can be seen. */
export const ROOM = 9
/** A step that small is drawn, but takes no line of its own. */
const STRAIGHT = 0.5

/** Gives each gap between layers as many lines as it needs: no two steps of different groups run on one. */
export function routeHops(hops: readonly Hop[], heights: readonly number[]): Routed {
  const tops: number[] = []
  const tracks = new Map<string, number>()
  let y = 0
  heights.forEach((height, layer) => {
    tops.push(y)
    y += height
    if (layer === heights.length - 1) return
    const own = hops.filter(hop => hop.layer === layer)
    const places = placesOf(own)
    const count = Math.max(0, ...[...places.values()].map(place => place + 1))
    for (const [group, place] of places) tracks.set(`${layer} ${group}`, y + ROOM + place * TRACK)
    // Layers without boxes lie between those with some: they take room for their lines alone.
    if (count > 0) y += 2 * ROOM + (count - 1) * TRACK
    else if (height > 0) y += ROOM
  })
  return {
    tops,
    height: y,
    trackOf: hop => (isStraight(hop) ? null : (tracks.get(`${hop.layer} ${hop.group}`) ?? null))
  }
}

const isStraight = ({ from, to }: Hop) => Math.abs(from - to) < STRAIGHT

/** By group its place among the lines of one gap, from above. */
function placesOf(hops: readonly Hop[]): ReadonlyMap<string, number> {
  const names = [...new Set(hops.filter(hop => !isStraight(hop)).map(({ group }) => group))]
  const groups = names.map(name => {
    const own = hops.filter(({ group }) => group === name)
    const ends = own.flatMap(({ from, to }) => [from, to])
    return { name, own, left: Math.min(...ends), right: Math.max(...ends) }
  })
  type Group = (typeof groups)[number]
  /** One comes down where the other goes on down: it has to turn off before. */
  const isAbove = (one: Group, other: Group) =>
    one !== other && one.own.some(({ from }) => other.own.some(({ to }) => Math.abs(from - to) < 3))
  const places = new Map<string, number>()
  const waiting = [...groups].sort((one, other) => one.left - other.left || one.right - other.right)
  while (waiting.length > 0) {
    const free = waiting.findIndex(group => !waiting.some(other => isAbove(other, group)))
    // Where they wait for each other, one has to begin.
    const [group] = waiting.splice(Math.max(free, 0), 1)
    if (group === undefined) break
    const lowest = groups.filter(other => places.has(other.name) && isAbove(other, group))
    let place = Math.max(0, ...lowest.map(({ name }) => (places.get(name) ?? 0) + 1))
    const collides = () =>
      groups.some(
        other =>
          other !== group &&
          places.get(other.name) === place &&
          other.left < group.right + TRACK &&
          group.left < other.right + TRACK
      )
    while (collides()) place += 1
    places.set(group.name, place)
  }
  return places
}

const LONGEST_NAME = 80

/** The known names that were most likely meant, nearest first, at most three. */
export function nearestNames(given: string, names: Iterable<string>): readonly string[] {
  if (given.length > LONGEST_NAME) return []
  const allowed = Math.max(2, Math.floor(given.length / 3))
  const near: { name: string; distance: number }[] = []
  for (const name of new Set(names)) {
    if (name === given || Math.abs(name.length - given.length) > allowed) continue
    const distance = editDistance(given.toLowerCase(), name.toLowerCase())
    if (distance <= allowed && distance < Math.max(given.length, name.length)) {
      near.push({ name, distance })
    }
  }
  return near
    .sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : 1))
    .slice(0, 3)
    .map(({ name }) => name)
}

/** Letters put in, left out, exchanged or swapped with a neighbour (optimal string alignment). */
export function editDistance(a: string, b: string): number {
  let before: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const exchange = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, exchange)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (before[j - 2] ?? 0) + 1)
      }
      row.push(least)
    }
    before = last
    last = row
  }
  return last[b.length] ?? 0
}

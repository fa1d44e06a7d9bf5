/** The value below which so much of the list lies (nearest rank), to a tenth. */
export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b)
  return tenth(sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)])
}

/** The middle of a list, to a tenth. */
export const median = values => quantile(values, 0.5)

/** A number to a tenth. */
export const tenth = value => Math.round(value * 10) / 10

/** How many milliseconds a piece of work takes, and what it gives. */
export async function timed(work) {
  const start = performance.now()
  const result = await work()
  return { ms: performance.now() - start, made: result }
}

/** Rows under each other: the first column begins at the left, every other ends at the right. */
export function columns(all: readonly (readonly string[])[]): string[] {
  const widths = (all[0] ?? []).map((_, at) => Math.max(...all.map(row => (row[at] ?? '').length)))
  return all.map(row =>
    row
      .map((cell, at) => (at === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[at] ?? 0)))
      .join('  ')
      .trimEnd()
  )
}

/** Rows under each other: the first column begins at the left, every other ends at the right. */
export function columns(all: readonly (readonly string[])[]): string[] {
  const widths = (all[0] ?? []).map((_, index) =>
    Math.max(...all.map(row => (row[index] ?? '').length))
  )
  return all.map(row =>
    row
      .map((cell, index) =>
        index === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[index] ?? 0)
      )
      .join('  ')
      .trimEnd()
  )
}

interface Recorded {
  readonly on: string
  readonly machine: { readonly node: string; readonly cores: number; readonly load?: number }
  readonly note?: string
  readonly rows: readonly (readonly string[])[]
}

export function record(part: string, figures: unknown): string
export function recorded(): Readonly<Record<string, Recorded>>
export function measuredPage(records: Readonly<Record<string, Recorded>>): string

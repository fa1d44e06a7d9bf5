import type { Does } from './does.ts'

/** What a caller asks once the verdict is out. Words: locales/<tag>/follow-ups.json. */
export interface FollowUp {
  readonly id: string
  /** The verdicts after which it is offered, on any track. */
  readonly after: readonly string[]
  /** What its answer tells somebody to do. */
  readonly does: Does
  /** Source ids. */
  readonly because: readonly string[]
}

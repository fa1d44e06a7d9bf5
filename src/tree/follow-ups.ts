/** What a caller asks once the verdict is out. Words: locales/<tag>/follow-ups.json. */
export interface FollowUp {
  readonly id: string
  /** The verdicts after which it is offered, on any track. */
  readonly after: readonly string[]
  /** Said as well while somebody needs help: it throws nothing away. */
  readonly whileIll: boolean
  /** Source ids. */
  readonly because: readonly string[]
}

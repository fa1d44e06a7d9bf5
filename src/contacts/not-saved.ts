/** Why a browser did not keep something. */
export type WhyNotSaved = 'full' | 'blocked' | 'failed'

/** Something was not saved. What it was is with whoever asked for it. */
export class NotSaved extends Error {
  override readonly name = 'NotSaved'
  readonly why: WhyNotSaved

  constructor(why: WhyNotSaved, cause: unknown) {
    super(`The log was not saved: ${why}.`, { cause })
    this.why = why
  }
}

/** The same error in our words. */
export function notSaved(error: unknown): NotSaved {
  if (error instanceof NotSaved) return error
  const name = error instanceof Error || error instanceof DOMException ? error.name : ''
  if (name === 'QuotaExceededError') return new NotSaved('full', error)
  const blocked = ['SecurityError', 'InvalidStateError', 'NotAllowedError', 'ReferenceError']
  return new NotSaved(blocked.includes(name) ? 'blocked' : 'failed', error)
}

/** What is known of a page that shows no first screen, or only a part of what it has. */
export interface Trouble {
  /** A copy that has shown its screens is kept beside the one that was loaded. */
  readonly proven: boolean
  /** It was put back since somebody last used the page. */
  readonly restored: boolean
  /** The page was fetched anew since somebody last used it. */
  readonly mended: boolean
  /** The server can be reached. */
  readonly reached: boolean
}

/**
 * What is done next: the proven copy is put back first, because that needs no network and loses nothing;
 * then everything is fetched anew, once; `wait` is for a network, and `leave` leaves the numbers in sight.
 */
export function nextMend({
  proven,
  restored,
  mended,
  reached
}: Trouble): 'restore' | 'renew' | 'wait' | 'leave' {
  if (proven && !restored) return 'restore'
  if (mended) return 'leave'
  return reached ? 'renew' : 'wait'
}

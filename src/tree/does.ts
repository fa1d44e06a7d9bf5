/** What a step, or a note that tells somebody to do something, does. Nothing named: it does nothing to it. */
export interface Does {
  /** What becomes of the food: it goes on, serves for something else, is kept for the health department, is thrown out. */
  readonly batch?: 'keep' | 'other-use' | 'hold' | 'discard' | undefined
  /** What becomes of it if what is found out is not as it should be. */
  readonly orElse?: 'discard' | undefined
  /** What is done to the vessel, in this order. */
  readonly vessel?: readonly VesselDeed[] | undefined
  /** What must have been done to the vessel before. */
  readonly after?: 'chill' | undefined
  /** It comes before what else is done. */
  readonly first?: boolean | undefined
  /** No other step is done before the call that it names. */
  readonly stops?: boolean | undefined
  /** It can wait until all else is done, and is said after it. */
  readonly later?: boolean | undefined
  /** What is done to the growth, the film or the food in it. */
  readonly top?: 'leave' | 'touch' | undefined
  /** Whether anybody has some of it. */
  readonly use?: 'none' | 'some' | undefined
  /** Whom to call, and by when. */
  readonly call?: Readonly<Record<string, CallTime>> | undefined
  /** What is said in its place where whom it calls is called now anyway. */
  readonly onceCalled?: readonly string[] | undefined
  /** What is measured. */
  readonly measure?: string | undefined
  /** `others`: at other vessels than this one. */
  readonly look?: 'near' | 'afar' | 'others' | undefined
  /** Something is asked or looked up; `who`: who had some or will have some. */
  readonly ask?: boolean | 'who' | undefined
  readonly washes?: boolean | undefined
  readonly pours?: boolean | undefined
  /** Its words name a time to wait for, or until. */
  readonly dated?: boolean | undefined
  /** Its words say by when a wait is over and what then, or what it has one do ends it. */
  readonly ends?: boolean | undefined
  /** It names this day of the ferment as one to come. */
  readonly byDay?: number | undefined
  /** Verdicts for which a note gives the reason though another answer raises them. */
  readonly reasonFor?: readonly string[] | undefined
  /** Numbers that its words state and no limit decides by. */
  readonly states?: readonly number[] | undefined
  /** What must be there for it. */
  readonly presumes?: readonly string[] | undefined
  /** What is said in its place where the answers rule that out. */
  readonly otherwise?: readonly string[] | undefined
}

export const VESSEL_DEEDS = [
  'leave',
  'closed',
  'cover',
  'move',
  'chill',
  'warm',
  'vent',
  'open',
  'hold',
  'discard'
] as const
export type VesselDeed = (typeof VESSEL_DEEDS)[number]

/** `soon`: no time is named. `if-worse`: only if something goes wrong, or stays in doubt. */
export const CALL_TIMES = ['now', 'today', 'this-week', 'soon', 'if-worse'] as const
export type CallTime = (typeof CALL_TIMES)[number]

const HANDS_OFF: ReadonlySet<VesselDeed> = new Set(['leave', 'closed', 'hold', 'discard'])
const CHANGES_FOOD: ReadonlySet<VesselDeed> = new Set(['warm', 'open', 'discard'])

/** Whether it lessens or changes food that is kept for the health department, or may come to do so. */
export function changesKeptFood({
  batch,
  orElse,
  vessel,
  top,
  use,
  measure,
  washes,
  pours
}: Does): boolean {
  return (
    (batch !== undefined && batch !== 'hold') ||
    orElse === 'discard' ||
    vessel?.some(deed => CHANGES_FOOD.has(deed)) === true ||
    top === 'touch' ||
    use === 'some' ||
    measure !== undefined ||
    washes === true ||
    pours === true
  )
}

/** Whether it brings somebody to the vessel: nobody goes near one that may burst. */
export function goesNear(does: Does): boolean {
  const { vessel, look, stops } = does
  return (
    changesKeptFood(does) ||
    vessel?.some(deed => !HANDS_OFF.has(deed)) === true ||
    look === 'near' ||
    look === 'others' ||
    stops === true
  )
}

/** Whether it is no matter for an emergency: something is looked at or found out, or it can wait. */
export const isForLater = ({ later, look, ask }: Does): boolean =>
  later === true || look !== undefined || ask === true

/** Whether it keeps hands off the vessel now; what leaves it for an office that is called some time does not. */
export const leavesAlone = (does: Does | undefined): boolean =>
  does?.vessel?.includes('leave') === true && !Object.values(does.call ?? {}).includes('soon')

/** Whether it does nothing but keep the vessel closed. */
export function onlyKeepsShut(does: Does | undefined): boolean {
  const { vessel = [], ...rest } = does ?? {}
  return vessel.length === 1 && vessel[0] === 'closed' && Object.keys(rest).length === 0
}

/** Whether it does nothing but say that nobody is to have any. */
export const onlyForbids = (does: Does | undefined): boolean =>
  does?.use === 'none' && Object.keys(does).length === 1

import type { Looks } from '../../machine/stay.ts'
import { DAY_MS } from '../../science/days.ts'
import { KEPT_SHAPE } from './pin.ts'

/** How large the text is for a visitor. */
export const TEXT_SIZES = ['normal', 'larger', 'largest'] as const
export type TextSize = (typeof TEXT_SIZES)[number]

export const CONTRASTS = ['ordinary', 'high'] as const
export type Contrast = (typeof CONTRASTS)[number]

/** How long a visitor may sit still before being asked, in seconds. */
export const IDLE_SECONDS = [30, 60, 120, 300] as const

/** The diagonals of screens that are sold, in inches; null: nobody measured it. */
export const DIAGONALS = [null, 8, 10, 11, 13, 15, 22, 27, 32, 43, 55] as const

/** What staff settled on this device. It says nothing of any visitor, and outlives all of them. */
export interface KioskSettings {
  /** The PIN as `pin.ts` hashes it; null until somebody sets one. */
  readonly pin: string | null
  /** The ferments and languages that are not offered: what a newer copy adds is offered. */
  readonly withoutTrees: readonly string[]
  readonly withoutLanguages: readonly string[]
  readonly idleSeconds: number
  /** What every visitor begins with. */
  readonly text: TextSize
  readonly contrast: Contrast
  readonly inches: number | null
  /** The last day on which this device reached its server, as YYYY-MM-DD; null where that is not known. */
  readonly reachedOn: string | null
}

export const SETTINGS_KEY = 'jarside-kiosk-settings'

export const FIRST_SETTINGS: KioskSettings = {
  pin: null,
  withoutTrees: [],
  withoutLanguages: [],
  idleSeconds: 60,
  text: 'normal',
  contrast: 'ordinary',
  inches: null,
  reachedOn: null
}

/** What this device keeps; what makes no sense in it is as at first. */
export function readSettings(): KioskSettings {
  try {
    return settingsFrom(JSON.parse(localStorage.getItem(SETTINGS_KEY) ?? '{}'))
  } catch {
    return FIRST_SETTINGS
  }
}

/** Keeps the settings; false where this device keeps nothing. */
export function keepSettings(settings: KioskSettings): boolean {
  try {
    localStorage.setItem(SETTINGS_KEY, JSON.stringify(settings))
    return true
  } catch {
    return false
  }
}

/** Settings from parsed JSON, field by field. */
export function settingsFrom(kept: unknown): KioskSettings {
  const of: Readonly<Record<string, unknown>> =
    typeof kept === 'object' && kept !== null ? { ...kept } : {}
  const first = FIRST_SETTINGS
  return {
    pin: typeof of.pin === 'string' && KEPT_SHAPE.test(of.pin) ? of.pin : first.pin,
    withoutTrees: idsIn(of.withoutTrees),
    withoutLanguages: idsIn(of.withoutLanguages),
    idleSeconds: IDLE_SECONDS.find(one => one === of.idleSeconds) ?? first.idleSeconds,
    text: TEXT_SIZES.find(one => one === of.text) ?? first.text,
    contrast: CONTRASTS.find(one => one === of.contrast) ?? first.contrast,
    inches: DIAGONALS.find(one => one === of.inches) ?? first.inches,
    reachedOn:
      typeof of.reachedOn === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(of.reachedOn)
        ? of.reachedOn
        : first.reachedOn
  }
}

const idsIn = (list: unknown): readonly string[] =>
  Array.isArray(list) ? list.filter(one => typeof one === 'string') : []

/** How the screens look to whoever is there. */
export type Shown = Pick<KioskSettings, 'text' | 'contrast'>

/** What a visitor set in place of what staff settled. */
export const shownTo = ({ large, strong }: Looks, { text, contrast }: KioskSettings): Shown => ({
  text: large === null ? text : large ? 'largest' : 'normal',
  contrast: strong === null ? contrast : strong ? 'high' : 'ordinary'
})

/** What is offered of a list: everything where nothing would be left. */
export function offered<T>(
  all: readonly T[],
  idOf: (one: T) => string,
  without: readonly string[]
): readonly T[] {
  const left = all.filter(one => !without.includes(idOf(one)))
  return left.length === 0 ? all : left
}

/** Without a network for longer than this a kiosk says that it may be outdated. */
export const STALE_DAYS = 30

/** Whether this device has not reached its server for so long that its content may be outdated. */
export function mayBeOutdated(reachedOn: string | null, today: Date): boolean {
  return reachedOn !== null && today.getTime() - Date.parse(reachedOn) > STALE_DAYS * DAY_MS
}

const MILLIMETERS = 25.4
/** What a finger needs, whatever the screen. */
const FINGER = 20
const FEWEST_PIXELS = 65

/** The least size of what is touched, in CSS pixels: 20 mm at the set size of the screen, and 64 pixels and more. */
export function fingerPixels(inches: number | null, width: number, height: number): number {
  if (inches === null) return FEWEST_PIXELS
  const perMillimeter = Math.hypot(width, height) / (inches * MILLIMETERS)
  return Math.max(FEWEST_PIXELS, Math.ceil(FINGER * perMillimeter))
}

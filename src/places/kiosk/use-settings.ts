import { useEffect, useState } from 'preact/hooks'
import type { Looks } from '../../machine/stay.ts'
import {
  fingerPixels,
  type KioskSettings,
  keepSettings,
  readSettings,
  type Shown,
  shownTo
} from './settings.ts'

export interface SettingsInHand {
  readonly settings: KioskSettings
  /** What whoever is there sees of text size and contrast. */
  readonly shown: Shown
  /** Whether this device kept what was changed last. */
  readonly writes: boolean
  readonly change: (changed: Partial<KioskSettings>) => void
}

/**
 * What staff settled on this device, shown on the page as text size, contrast and size of what is touched,
 * the first two as the visitor set them.
 */
export function useSettings(looks: Looks): SettingsInHand {
  const [settings, setSettings] = useState(readSettings)
  const [writes, setWrites] = useState(true)
  const { inches } = settings
  const { text, contrast } = shownTo(looks, settings)
  useEffect(() => {
    const { dataset, style } = document.documentElement
    dataset.text = text
    dataset.contrast = contrast
    const resize = () =>
      style.setProperty('--finger', `${fingerPixels(inches, innerWidth, innerHeight)}px`)
    resize()
    addEventListener('resize', resize)
    return () => removeEventListener('resize', resize)
  }, [text, contrast, inches])
  useEffect(() => setWrites(keepSettings(settings)), [settings])
  return {
    settings,
    shown: { text, contrast },
    writes,
    change: changed => setSettings(before => ({ ...before, ...changed }))
  }
}

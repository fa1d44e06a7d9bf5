import { useEffect, useState } from 'preact/hooks'
import { fingerPixels, type KioskSettings, keepSettings, readSettings } from './settings.ts'

export interface SettingsInHand {
  readonly settings: KioskSettings
  /** Whether this device kept what was changed last. */
  readonly writes: boolean
  readonly change: (changed: Partial<KioskSettings>) => void
}

/** What staff settled on this device, shown on the page as text size, contrast and size of what is touched. */
export function useSettings(): SettingsInHand {
  const [settings, setSettings] = useState(readSettings)
  const [writes, setWrites] = useState(true)
  const { text, contrast, inches } = settings
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
    writes,
    change: changed => setSettings(before => ({ ...before, ...changed }))
  }
}

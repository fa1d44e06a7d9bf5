import { officeText, packedOn } from './from-file.ts'
import { keepSettings, readSettings } from './settings.ts'

/*
 * Before the kiosk begins in a file of its own. Nothing can be fetched there: the office's file is answered
 * from this one, and all else is refused as by a network that is gone.
 */
globalThis.fetch = async address => {
  if (address === './office.json') return new Response(officeText)
  throw new TypeError(`${String(address)} is not in this file`)
}

// The file is as old as the day on which it was written: past a month the kiosk says so.
keepSettings({ ...readSettings(), reachedOn: packedOn })

import { useEffect, useState } from 'preact/hooks'
import type { OfficePack } from '../office/office-pack.ts'
import { readOffice } from '../office/read-office.ts'

/**
 * The office pack is this installation's own file; without it the two fixed numbers stand. It is read
 * again whenever `again` changes; until then, and where that fails, the numbers read before stand.
 */
export function useOffice(address = './office.json', again = ''): OfficePack | null {
  const [office, setOffice] = useState<OfficePack | null>(null)
  useEffect(() => {
    fetch(address)
      .then(async answer => {
        if (!answer.ok) return
        const text = await answer.text()
        const { pack, dropped } = readOffice(parsed(text))
        // For whoever set this up; `jarside check` says the same, before anything is put up.
        for (const { at, why } of dropped) console.warn(`office.json, ${at}: ${why}.`)
        // An answer that is no pack (a sign-in page, a broken file) takes no number away.
        if (pack !== null) setOffice(pack)
      })
      // A network that is gone is nobody's fault here.
      .catch(() => undefined)
  }, [address, again])
  return office
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

import { useEffect, useState } from 'preact/hooks'
import { type OfficePack, readOfficePack } from '../../office/office-pack.ts'

/**
 * The office pack is this installation's own file; without it the two fixed numbers stand. It is read
 * again whenever `again` changes; until then, and where that fails, the numbers read before stand.
 */
export function useOffice(address = './office.json', again = ''): OfficePack | null {
  const [office, setOffice] = useState<OfficePack | null>(null)
  useEffect(() => {
    fetch(address)
      .then(async answer => {
        const pack = answer.ok ? readOfficePack(await answer.json()) : null
        // An answer that is no pack (a sign-in page, a broken file) takes no number away.
        if (pack !== null) setOffice(pack)
      })
      // Neither a network that is gone nor a file that breaks off is anybody's fault here.
      .catch(() => undefined)
  }, [address, again])
  return office
}

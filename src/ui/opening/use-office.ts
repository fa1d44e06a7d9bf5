import { useEffect, useState } from 'preact/hooks'
import { type OfficePack, readOfficePack } from '../../office/office-pack.ts'

/** The office pack is this installation's own file; without it the two fixed numbers stand. */
export function useOffice(address = './office.json'): OfficePack | null {
  const [office, setOffice] = useState<OfficePack | null>(null)
  useEffect(() => {
    fetch(address).then(
      async answer => setOffice(answer.ok ? readOfficePack(await answer.json()) : null),
      () => undefined
    )
  }, [address])
  return office
}

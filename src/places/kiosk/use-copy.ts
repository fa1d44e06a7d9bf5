import { useEffect, useRef, useState } from 'preact/hooks'
import { keepOnDevice } from './keep-on-device.ts'

/** The copy that this device keeps; a newer one is taken only while nobody is there. */
export function useCopy(untouched: boolean): { readonly kept: boolean } {
  const [kept, setKept] = useState(false)
  const [newer, setNewer] = useState(false)
  const take = useRef<(() => void) | null>(null)
  useEffect(() => {
    take.current = keepOnDevice({ onKept: () => setKept(true), onNewer: () => setNewer(true) })
  }, [])
  useEffect(() => {
    if (!untouched || !newer) return
    setNewer(false)
    take.current?.()
  }, [untouched, newer])
  return { kept }
}

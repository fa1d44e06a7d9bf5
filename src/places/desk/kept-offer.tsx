import { useEffect, useState } from 'preact/hooks'
import type { Calls } from '../../machine/calls.ts'
import { useSetting } from '../../parts/setting.tsx'
import { Text } from '../../parts/text.tsx'
import { dropCall, factsOf, type KeptCall, keepCall, keptCall } from './kept-call.ts'
import type { CallInHand } from './use-call.ts'

/** The call that was left unfinished when this desk was opened, until somebody says what becomes of it. */
export interface Unfinished {
  readonly kept: KeptCall | null
  /** It was taken up, and its facts are told as soon as its tree is there. */
  readonly taken: boolean
  take(): void
  /** Forgets it, after its facts were told or because nobody wants it. */
  close(): void
}

export function useUnfinished(send: Calls['send']): Unfinished {
  const [kept, setKept] = useState(keptCall)
  const [taken, setTaken] = useState(false)
  return {
    kept,
    taken,
    take() {
      if (kept === null) return
      setTaken(true)
      send({ type: 'speak', language: kept.language })
      send({ type: 'choose', tree: kept.tree, facts: [] })
    },
    close() {
      dropCall()
      setKept(null)
      setTaken(false)
    }
  }
}

/** Offers to go on with the unfinished call, and keeps this one once that is settled. */
export function KeptOffer({
  unfinished,
  call,
  caller
}: {
  unfinished: Unfinished
  call: CallInHand
  caller: string
}) {
  const { tree, words } = useSetting()
  const { kept, taken, take, close } = unfinished
  useEffect(() => {
    if (!taken || kept?.tree !== tree.id) return
    call.tell(factsOf(tree, kept), [])
    close()
  }, [taken, kept, tree])
  useEffect(() => {
    if (kept === null) keepCall(tree, caller, call.facts)
  }, [kept, tree, caller, call.facts])
  if (kept === null || taken) return null
  return (
    <div class="notice desk-kept" role="status">
      <p>
        <Text k="ui:desk.kept" />
      </p>
      <button type="button" class="secondary" data-action="take-up" onClick={take}>
        {words.t('ui:desk.take-up')}
      </button>
      <button type="button" class="quiet" data-action="drop-kept" onClick={close}>
        {words.t('ui:desk.drop')}
      </button>
    </div>
  )
}

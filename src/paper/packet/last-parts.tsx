import type { TextKind } from '../../words/kinds.ts'
import { ComparisonParts } from '../comparison.tsx'
import type { Packet } from './packet.ts'

/** The kinds of text as a reviewer knows them, in the order of the packet. */
export const WORD_KINDS: readonly { readonly kind: TextKind; readonly name: string }[] = [
  { kind: 'action', name: 'What somebody is told to do' },
  { kind: 'referral', name: 'Whom to call' },
  { kind: 'caution', name: 'What to beware of' },
  { kind: 'advice', name: 'Verdicts, reasons and notes' },
  { kind: 'label', name: 'Questions, answers and names' }
]

/** Part 5: every English text by what it is for. */
export function WordList({ packet: { texts } }: { packet: Packet }) {
  return (
    <>
      <p>
        Everything that this tree says in English, by what it is for, with the name under which it
        stands in the files. What stands in {'{{…}}'} is filled in when it is said.
      </p>
      {WORD_KINDS.map(({ kind, name }) => {
        const within = texts.filter(text => text.kind === kind)
        if (within.length === 0) return null
        return (
          <section key={kind}>
            <h3 id={`words-${kind}`}>
              {name} ({kind}: {within.length})
            </h3>
            <ul class="words">
              {within.map(({ namespace, key, text }) => (
                <li key={`${namespace}:${key}`}>
                  {text}{' '}
                  <code>
                    {namespace}:{key}
                  </code>
                </li>
              ))}
            </ul>
          </section>
        )
      })}
    </>
  )
}

/** Part 6: what is new since the last edition that was published. */
export function Changes({ packet: { change, tree, words } }: { packet: Packet }) {
  if (change === null) return <p>No edition of this tree was published yet: all of it is new.</p>
  const { comparison, wording } = change
  const { before, after } = comparison
  return (
    <>
      <p>
        Since edition {before.edition}, meaning {before.fingerprint.slice(0, 12)}; now meaning{' '}
        {after.fingerprint.slice(0, 12)}. What is less cautious stands first.
      </p>
      {before.fingerprint === after.fingerprint && <p>The meaning is the same.</p>}
      {wording.length === 0 && <p>No word, source or step is another.</p>}
      <ComparisonParts accepted={[]} Heading="h3" {...{ comparison, wording, tree, words }} />
    </>
  )
}

/** Part 7: who signs, by role; nobody's name is printed. */
export function Signatures({
  roles,
  mustSign
}: {
  roles: readonly string[]
  mustSign: readonly string[]
}) {
  return (
    <>
      <p>
        I read the parts named beside my role, of the edition and with the fingerprints named at the
        head of this packet. A signature holds for these fingerprints alone. The tree stays a draft
        until each role that must sign has signed.
      </p>
      {roles.map(role => (
        <section key={role} class="signature">
          <h3>
            {roleText(role)}
            {mustSign.includes(role) && ' (must sign)'}
          </h3>
          <p>Parts read ____________________________</p>
          <p>Signature ______________________________ Date ____________</p>
        </section>
      ))}
    </>
  )
}

/** A role as it is printed, languages by their names. */
function roleText(role: string): string {
  const [, tag] = /^native reader of (\S+)$/.exec(role) ?? []
  if (tag === undefined) return role.charAt(0).toUpperCase() + role.slice(1)
  return `Native reader of ${new Intl.DisplayNames('en', { type: 'language' }).of(tag)} (${tag})`
}

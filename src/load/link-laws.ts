import type { Advice, Condition, Tree } from '../tree/tree.ts'
import type { Keys } from './authored.ts'
import { linkConjunction } from './link-rule.ts'
import type { Linking } from './linking.ts'
import type { Shaped } from './project.ts'
import type { AuthoredDeeds } from './schemas/steps.ts'
import type { AuthoredTree } from './schemas/tree.ts'

/** What the laws of what is said need to know of a tree beside the tree itself. */
export function linkLaws(
  linking: Linking,
  { value: tree, doc }: Shaped<AuthoredTree>,
  { value: deeds, doc: steps }: Shaped<AuthoredDeeds>,
  advice: Advice,
  asked: ReadonlySet<string>
): Pick<Tree, 'askedAgain' | 'openCases' | 'presumptions'> {
  const again = { body: { id: 'asked-again' }, place: (keys: Keys) => doc.place(keys) }
  const sentences = [
    ...Object.values(advice.does),
    ...Object.values(advice.notes).map(note => note.does)
  ]
  const presumed = new Set(sentences.flatMap(({ presumes }) => presumes ?? []))
  const used = Object.entries(deeds.presumptions ?? {}).filter(([name]) => presumed.has(name))
  const presumptions = used.map(([name, presumption]) => {
    const placeOf = (keys: Keys) => steps.place(['presumptions', name, 'ruled-out-by', ...keys])
    // What this tree does not ask rules nothing out in it.
    const ruledOut = presumption['ruled-out-by'].flatMap((conjunction, index) =>
      Object.keys(conjunction).every(observation => asked.has(observation))
        ? [
            linkConjunction(
              linking,
              { body: { id: name }, place: placeOf },
              conjunction,
              [index],
              asked
            )
          ]
        : []
    )
    return [name, ruledOut] as const satisfies readonly [string, readonly (readonly Condition[])[]]
  })
  return {
    askedAgain: linkConjunction(linking, again, tree['asked-again'] ?? {}, ['asked-again'], asked),
    openCases: tree['open-cases'] ?? {},
    presumptions: Object.fromEntries(presumptions)
  }
}

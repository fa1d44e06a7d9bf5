import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import type { Places } from '../findings/place.ts'
import type { PropertyKind, Proved } from './proved.ts'

/** Something that must be so of every tree before it is shown to anybody. */
export interface Property {
  /** A claim in kebab-case: how `jarside check` and the authors' guide name it. */
  readonly id: string
  readonly kind: PropertyKind
  /** It looks through all sets of answers, which takes walks that all come to an end. */
  readonly needsWalks: boolean
  /** @throws TooManyVertices where the diagrams of the tree grow beyond bounds. */
  prove(compiled: TreeDiagrams, places: Places, ledger: Ledger | undefined): Proved
}

/** How the project came by each source. */
export type Ledger = Readonly<Record<string, LedgerSource>>

export interface LedgerSource {
  readonly kind:
    | 'publication'
    | 'regulation'
    | 'relayed'
    | 'common-practice'
    | 'own-caution'
    | 'from-memory'
  /** Which text was read: the publisher's own, somebody's copy of it, or none. */
  readonly copy: 'original' | 'copy' | 'none'
  readonly checked: { readonly how: 'read' | 'relayed' | 'memory' }
}

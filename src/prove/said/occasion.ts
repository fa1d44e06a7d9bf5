import type { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import { useLevel, verdict, verdictsOf } from '../../tree/caution.ts'
import { changesKeptFood, type Does, goesNear, isForLater } from '../../tree/does.ts'
import { EMERGENCY } from '../../tree/emergency.ts'
import { TRACKS, type Track } from '../../tree/observation.ts'
import { USES, type Use } from '../../tree/tree.ts'
import { Booleans } from './booleans.ts'

/** For which sets of answers each verdict and use is given, and what then may be said: `adviceFor`, as diagrams. */
export class Occasion {
  readonly compiled: TreeDiagrams
  readonly facts: Booleans
  readonly emergency: number
  /** A jar that nobody goes back to. */
  readonly left: number
  readonly ill: number
  readonly discarded: number
  readonly #verdicts = new Map<string, number>()
  readonly #uses = new Map<Use, number>()

  constructor(compiled: TreeDiagrams) {
    this.compiled = compiled
    const { tree } = compiled
    const facts = new Booleans(compiled.diagrams)
    this.facts = facts
    const given = (track: Track, id: string) => {
      const place = verdictsOf(tree, track).indexOf(id) + 1
      return facts.where(compiled.of(track), level => level === place)
    }
    this.emergency = verdictsOf(tree, 'person').includes(EMERGENCY) ? given('person', EMERGENCY) : 0
    for (const track of TRACKS) {
      for (const id of verdictsOf(tree, track)) {
        // In an emergency container and batch stay unspoken.
        const spoken =
          track === 'person' ? given(track, id) : facts.without(given(track, id), this.emergency)
        this.#verdicts.set(id, spoken)
      }
    }
    for (const use of USES) {
      this.#uses.set(
        use,
        facts.where(compiled.of('use'), level => level === useLevel(use))
      )
    }
    const among = (track: Track, fits: (id: string) => boolean) =>
      facts.or(
        ...verdictsOf(tree, track)
          .filter(fits)
          .map(id => this.verdict(id))
      )
    this.left = among('container', id => tree.advice.verdicts[id]?.leaveIt === true)
    this.discarded = among('batch', id => verdict(tree, id).ceiling === 'never')
    this.ill = this.#illness(among)
  }

  /** Where a verdict is spoken. */
  verdict(id: string): number {
    return this.#verdicts.get(id) ?? 0
  }

  /** Where a verdict is spoken, if it is one of the track's. */
  readonly spokenAt = (track: Track, id: string): number =>
    verdictsOf(this.compiled.tree, track).includes(id) ? this.verdict(id) : 0

  use(use: Use): number {
    return this.#uses.get(use) ?? 0
  }

  /** Where a note is met on the walk. */
  met(note: string): number {
    return this.facts.where(this.compiled.of({ note }), level => level > 0)
  }

  /** Where food is kept and what changes it is not said. */
  get kept(): number {
    return this.facts.without(this.ill, this.facts.or(this.left, this.emergency))
  }

  /** Where what a step or a note does may be done. */
  fits(does: Does | undefined): number {
    const { facts } = this
    if (does === undefined) return 1
    const changes = changesKeptFood(does) ? this.kept : 0
    const near = goesNear(does) ? facts.or(this.left, this.emergency) : 0
    const late = isForLater(does) ? this.emergency : 0
    return facts.not(facts.or(changes, near, late))
  }

  #illness(among: (track: Track, fits: (id: string) => boolean) => number): number {
    const { facts } = this
    const { tree } = this.compiled
    const { note } = tree.advice.whileIll
    if (note !== undefined) return this.met(note)
    const [, ...urgent] = verdictsOf(tree, 'person')
    const anybody = among('person', () => true)
    const beside = facts.or(this.discarded, this.left)
    return facts.or(
      among('person', id => urgent.includes(id)),
      facts.and(anybody, beside)
    )
  }
}

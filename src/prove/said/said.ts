import { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import { originOf } from '../../evaluate/advice.ts'
import { verdictsOf } from '../../tree/caution.ts'
import type { Does } from '../../tree/does.ts'
import { EMERGENCY } from '../../tree/emergency.ts'
import type { Track } from '../../tree/observation.ts'
import { type Tree, USES } from '../../tree/tree.ts'
import { lensesOf } from '../lenses.ts'
import { notesAfter, spaceWithAfter } from './after-space.ts'
import { Occasion } from './occasion.ts'
import { ruledOut } from './presumed.ts'
import { saidOnce } from './said-once.ts'

/** A step, a note or a follow-up that some set of answers is told, and for which ones. */
export interface Sentence {
  /** A step of a new start is about another batch than this one. */
  readonly kind: 'step' | 'new-start' | 'note' | 'follow-up'
  readonly id: string
  readonly does: Does
  /** A diagram that is 1 where it is said. */
  readonly said: number
}

/** A step in one list of one track: what is said first depends on it. */
export interface StepSpot {
  readonly step: string
  readonly track: Track
  readonly list: List
  readonly where: number
}

type List = 'do-now' | 'clean' | 'keep' | 'start-again'

/** All that is said of a tree's outcomes, as diagrams over its answer space and what is asked afterwards. */
export class SaidDiagrams {
  readonly compiled: TreeDiagrams
  readonly occasion: Occasion
  readonly sentences: readonly Sentence[]
  /** Every step where it stands in its list, before the same step elsewhere makes it one. */
  readonly spots: readonly StepSpot[]

  /** `beside`: what a tree says that asks and answers alike, whose diagrams are shared. */
  constructor(tree: Tree, beside?: SaidDiagrams) {
    this.compiled = beside?.compiled.saying(tree) ?? new TreeDiagrams(tree, spaceWithAfter(tree))
    this.occasion = new Occasion(this.compiled)
    const notes = this.#notes()
    this.spots = this.#spots(notes)
    this.sentences = [
      ...this.#steps(),
      ...[...notes].map(([id, said]) => this.#note(id, said)),
      ...this.#followUps()
    ].filter(({ said }) => said !== 0)
  }

  /** Where each note is said, on the walk or as something to change. */
  #notes(): ReadonlyMap<string, number> {
    const { facts, left, emergency, discarded } = this.occasion
    const { tree } = this.compiled
    const origin = originOf(tree)
    const sense = (id: string, where: number) => {
      const note = tree.advice.notes[id]
      const ofBatch = origin.get(id) === 'batch' ? left : 0
      const waits = note?.notWhenDiscarded === true ? discarded : 0
      const fits = facts.and(where, this.occasion.fits(note?.does))
      return facts.without(fits, facts.or(ofBatch, waits))
    }
    const met = new Map<string, number>()
    for (const lens of lensesOf(tree)) {
      if (typeof lens === 'object')
        met.set(lens.note, sense(lens.note, this.occasion.met(lens.note)))
    }
    for (const [id, where] of this.#after()) {
      const change = sense(id, facts.without(where, facts.or(left, emergency)))
      met.set(id, facts.or(met.get(id) ?? 0, change))
    }
    const dropped = this.#dropped(met)
    return new Map([...met].map(([id, where]) => [id, facts.without(where, dropped(id))]))
  }

  /** Where some note that is said makes a step or another note wrong. */
  #dropped(notes: ReadonlyMap<string, number>): (id: string) => number {
    const { facts } = this.occasion
    const dropped = new Map<string, number>()
    for (const [note, where] of notes) {
      for (const id of this.compiled.tree.advice.notes[note]?.drops ?? []) {
        dropped.set(id, facts.or(dropped.get(id) ?? 0, where))
      }
    }
    return id => dropped.get(id) ?? 0
  }

  /** Where the questions put after the outcome add each note. */
  #after(): ReadonlyMap<string, number> {
    const { tree, variables, diagrams } = this.compiled
    const added = new Map<string, number>()
    for (const question of tree.after) {
      variables.forEach((variable, index) => {
        if (variable.observation !== question.asks) return
        const of = variable.values.map(value => notesAfter(tree, question, variable, value))
        for (const note of new Set(of.flat())) {
          const where = diagrams.select(
            index,
            of.map(notes => (notes.includes(note) ? 1 : 0))
          )
          added.set(note, this.occasion.facts.or(added.get(note) ?? 0, where))
        }
      })
    }
    return added
  }

  #spots(notes: ReadonlyMap<string, number>): readonly StepSpot[] {
    const { occasion } = this
    const { facts, left, ill, kept } = occasion
    const { tree } = this.compiled
    const { advice } = tree
    const origin = originOf(tree)
    const dropped = this.#dropped(notes)
    const spots: StepSpot[] = []
    const put = (steps: readonly string[], track: Track, list: List, where: number): number =>
      facts.or(
        ...steps.flatMap(step => {
          const fits = facts.without(facts.and(where, this.#stepFits(step)), dropped(step))
          return this.#stated(step, fits).map(stated => {
            const said = facts.without(
              facts.and(stated.where, this.#stepFits(stated.step)),
              dropped(stated.step)
            )
            if (said !== 0) spots.push({ step: stated.step, track, list, where: said })
            return said
          })
        })
      )
    const adds = (track: Track) => {
      for (const [id, where] of notes) {
        if ((origin.get(id) ?? 'batch') !== track) continue
        put(advice.notes[id]?.adds ?? [], track, 'do-now', where)
      }
    }
    for (const track of ['person', 'container'] as const) {
      for (const id of verdictsOf(tree, track)) {
        put(advice.verdicts[id]?.doNow ?? [], track, 'do-now', occasion.verdict(id))
      }
      adds(track)
    }
    put(advice.whileIll.adds, 'batch', 'do-now', kept)
    put(advice.whileIll.atADistance, 'batch', 'do-now', facts.and(ill, left))
    adds('batch')
    for (const id of verdictsOf(tree, 'batch')) {
      const steps = advice.verdicts[id]
      if (steps === undefined) continue
      // Nobody goes back to a jar that may burst: its batch has nothing to do.
      const where = facts.without(occasion.verdict(id), left)
      put(steps.doNow, 'batch', 'do-now', where)
      for (const use of USES) {
        put(steps.byUse[use], 'batch', 'do-now', facts.and(where, occasion.use(use)))
      }
      put(steps.keep, 'batch', 'keep', where)
      put(steps.startAgain, 'batch', 'start-again', facts.without(where, kept))
    }
    // A pot that is thrown out is not washed.
    const potGoes = facts.or(
      ...spots.map(({ step, where }) =>
        advice.does[step]?.vessel?.includes('discard') === true ? where : 0
      )
    )
    const clean = (steps: readonly string[], where: number): number =>
      facts.or(
        ...steps.map(step =>
          put(
            [step],
            'batch',
            'clean',
            facts.without(where, advice.does[step]?.washes ? potGoes : 0)
          )
        )
      )
    for (const id of verdictsOf(tree, 'batch')) {
      // The notes' cleaning steps are said before the verdict's own, where one of those is left.
      const where = facts.without(occasion.verdict(id), left)
      const from = spots.length
      const cleaned = clean(advice.verdicts[id]?.clean ?? [], where)
      const own = spots.splice(from)
      for (const [note, said] of notes) {
        clean(advice.notes[note]?.clean ?? [], facts.and(cleaned, said))
      }
      spots.push(...own)
    }
    return saidOnce(occasion, spots)
  }

  /** A step, and what is said in its place where the answers rule out what it presumes. */
  #stated(step: string, where: number): readonly Pick<StepSpot, 'step' | 'where'>[] {
    const { facts } = this.occasion
    const { presumes = [], otherwise } = this.compiled.tree.advice.does[step] ?? {}
    if (otherwise === undefined) return [{ step, where }]
    const out = facts.or(...presumes.map(name => ruledOut(this.occasion, name)))
    const inPlace = otherwise.map(other => ({ step: other, where: facts.and(where, out) }))
    return [{ step, where: facts.without(where, out) }, ...inPlace]
  }

  /** Where what a step does may be done, or the step was written for that very occasion. */
  #stepFits(step: string): number {
    const { facts, left, emergency } = this.occasion
    const { advice, verdicts } = this.compiled.tree
    const { adds, atADistance } = advice.whileIll
    if ([...adds, ...atADistance].includes(step)) return 1
    const ofLeft = verdicts.some(({ id }) => {
      const steps = advice.verdicts[id]
      return steps?.leaveIt === true && steps.doNow.includes(step)
    })
    const ofEmergency = advice.verdicts[EMERGENCY]?.doNow.includes(step) === true
    const occasions = facts.or(ofLeft ? left : 0, ofEmergency ? emergency : 0)
    return facts.or(this.occasion.fits(advice.does[step]), occasions)
  }

  #steps(): readonly Sentence[] {
    const { facts } = this.occasion
    const { does } = this.compiled.tree.advice
    const among = (kind: 'step' | 'new-start', spots: readonly StepSpot[]): readonly Sentence[] => {
      const said = new Map<string, number>()
      for (const { step, where } of spots) said.set(step, facts.or(said.get(step) ?? 0, where))
      return [...said].map(([id, where]) => ({ kind, id, does: does[id] ?? {}, said: where }))
    }
    return [
      ...among(
        'step',
        this.spots.filter(({ list }) => list !== 'start-again')
      ),
      ...among(
        'new-start',
        this.spots.filter(({ list }) => list === 'start-again')
      )
    ]
  }

  #note(id: string, said: number): Sentence {
    return { kind: 'note', id, does: this.compiled.tree.advice.notes[id]?.does ?? {}, said }
  }

  #followUps(): readonly Sentence[] {
    const { facts, left, emergency } = this.occasion
    const { tree } = this.compiled
    return tree.advice.followUps.map(({ id, after, does }) => {
      const given = after.map(verdict => {
        const where = this.occasion.verdict(verdict)
        const ofContainer = verdictsOf(tree, 'container').includes(verdict)
        return ofContainer ? where : facts.without(where, left)
      })
      const fits = facts.and(facts.or(...given), this.occasion.fits(does))
      return { kind: 'follow-up', id, does, said: facts.without(fits, emergency) }
    })
  }
}

const cache = new WeakMap<Tree, SaidDiagrams>()

/** What a tree says that differs from another in that alone; its laws then read this. */
export function saidBeside(tree: Tree, beside: SaidDiagrams): SaidDiagrams {
  const said = new SaidDiagrams(tree, beside)
  cache.set(tree, said)
  return said
}

/** What is said of a tree's outcomes, worked out once. */
export function saidOf(tree: Tree): SaidDiagrams {
  const said = cache.get(tree) ?? new SaidDiagrams(tree)
  cache.set(tree, said)
  return said
}

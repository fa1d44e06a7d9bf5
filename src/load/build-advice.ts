import type { Place } from '../findings/place.ts'
import type { Does } from '../tree/does.ts'
import type { Advice, NoteAdvice, Steps } from '../tree/tree.ts'
import type { Keys } from './authored.ts'
import { doesOf } from './does-of.ts'
import type { DraftNote } from './expand.ts'
import { inPiece, type Linking, linkSources, unknownName } from './linking.ts'
import type { Shaped } from './project.ts'
import { listed } from './schemas/common.ts'
import type { AuthoredDeeds } from './schemas/steps.ts'
import type { AuthoredNote, AuthoredTree } from './schemas/tree.ts'
import type { AuthoredSteps, AuthoredVerdict, AuthoredVerdicts } from './schemas/verdicts.ts'

type PlaceOf = (keys: Keys, part?: 'key' | 'value') => Place

/** Which steps each verdict and note stands for in a tree: its own, else the verdict's. */
export function buildAdvice(
  linking: Linking,
  { value: shared }: Shaped<AuthoredVerdicts>,
  { value: deeds }: Shaped<AuthoredDeeds>,
  { value: tree, doc }: Shaped<AuthoredTree>,
  notes: ReadonlyMap<string, DraftNote>
): Advice {
  const { report, verdicts } = linking
  const own = tree.advice ?? {}
  for (const [id, steps] of Object.entries(own)) {
    const place: PlaceOf = (keys, part) => doc.place(['advice', id, ...keys], part)
    if (!verdicts.has(id)) {
      unknownName(report, 'unknown-verdict', place([]), id, verdicts.keys())
    }
    linkSources(linking, listed(steps.because), index => place(['because', index], 'value'))
  }
  const entries = Object.entries({ ...shared.person, ...shared.container, ...shared.batch })
  const ill = shared['while-ill']
  const said: Omit<Advice, 'does'> = {
    verdicts: Object.fromEntries(entries.map(([id, verdict]) => [id, stepsOf(verdict, own[id])])),
    notes: Object.fromEntries(
      [...notes.values()].map(({ id, body, place }) => {
        linkSources(linking, listed(body.because), index => place(['because', index], 'value'))
        return [id, noteOf(body, doesOf(deeds.notes?.[id]))]
      })
    ),
    // Those of this tree are added once all trees are there.
    followUps: [],
    urgency: shared.urgency,
    whileIll: {
      ...(ill.note !== undefined && notes.has(ill.note) && { note: ill.note }),
      adds: ill.adds,
      atADistance: ill['at-a-distance'] ?? [],
      refer: ill.refer ?? []
    },
    unsureNote: shared['unsure-note']
  }
  checkDrops(linking, said, notes, deeds)
  const ids = [...stepsSaid(said)]
  const inPlace = ids.flatMap(step => {
    const { 'once-called': onceCalled = [], otherwise = [] } = deeds.steps[step] ?? {}
    return [...onceCalled, ...otherwise]
  })
  const does = [...ids, ...inPlace].map(step => [step, doesOf(deeds.steps[step])] as const)
  return { ...said, does: Object.fromEntries(does) }
}

function stepsOf(verdict: AuthoredVerdict, own: AuthoredSteps | undefined): Steps {
  const said: AuthoredSteps = { ...verdict.advice, ...own }
  const recheck = own?.recheck ?? verdict.advice.recheck ?? verdict.recheck
  return {
    doNow: said['do-now'] ?? [],
    byUse: {
      'as-directed': said['as-directed'] ?? [],
      'not-yet': said['not-yet'] ?? [],
      never: said.never ?? []
    },
    clean: said.clean ?? [],
    keep: said.keep ?? [],
    startAgain: said['start-again'] ?? [],
    ...(recheck && { recheck }),
    because: listed(said.because),
    leaveIt: verdict['leave-it'] ?? false,
    ...(verdict['from-memory'] && { fromMemory: true }),
    ...(verdict['tells-why'] && { tellsWhy: true }),
    refer: said.refer ?? verdict.refer ?? []
  }
}

function noteOf(note: AuthoredNote, does: Does): NoteAdvice {
  return {
    adds: note.adds ?? [],
    clean: note.clean ?? [],
    drops: note.drops ?? [],
    does,
    notWhenDiscarded: note['not-when-discarded'] ?? false,
    ...(note.recheck && { recheck: note.recheck }),
    because: listed(note.because),
    refer: note.refer ?? []
  }
}

/** Every step that some verdict or note of the tree can say. */
export function stepsSaid({
  verdicts,
  notes,
  whileIll,
  does = {}
}: Pick<Advice, 'verdicts' | 'notes' | 'whileIll'> &
  Partial<Pick<Advice, 'does'>>): ReadonlySet<string> {
  return new Set([
    ...Object.values(verdicts).flatMap(({ doNow, byUse, clean, keep, startAgain }) => [
      ...doNow,
      ...Object.values(byUse).flat(),
      ...clean,
      ...keep,
      ...startAgain
    ]),
    ...Object.values(notes).flatMap(({ adds, clean }) => [...adds, ...clean]),
    ...whileIll.adds,
    ...whileIll.atADistance,
    ...Object.values(does).flatMap(({ onceCalled = [], otherwise = [] }) => [
      ...onceCalled,
      ...otherwise
    ])
  ])
}

function checkDrops(
  { report }: Linking,
  advice: Omit<Advice, 'does'>,
  notes: ReadonlyMap<string, DraftNote>,
  deeds: AuthoredDeeds
): void {
  const written = new Set([...Object.keys(deeds.steps), ...Object.keys(deeds.notes ?? {})])
  const said = new Set([...stepsSaid(advice), ...notes.keys()])
  for (const { body, place } of notes.values()) {
    for (const [index, step] of (body.drops ?? []).entries()) {
      // What a piece drops may be said by some other tree that takes it in.
      const shared = inPiece(place(['drops', index]))
      if (said.has(step) || (shared && written.has(step))) continue
      unknownName(report, 'unknown-step', place(['drops', index], 'value'), step, said)
    }
  }
}

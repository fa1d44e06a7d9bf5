import { existsSync, readFileSync } from 'node:fs'
import { formatFinding } from '../findings/format-finding.ts'
import type { Place } from '../findings/place.ts'
import { clean, quoted } from '../findings/wording.ts'
import type { Authored } from '../load/authored.ts'
import { openReport } from '../load/report.ts'
import { MUST_SIGN, type ReviewFile, reviewFileSchema } from '../load/schemas/review-file.ts'
import { shapedFile } from '../load/shaped-file.ts'
import type { Review, Tree } from '../tree/tree.ts'
import { BadUse } from './bad-use.ts'
import type { Project } from './read-project.ts'
import { reviewedState } from './review-packet.ts'
import type { ReviewedState } from './review-template.ts'

/** A review that allows publishing: who signed and when, and how much nobody could judge. */
export interface TakenReview {
  readonly review: Review
  /** Roles and days, in the order of the file. */
  readonly signed: readonly { readonly role: string; readonly on: string }[]
  readonly notJudged: number
}

/** Why a review does not allow publishing: each in a sentence, with its place and what to do. */
export interface RefusedReview {
  readonly refusals: readonly string[]
}

/** Reads what a reviewer's office sent back of a tree as it stands. @throws BadUse where there is no such file. */
export function takeReview(
  project: Project,
  tree: Tree,
  file: string,
  today: string
): TakenReview | RefusedReview {
  if (!existsSync(file)) {
    throw new BadUse(`There is no file \`${file}\`. Name the review file that came back.`)
  }
  const text = readFileSync(file, 'utf8')
  const report = openReport()
  const shaped = shapedFile({ path: file, text }, reviewFileSchema, false, report)
  if (shaped === null) {
    return { refusals: report.findings.map(finding => formatFinding(finding, () => text)) }
  }
  const { value, doc } = shaped
  const { items, state } = reviewedState(project, tree)
  const stale = staleIn(value, doc, state)
  // Of another state nothing else is worth saying: its items are others.
  const refusals =
    stale.length > 0
      ? stale
      : [
          ...undecided(
            value,
            doc,
            items.map(({ id }) => id)
          ),
          ...unsigned(value, doc, today)
        ]
  if (refusals.length > 0) return { refusals }
  const signed = value.signatures.flatMap(({ role, signed: on }) =>
    on === null ? [] : [{ role, on }]
  )
  // The next review is counted from the day of those without whom it is none.
  const days = signed.filter(({ role }) => MUST_SIGN.includes(role)).map(({ on }) => on)
  const review: Review = {
    state: 'signed',
    by: signed.map(({ role }) => role),
    reviewed: days.sort()[0] ?? null,
    due: tree.review.due
  }
  const decisions = Object.values(value.decisions)
  const notJudged = decisions.filter(({ decision }) => decision === 'cannot judge').length
  return { review, signed, notJudged }
}

/** What was reviewed is not what would be published. */
function staleIn(value: ReviewFile, doc: Authored, state: ReviewedState): readonly string[] {
  if (value.tree !== state.tree) {
    return [
      refusal(
        doc.place(['tree'], 'value'),
        `This is a review of ${quoted(value.tree)}, not of ${quoted(state.tree)}.`,
        `Name the review file of ${quoted(state.tree)}.`
      )
    ]
  }
  const parts = [
    ['meaning', 'meaning'],
    ['words', 'English words or pictures'],
    ['items', 'items of part 1']
  ] as const
  return parts.flatMap(([key, name]) =>
    value[key] === state[key]
      ? []
      : [
          refusal(
            doc.place([key], 'value'),
            `The ${name} of ${quoted(state.tree)} changed since the packet was made.`,
            `Write a new packet, \`jarside packet ${state.tree} --out <folder>\`, and have it reviewed.`
          )
        ]
  )
}

function undecided(
  { decisions }: ReviewFile,
  doc: Authored,
  ids: readonly string[]
): readonly string[] {
  const unknown = Object.keys(decisions)
    .filter(id => !ids.includes(id))
    .map(id =>
      refusal(
        doc.place(['decisions', id]),
        `The packet has no item ${quoted(id)}.`,
        'Take the line out, or write the name as the packet has it.'
      )
    )
  const open = ids.flatMap((id, index) => {
    const item = `item ${index + 1}, ${quoted(id)}`
    if (!Object.hasOwn(decisions, id) || decisions[id]?.decision === null) {
      const here = Object.hasOwn(decisions, id) ? ['decisions', id, 'decision'] : ['decisions']
      return [
        refusal(
          doc.place(here),
          `Nothing is decided of ${item}.`,
          'Ask the reviewer, and write agree, change or cannot judge.'
        )
      ]
    }
    if (decisions[id]?.decision !== 'change') return []
    const comment = decisions[id]?.comment
    return [
      refusal(
        doc.place(['decisions', id, 'decision'], 'value'),
        `The reviewer wants a change of ${item}${comment ? `: “${clean(comment)}”` : '.'}`,
        'Change the tree, write a new packet, and have it reviewed again.'
      )
    ]
  })
  return [...unknown, ...open]
}

function unsigned({ signatures }: ReviewFile, doc: Authored, today: string): readonly string[] {
  const early = signatures.flatMap(({ role, signed }, index) =>
    signed !== null && signed > today
      ? [
          refusal(
            doc.place(['signatures', index, 'signed'], 'value'),
            `The ${role} cannot have signed on ${signed}: that day is still to come.`,
            'Write the day that stands on the paper.'
          )
        ]
      : []
  )
  const missing = MUST_SIGN.filter(
    role => !signatures.some(each => each.role === role && each.signed !== null)
  ).map(role => {
    const index = signatures.findIndex(each => each.role === role)
    return refusal(
      doc.place(index < 0 ? ['signatures'] : ['signatures', index, 'signed']),
      `No ${role} has signed.`,
      'Until that role signs, the tree stays a draft: leave `--review` out, or write the day of the signature.'
    )
  })
  return [...early, ...missing]
}

const refusal = ({ file, line, column }: Place, says: string, remedy: string): string =>
  `${file}:${line}:${column}  ${says}\n\n  Fix: ${remedy}\n`

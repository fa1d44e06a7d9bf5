import type { Tree } from '../tree/tree.ts'
import { stepsSaid } from './build-advice.ts'
import type { AuthoredProject } from './project.ts'

type Meaning = Omit<Tree, 'fingerprint' | 'wordsFingerprint'>

/** SHA-256 over what a tree means: its review and edition may change and it stays. */
export function meaningFingerprint(tree: Meaning): Promise<string> {
  const { id, verdicts, observations, start, questions, after, advice, countsDays } = tree
  // Who says otherwise is for reviewers: what a rule demands stays the same. In which order rules stand means nothing.
  const rules = tree.rules
    .map(({ dissent: _, ...rule }) => rule)
    .sort((one, other) => (one.id < other.id ? -1 : 1))
  const counts = countsDays === undefined ? {} : { countsDays }
  return sha256({ id, verdicts, observations, start, questions, after, rules, advice, ...counts })
}

/** SHA-256 over the English words and the pictures that a tree shows. */
export function wordsFingerprint(
  tree: Meaning,
  { words, observations }: AuthoredProject
): Promise<string> {
  const english = (stem: string): Record<string, unknown> => {
    const texts = words.get('en')?.get(stem)?.value
    return typeof texts === 'object' && texts !== null ? { ...texts } : {}
  }
  const among = (stem: string, ids: Iterable<string>): Record<string, unknown> => {
    const texts = english(stem)
    return Object.fromEntries([...ids].map(id => [id, texts[id] ?? null]))
  }
  const asked = Object.keys(tree.observations)
  return sha256({
    observations: among('observations', asked),
    verdicts: english('verdicts'),
    notes: among('notes', Object.keys(tree.advice.notes)),
    steps: among('steps', stepsSaid(tree.advice)),
    followUps: among(
      'follow-ups',
      tree.advice.followUps.map(({ id }) => id)
    ),
    tree: english(tree.id),
    pictures: asked.flatMap(id => picturesOf(observations?.value[id]))
  })
}

/** SHA-256 over everything that a published edition says and shows. */
export const spokenFingerprint = ({
  texts,
  sources,
  pictures
}: {
  readonly texts: unknown
  readonly sources: unknown
  readonly pictures: unknown
}): Promise<string> => sha256({ texts, sources, pictures })

function picturesOf(observation: unknown): readonly unknown[] {
  if (typeof observation !== 'object' || observation === null) return []
  return Object.entries(observation).flatMap(([key, value]) =>
    key === 'picture' ? [value] : picturesOf(value)
  )
}

/** JSON that does not depend on the order in which keys were written. */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(inOrder(value))
}

/** A copy: writing it needs no call for each part, as a replacer would. */
function inOrder(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value
  if (Array.isArray(value)) return value.map(inOrder)
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
  return Object.fromEntries(entries.map(([key, inner]) => [key, inOrder(inner)]))
}

async function sha256(value: unknown): Promise<string> {
  const bytes = new TextEncoder().encode(canonicalJson(value))
  const digest = await globalThis.crypto.subtle.digest('SHA-256', bytes)
  return Array.from(new Uint8Array(digest), byte => byte.toString(16).padStart(2, '0')).join('')
}

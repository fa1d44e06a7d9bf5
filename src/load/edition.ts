import { z } from 'zod'
import type { Tree } from '../tree/tree.ts'
import { meaningFingerprint, spokenFingerprint } from './fingerprint.ts'

/** A published edition: what a tree meant and said on the day it was frozen. */
export interface PublishedEdition {
  readonly tree: Tree
  /** By language tag, then by namespace. */
  readonly texts: Readonly<Record<string, Readonly<Record<string, unknown>>>>
  readonly sources: Readonly<Record<string, unknown>>
  /** SHA-256 of each drawing that it showed, by picture id. */
  readonly pictures: Readonly<Record<string, string>>
  /** The day, as YYYY-MM-DD. */
  readonly publishedOn: string
  /** SHA-256 over texts, sources and pictures. */
  readonly spoken: string
  /** Who signed its review packet and when, by role; none where no packet came back. */
  readonly signed?: readonly { readonly role: string; readonly on: string }[]
}

const texts = z.record(z.string(), z.record(z.string(), z.unknown()))

/** As much of its shape as opening it hangs on; its fingerprints vouch for the rest. */
const editionSchema = z.object({
  tree: z.looseObject({
    id: z.string(),
    edition: z.number().int().positive(),
    fingerprint: z.string(),
    questions: z.record(z.string(), z.unknown()),
    observations: z.record(z.string(), z.unknown())
  }),
  texts,
  sources: z.record(z.string(), z.unknown()),
  pictures: z.record(z.string(), z.string()),
  publishedOn: z.iso.date(),
  spoken: z.string()
})

const isEdition = (value: unknown): value is PublishedEdition =>
  editionSchema.safeParse(value).success

/** Where an edition stands in a project. */
export const editionPath = (tree: string, edition: number): string =>
  `trees/editions/${tree}@${edition}.json`

/** Reads an edition's file; null when it is none. */
export function readEdition(text: string): PublishedEdition | null {
  if (nestsBeyond(text, DEEPEST)) return null
  try {
    const edition: unknown = JSON.parse(text)
    return isEdition(edition) ? edition : null
  } catch {
    return null
  }
}

/** How deep the parts of an edition may lie in each other; what jarside writes is less than half as deep. */
const DEEPEST = 60

/** Whether brackets are open within each other beyond a depth: found before anything is called that deep. */
function nestsBeyond(text: string, deepest: number): boolean {
  let depth = 0
  let quoted = false
  for (let index = 0; index < text.length; index++) {
    const sign = text[index]
    if (quoted && sign === '\\') index += 1
    else if (sign === '"') quoted = !quoted
    else if (!quoted && (sign === '[' || sign === '{')) depth += 1
    else if (!quoted && (sign === ']' || sign === '}')) depth -= 1
    if (depth > deepest) return true
  }
  return false
}

/** What of a frozen edition is no longer what was published. */
export async function changedIn(
  edition: PublishedEdition
): Promise<readonly ('meaning' | 'words')[]> {
  const { tree, spoken } = edition
  return [
    ...((await meaningFingerprint(tree)) === tree.fingerprint ? [] : (['meaning'] as const)),
    ...((await spokenFingerprint(edition)) === spoken ? [] : (['words'] as const))
  ]
}

import { readLink, writeLink } from '../../addresses/link.ts'
import type { Fact } from '../../evaluate/facts.ts'
import type { Tree } from '../../tree/tree.ts'

/** A call that was not finished, as it is kept in this browser: nothing about people, and no typed word. */
export interface KeptCall {
  readonly tree: string
  readonly language: string
  /** Each fact as a link holds it. */
  readonly facts: readonly string[]
  /** When it was kept, in milliseconds since 1970. */
  readonly at: number
}

const KEY = 'jarside-unfinished-call'
/** What was told yesterday is told anew: the jar has changed. */
const KEPT_FOR = 12 * 60 * 60 * 1000

/** Keeps what was told of the jar; where the browser keeps nothing the call goes on without. */
export function keepCall(tree: Tree, language: string, sofar: readonly Fact[]): void {
  const jar = sofar.filter(({ observation }) => tree.observations[observation]?.about !== 'person')
  if (jar.length === 0) return
  const facts = jar.map(({ observation, answer }) => writeLink(tree, { [observation]: answer }))
  const kept: KeptCall = { tree: tree.id, language, facts, at: Date.now() }
  try {
    localStorage.setItem(KEY, JSON.stringify(kept))
  } catch {
    // A full or blocked store: nothing is kept, and nothing else changes.
  }
}

/** The call that was left unfinished; null where there is none, or what is kept makes no sense. */
export function keptCall(now = Date.now()): KeptCall | null {
  try {
    const kept: Partial<Record<keyof KeptCall, unknown>> | null = JSON.parse(
      localStorage.getItem(KEY) ?? 'null'
    )
    if (kept === null || typeof kept !== 'object') return null
    const { tree, language, facts, at } = kept
    const isWhole =
      typeof tree === 'string' &&
      typeof language === 'string' &&
      typeof at === 'number' &&
      Array.isArray(facts) &&
      facts.every(fact => typeof fact === 'string')
    if (!isWhole || now - at > KEPT_FOR || now < at) {
      dropCall()
      return null
    }
    return { tree, language, facts, at }
  } catch {
    return null
  }
}

/** The facts of a kept call, as far as the tree of today knows them. */
export function factsOf(tree: Tree, { facts }: KeptCall): readonly Fact[] {
  return facts.flatMap(line => {
    const { answers } = readLink(tree, line.slice(line.indexOf('?') + 1))
    return Object.entries(answers).map(([observation, answer]) => ({ observation, answer }))
  })
}

export function dropCall(): void {
  try {
    localStorage.removeItem(KEY)
  } catch {
    // Nothing was kept.
  }
}

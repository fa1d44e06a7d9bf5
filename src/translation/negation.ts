import type { LanguageFacts } from './language.ts'
import { aligned, type TextFault, type TextPair } from './pair.ts'

/** How often a sentence says no. */
interface Denials {
  /** Clauses that deny, a chain of "no … ni … ni" counted once. */
  readonly once: number
  /** The same with each "ni" counted, as "no …, and none …" says it. */
  readonly each: number
  /** "Without": it denies a thing, not what is done. */
  readonly without: number
}

const times = (text: string, pattern: RegExp): number => text.match(pattern)?.length ?? 0

function denialsIn(text: string, language: LanguageFacts): Denials {
  const { clauses, negations, chained, lacking, saidOnce } = language
  let once = 0
  let each = 0
  let without = 0
  // A chain goes on behind a comma: "no es para niños, ni con embarazo".
  let denied = false
  for (const clause of text.replace(saidOnce, ' ').split(clauses)) {
    const denies = times(clause, negations) > 0
    const links = times(clause, chained)
    const lacks = times(clause, lacking)
    without += lacks
    // "Sin olor ni burbujas" goes on in the same clause.
    denied ||= lacks > 0
    if (denies) once += 1
    else if (links > 0 && !denied) once += 1
    each += (denies ? 1 : 0) + links
    denied ||= denies || links > 0
  }
  return { once, each, without }
}

/**
 * In each sentence as many clauses say no as in the English one. A list is denied once or item by item,
 * "unmarked" may be "sin marca" and "leave it" may be "no lo toque": such a word excuses one denial more.
 */
export function negationFaults(
  pair: TextPair,
  source: LanguageFacts,
  language: LanguageFacts
): readonly TextFault[] {
  let lost = 0
  let added = 0
  for (const { english, target } of aligned(pair)) {
    const ours = denialsIn(english, source)
    const theirs = denialsIn(target, language)
    const said = ours.once + ours.without
    const list = said > 0 ? times(english, source.joins) : 0
    const differences = [theirs.once, theirs.each, theirs.once - list].map(
      count => count + theirs.without - said
    )
    const stray = times(target, language.stray)
    if (stray > 0) lost += stray
    const [once = 0, each = 0] = differences
    if (stray > 0 || differences.includes(0) || (once <= 0 && each >= 0)) continue
    const less = Math.max(...differences)
    const more = Math.min(...differences.filter(difference => difference > 0))
    // Where both have such a word, "lack" beside "falte", neither stands for a denial.
    const softly = times(english, source.softNegations) - times(target, language.softNegations)
    const excused =
      Math.min(times(english, source.softLacking), theirs.without) + Math.max(0, softly)
    const soft = times(english, source.softNegations) + times(english, source.softLacking)
    const isMore = language.denials === 'counted' ? excused < more : said === 0 && soft === 0
    if (less < 0 && -softly < -less) lost -= less
    else if (less > 0 && isMore) added += more
  }
  if (lost + added === 0) return []
  const counted = (count: number) => (count > 0 ? [`${count} no`] : [])
  return [{ rule: 'negation', lacks: counted(lost), adds: counted(added) }]
}

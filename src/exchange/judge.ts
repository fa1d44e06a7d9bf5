import type { Glossary } from '../translation/glossary.ts'
import { textHash } from '../translation/ledger.ts'
import { faultText, type LintRule } from '../translation/pair.ts'
import { type LintsPair, pairLinter } from '../translation/pair-linter.ts'
import { saidTwoWays } from '../translation/two-ways.ts'
import { countWords } from '../words/lengths.ts'
import type { ExchangeText, ReturnedText } from './exchange-text.ts'

/** Why a text that came back is left; what stands in the project stays. */
export type LeftBecause =
  | 'unknown'
  | 'twice'
  | 'english-changed'
  | 'translation-changed'
  | 'origin-lost'
  | 'refused'
  | 'too-long'
  | 'said-two-ways'

/** A text that is taken, beside the one that it replaces. */
export interface TakenText {
  readonly id: string
  readonly english: string
  /** Null where nothing stood there. */
  readonly before: string | null
  readonly target: string
}

/** A text that is left, with both sides so that somebody can decide. */
export interface LeftText {
  readonly id: string
  readonly because: LeftBecause
  /** What the lint found, or what the place has room for. */
  readonly detail: string
  readonly stands: string | null
  readonly offered: string
}

/** What an import comes to. */
export interface JudgedImport {
  readonly taken: readonly TakenText[]
  readonly left: readonly LeftText[]
  /** How many came back as they stand. */
  readonly same: number
  /** How many came back without a translation. */
  readonly open: number
}

/** What is agreed on with a language, as far as an import asks for it. */
export interface Agreed {
  readonly glossary: Glossary | null
  readonly accepted: readonly {
    readonly text: string
    readonly rule: LintRule
    readonly finds: string
  }[]
  readonly twoWays: Readonly<Record<string, string>>
}

/**
 * Decides of each text that comes back: it is taken only where neither side was changed since it was given
 * out, and where `jarside check` would find nothing. What the file says of its state counts for nothing.
 */
export async function judged(
  returned: readonly ReturnedText[],
  current: readonly ExchangeText[],
  tag: string,
  agreed: Agreed
): Promise<JudgedImport> {
  const now = new Map(current.map(text => [text.id, text]))
  const lint = pairLinter(tag, agreed.glossary)
  const times = new Map<string, number>()
  for (const { id } of returned) times.set(id, (times.get(id) ?? 0) + 1)
  const left: LeftText[] = []
  const taken: TakenText[] = []
  let same = 0
  let open = 0
  for (const one of returned) {
    const text = now.get(one.id)
    const offered = one.target?.normalize('NFC').trim() ?? ''
    const leave = (because: LeftBecause, detail = '') =>
      left.push({ id: one.id, because, detail, stands: text?.target ?? null, offered })
    if (offered === '') open++
    else if (text === undefined) leave('unknown')
    else if (offered === text.target) same++
    else if ((times.get(one.id) ?? 0) > 1) leave('twice')
    else if (one.english.normalize('NFC') !== text.english.normalize('NFC'))
      leave('english-changed', text.english)
    else if (one.from === null && text.target !== null) leave('origin-lost')
    else if (text.target !== null && one.from !== (await textHash(text.target)))
      leave('translation-changed')
    else if (text.most !== null && countWords(offered) > text.most)
      leave('too-long', String(text.most))
    else {
      const found = faults(text, offered, lint, agreed)
      if (found !== '') leave('refused', found)
      else taken.push({ id: text.id, english: text.english, before: text.target, target: offered })
    }
  }
  return { ...alike(taken, left, current, agreed), same, open }
}

/** What the lint finds in one line; empty where it finds nothing that nobody has accepted. */
function faults(
  { id, english }: ExchangeText,
  target: string,
  lint: LintsPair,
  { accepted }: Agreed
): string {
  if (isOfTheLanguage(id)) return ''
  return lint({ english, target })
    .filter(
      fault =>
        !accepted.some(
          one => one.text === id && one.rule === fault.rule && one.finds === faultText(fault)
        )
    )
    .map(fault => `${fault.rule}: ${faultText(fault)}`)
    .join('; ')
}

/** What callers say is of each language by itself, and so is what an invented caller tells. */
export const isOfTheLanguage = (id: string): boolean =>
  id.startsWith('practice:') || (id.startsWith('know-how:') && id.endsWith('.said'))

/** Leaves what would say one English in two ways, until nothing does. */
function alike(
  taken: readonly TakenText[],
  left: readonly LeftText[],
  current: readonly ExchangeText[],
  { twoWays }: Agreed
): Pick<JudgedImport, 'taken' | 'left'> {
  const now = new Map(taken.map(({ id, target }) => [id, target]))
  const said = current.flatMap(({ id, english, target }) => {
    const text = now.get(id) ?? target
    const counts = text !== null && !isOfTheLanguage(id) && !PLURAL.test(id)
    return counts ? [{ english, target: text }] : []
  })
  const several = new Map(
    saidTwoWays(said)
      .filter(({ english }) => !Object.hasOwn(twoWays, english))
      .map(({ english, others }) => [english, others[0]?.target ?? ''])
  )
  const unlike = taken.filter(({ english }) => several.has(english))
  return {
    taken: taken.filter(({ english }) => !several.has(english)),
    left: [
      ...left,
      ...unlike.map(({ id, before, target, english }) => ({
        id,
        because: 'said-two-ways' as const,
        detail: said.find(one => one.english === english && one.target !== target)?.target ?? '',
        stands: before,
        offered: target
      }))
    ]
  }
}

/** Plural forms of one English are several on purpose. */
const PLURAL = /_(?:zero|one|two|few|many|other)$/

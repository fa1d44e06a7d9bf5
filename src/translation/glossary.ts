import { type FormLists, formLists, wordsOf } from './forms.ts'
import { aligned, sentencesIn, type TextFault, type TextPair } from './pair.ts'

/** A word of English and the words that stand for it in one language. `mold*` is every word that begins so. */
export interface Term {
  readonly en: readonly string[]
  readonly to: readonly string[]
  /** What else may stand in the English where the language uses the term. */
  readonly 'also-en'?: readonly string[] | undefined
  /** What else may stand in the language where English uses the term. */
  readonly 'also-to'?: readonly string[] | undefined
  /** `en`: only that what English says is said; `to`: only that nothing else is. Both when left out. */
  readonly holds?: 'en' | 'to' | undefined
}

/** What is agreed on between English and one language. */
export interface Glossary {
  readonly terms: Readonly<Record<string, Term>>
  /** Words never used, each with what is said instead. */
  readonly avoid: Readonly<Record<string, string>>
  /** Ways of address that this work does not use, such as `tú`. */
  readonly familiar: readonly string[]
  /** Commands of familiar address, where they begin a sentence: elsewhere they say what somebody does. */
  readonly commands: readonly string[]
  /** English texts that have these translations and no other. */
  readonly exact: Readonly<Record<string, readonly string[]>>
  /** Words that both languages write alike. */
  readonly alike: readonly string[]
  /** Nouns by the articles that do not go with them. */
  readonly genders: Readonly<
    Record<string, { readonly never: readonly string[]; readonly nouns: readonly string[] }>
  >
}

/** A glossary made ready to be matched. */
export interface ReadyGlossary {
  readonly ids: readonly string[]
  readonly holds: readonly Term['holds'][]
  /** Each as many lists as there are terms, in their order. */
  readonly en: FormLists
  readonly to: FormLists
  readonly alsoEn: FormLists
  readonly alsoTo: FormLists
  readonly unfit: FormLists
  readonly commands: ReadonlySet<string>
  readonly alike: ReadonlySet<string>
  readonly exact: Glossary['exact']
  readonly genders: readonly RegExp[]
}

/** Makes the patterns of a glossary once. */
export function readyGlossary(glossary: Glossary): ReadyGlossary {
  const terms = Object.values(glossary.terms)
  return {
    ids: Object.keys(glossary.terms),
    holds: terms.map(({ holds }) => holds),
    en: formLists(terms.map(({ en }) => en)),
    to: formLists(terms.map(({ to }) => to)),
    alsoEn: formLists(terms.map(term => term['also-en'] ?? [])),
    alsoTo: formLists(terms.map(term => term['also-to'] ?? [])),
    unfit: formLists([Object.keys(glossary.avoid), glossary.familiar]),
    commands: new Set(glossary.commands),
    alike: new Set(glossary.alike),
    exact: glossary.exact,
    genders: Object.values(glossary.genders).map(
      ({ never, nouns }) =>
        new RegExp(`(?<!\\p{L})(?:${never.join('|')}) (?:${nouns.join('|')})(?!\\p{L})`, 'giu')
    )
  }
}

/** Each agreed word stands in a sentence exactly where its English does. */
export function termFaults(pair: TextPair, glossary: ReadyGlossary): readonly TextFault[] {
  const { ids, holds, en, to, alsoEn, alsoTo, exact } = glossary
  const only = Object.hasOwn(exact, pair.english) ? exact[pair.english] : undefined
  if (only && !only.includes(pair.target)) {
    return [{ rule: 'terms', lacks: [only[0] ?? ''], adds: [pair.target] }]
  }
  const lacks = new Set<string>()
  const adds = new Set<string>()
  for (const { english, target } of aligned(pair)) {
    const ours = wordsOf(english)
    const theirs = wordsOf(target)
    const said = en.standing(ours)
    const told = to.standing(theirs)
    const excused = alsoTo.standing(theirs)
    const known = alsoEn.standing(ours)
    for (const [at, id] of ids.entries()) {
      if (said.has(at) && !told.has(at) && !excused.has(at) && holds[at] !== 'to') lacks.add(id)
      if (told.has(at) && !said.has(at) && !known.has(at) && holds[at] !== 'en') adds.add(id)
    }
  }
  return lacks.size + adds.size === 0 ? [] : [{ rule: 'terms', lacks: [...lacks], adds: [...adds] }]
}

/** Words that are not used, familiar address, and an article of the other gender. */
export function registerFaults(
  { target }: TextPair,
  glossary: ReadyGlossary
): readonly TextFault[] {
  const words = wordsOf(target)
  const commands = sentencesIn(target).flatMap(sentence => {
    const first = sentence.toLowerCase().match(/\p{L}+/u)?.[0] ?? ''
    return glossary.commands.has(first) && /\p{L}\s+\p{L}/u.test(sentence) ? [first] : []
  })
  const found = [
    ...glossary.unfit.all(words),
    ...commands,
    ...glossary.genders.flatMap(gender => target.toLowerCase().match(gender) ?? [])
  ]
  return found.length > 0 ? [{ rule: 'register', lacks: [], adds: [...new Set(found)] }] : []
}

import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { loadProject, readAuthored } from '../cli/read-project.ts'
import type { Loaded } from '../load/load.ts'
import { namedIn, pick, textsOf } from '../load/texts-of-tree.ts'
import type {
  Catalogue,
  KnowHowBundle,
  SheetsBundle,
  Texts,
  TreeBundle
} from '../opening/bundle.ts'
import { prove } from '../prove/prove.ts'
import { proveKnowHow } from '../prove/prove-know-how.ts'
import { groupOf } from '../tree/group.ts'
import type { Tree } from '../tree/tree.ts'
import { languagesOf } from '../words/languages.ts'
import { SOURCE_TAG } from '../words/words.ts'
import {
  contactsWords,
  kioskWords,
  practiceWords,
  screenWords,
  selfTestWords,
  workbenchWords
} from './page-words.ts'
import { sheetsOf } from './sheets-bundle.ts'

export interface BrowserBundle {
  readonly catalogue: Catalogue
  readonly trees: Readonly<Record<string, TreeBundle>>
  /** By language tag: the screens' own words and the trees' titles. */
  readonly screens: Readonly<Record<string, Texts>>
  /** By language tag: the words that the workbench alone says. */
  readonly workbench: Readonly<Record<string, Texts>>
  /** By language tag: the words that the kiosk alone says, to visitors and to staff. */
  readonly kiosk: Readonly<Record<string, Texts>>
  /** By language tag: what the embed's self-test says. */
  readonly selfTest: Readonly<Record<string, Texts>>
  /** By language tag: the words of the contact log. */
  readonly contacts: Readonly<Record<string, Texts>>
  /** What the page of look-alikes shows beside the screens' own words. */
  readonly lookAlikes: LookAlikesBundle
  /** Invented callers, and their words: the page of practice calls alone asks for them. */
  readonly practice: PracticeBundle
  /** The answers to how-to questions, and their words: no caller waits for them. */
  readonly knowHow: {
    readonly knowHow: KnowHowBundle
    /** By language tag. */
    readonly words: Readonly<Record<string, Texts>>
  }
  /** By tree, then by language tag: the words of that tree. */
  readonly words: Readonly<Record<string, Readonly<Record<string, Texts>>>>
  /** By tree: callers' own words for what the tree asks. */
  readonly said: Readonly<Record<string, Loaded['said']>>
  /** By tree: what its sheets hold that are not about a verdict. */
  readonly sheets: Readonly<Record<string, SheetsBundle>>
  /** The drawings of each tree, by picture id. */
  readonly drawings: Readonly<Record<string, Readonly<Record<string, string>>>>
}

/** Every pair, its drawings, and by language tag its words. */
export interface LookAlikesBundle {
  readonly pairs: Loaded['lookAlikes']
  readonly drawings: Readonly<Record<string, string>>
  readonly words: Readonly<Record<string, Texts>>
}

/** Invented callers, the verdicts in their order, drawings, and by language tag the words. */
export interface PracticeBundle {
  readonly callers: Loaded['practice']
  readonly verdicts: Tree['verdicts']
  readonly drawings: Readonly<Record<string, string>>
  readonly words: Readonly<Record<string, Texts>>
}

/** What was packed last, and of which files. */
interface Packed {
  readonly of: string
  readonly bundle: Promise<BrowserBundle>
}

/** Vite gives each of its configurations this module anew: what one of them proved the next one takes. */
const PACKED = Symbol.for('jarside.packed')

/**
 * Loads, proves and packs every tree for the browser, or takes what this process packed of the very same
 * files.
 *
 * @throws Error when anything is found or not proved: no form may show a tree that is not.
 */
export function browserBundle(folder: string): Promise<BrowserBundle> {
  const of = JSON.stringify(readAuthored(folder))
  const before: Packed | undefined = Reflect.get(globalThis, PACKED)
  if (before?.of === of) return before.bundle
  const bundle = provedBundle(folder)
  Reflect.set(globalThis, PACKED, { of, bundle } satisfies Packed)
  return bundle
}

async function provedBundle(folder: string): Promise<BrowserBundle> {
  const { loaded } = await loadProject(folder)
  const open = loaded.trees.flatMap(tree =>
    [
      ...prove(tree, loaded.places[tree.id], loaded.sources),
      ...[proveKnowHow(tree, loaded.knowHow.allowed[tree.id]) ?? []].flat()
    ].filter(({ standing }) => standing !== 'proved')
  )
  if (loaded.findings.length > 0 || open.length > 0 || loaded.trees.length === 0) {
    const count = loaded.findings.length + open.length
    throw new Error(`${count} findings: run \`npm run -s jarside -- check\` to read them.`)
  }
  return pack(loaded, folder)
}

/** What the browser gets of a project that was proved; its drawings stand in the folder. */
export function pack(loaded: Loaded, folder: string): BrowserBundle {
  // Of a withdrawn tree nothing is given out.
  const shown = loaded.trees.filter(({ id }) => !Object.hasOwn(loaded.withdrawn, id))
  const bundles = shown.map(tree => [tree.id, bundleOf(tree, loaded)] as const)
  const screens = eachLanguage(loaded, words => screenWords(loaded.trees, words))
  return {
    catalogue: {
      trees: inOrder(loaded.trees).map(({ id, edition, fingerprint, picture }) => ({
        id,
        edition,
        fingerprint,
        drawing: picture === undefined ? '' : (drawingsIn(folder, [picture])[picture] ?? ''),
        withdrawn: loaded.withdrawn[id]?.on ?? null
      })),
      languages: languagesOf(loaded.words),
      texts: screens[SOURCE_TAG] ?? {}
    },
    trees: Object.fromEntries(bundles),
    screens,
    workbench: eachLanguage(loaded, workbenchWords),
    kiosk: eachLanguage(loaded, kioskWords),
    selfTest: eachLanguage(loaded, selfTestWords),
    contacts: eachLanguage(loaded, contactsWords),
    lookAlikes: {
      pairs: loaded.lookAlikes,
      drawings: drawingsIn(folder, picturesOf(loaded.lookAlikes)),
      words: eachLanguage(loaded, words => lookAlikeWords(loaded.lookAlikes, words))
    },
    practice: {
      callers: loaded.practice.filter(({ tree }) => shown.some(({ id }) => id === tree)),
      verdicts: shown[0]?.verdicts ?? [],
      drawings: drawingsIn(
        folder,
        loaded.practice.flatMap(({ pictures }) => pictures)
      ),
      words: eachLanguage(loaded, practiceWords)
    },
    knowHow: {
      knowHow: knowHowIn(loaded, folder),
      words: eachLanguage(loaded, knowHowWords)
    },
    words: Object.fromEntries(
      shown.map(tree => [tree.id, eachLanguage(loaded, words => wordsOf(tree, loaded, words))])
    ),
    sheets: Object.fromEntries(shown.map(tree => [tree.id, sheetsOf(tree, loaded)])),
    said: Object.fromEntries(shown.map(tree => [tree.id, saidOf(tree, loaded)])),
    drawings: Object.fromEntries(
      bundles.map(([id, { pictures, lookAlikes }]) => [
        id,
        drawn(folder, pictures, picturesOf(lookAlikes))
      ])
    )
  }
}

const eachLanguage = ({ words }: Loaded, of: (texts: Texts) => Texts) =>
  Object.fromEntries(Object.entries(words).map(([tag, texts]) => [tag, of(texts)]))

function knowHowIn(
  { knowHow: { answers, called }, sources }: Loaded,
  folder: string
): KnowHowBundle {
  const cited = new Set(answers.flatMap(({ because }) => because))
  const drawings = drawingsIn(
    folder,
    answers.flatMap(({ pictures }) => pictures)
  )
  return { answers, called, drawings, sources: pick(sources, cited) }
}

/** What is said of how-to answers beside the screens' own words. */
function knowHowWords(words: Texts): Texts {
  const { 'know-how': own } = groupOf(words.ui)
  return { ui: { 'know-how': own }, 'know-how': words['know-how'] }
}

function saidOf({ observations }: Tree, { said }: Loaded): Loaded['said'] {
  const asked = ({ observation }: { readonly observation: string }) =>
    Object.hasOwn(observations, observation)
  return {
    ...said,
    both: said.both.filter(asked),
    bands: said.bands.filter(asked),
    phrases: Object.fromEntries(
      Object.entries(said.phrases).map(([tag, phrases]) => [tag, phrases.filter(asked)])
    )
  }
}

/** What the page of look-alikes says beside the screens' own words. */
function lookAlikeWords(pairs: Loaded['lookAlikes'], words: Texts): Texts {
  const { photo } = groupOf(words.ui)
  return { ui: { photo }, ...wordsOfPairs(pairs, words) }
}

const wordsOfPairs = (pairs: Loaded['lookAlikes'], words: Texts): Texts => ({
  'look-alikes': pick(groupOf(words['look-alikes']), new Set(pairs.map(({ id }) => id))),
  pictures: pick(groupOf(words.pictures), new Set(picturesOf(pairs)))
})

const picturesOf = (pairs: Loaded['lookAlikes']): readonly string[] =>
  pairs.flatMap(({ one, other }) =>
    [one.above, one.side, other.above, other.side].filter(id => id !== null)
  )

/** The pairs that help at some question of a tree. */
const pairsOf = ({ id, observations }: Tree, { lookAlikes }: Loaded) =>
  lookAlikes.filter(
    ({ trees, asked }) =>
      trees.includes(id) && asked.some(observation => Object.hasOwn(observations, observation))
  )

/** All that is said of a tree: its own texts, and those of the look-alikes that help in it. */
const wordsOf = (tree: Tree, loaded: Loaded, words: Texts): Texts => ({
  ...textsOf(tree, words),
  ...wordsOfPairs(pairsOf(tree, loaded), words)
})

function bundleOf(tree: Tree, loaded: Loaded): TreeBundle {
  const { sources, pictures, words } = loaded
  return {
    tree: withoutRules(tree),
    sources: pick(sources, namedIn(tree)),
    texts: wordsOf(tree, loaded, words[SOURCE_TAG] ?? {}),
    lookAlikes: pairsOf(tree, loaded),
    pictures: pick(pictures, new Set(Object.keys(tree.observations)))
  }
}

/** The rules are proved here, once; the browser has no use for them. */
const withoutRules = (tree: Tree): Tree => ({
  ...tree,
  rules: [],
  askedAgain: [],
  openCases: {},
  unfoundFaults: {},
  spokenRules: []
})

/** The drawings that stand ready; one that is missing leaves its answer with words alone. */
function drawn(
  folder: string,
  pictures: Loaded['pictures'],
  more: readonly string[]
): Readonly<Record<string, string>> {
  const ids = Object.values(pictures).flatMap(({ own, answers }) => [
    ...(own === null ? [] : [own]),
    ...Object.values(answers)
  ])
  return drawingsIn(folder, [...ids, ...more, 'mark-none', 'mark-unsure'])
}

function drawingsIn(folder: string, ids: readonly string[]): Readonly<Record<string, string>> {
  const files = ids.map(id => [id, join(folder, `shared/pictures/${id}.svg`)] as const)
  return Object.fromEntries(
    files
      .filter(([, file]) => existsSync(file))
      .map(([id, file]) => [id, readFileSync(file, 'utf8').trim()])
  )
}

/** As a caller chooses from them: by their place, and those without any last. */
const inOrder = (trees: readonly Tree[]): readonly Tree[] =>
  [...trees].sort((a, b) => (a.order ?? trees.length) - (b.order ?? trees.length))

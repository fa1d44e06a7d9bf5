import type { z } from 'zod'
import { startOf } from '../findings/place.ts'
import { hasKey } from '../tree/group.ts'
import type { Authored, AuthoredFile } from './authored.ts'
import { joined } from './joined.ts'
import { fileKind } from './kinds-of-file.ts'
import { liftOwnWords } from './own-words.ts'
import type { FindingReport } from './report.ts'
import { type RecordedScores, recordedScoresSchema } from './schemas/fault-scores.ts'
import { type AuthoredFollowUps, followUpsSchema } from './schemas/follow-ups.ts'
import { type AuthoredGlossary, glossarySchema } from './schemas/glossary.ts'
import { type AuthoredKnowHow, knowHowSchema } from './schemas/know-how.ts'
import { LOCALE_SCHEMAS, treeWordsSchema } from './schemas/locales.ts'
import { type AuthoredLongWords, longWordsSchema } from './schemas/long-words.ts'
import { type AuthoredLookAlikes, lookAlikesSchema } from './schemas/look-alikes.ts'
import { type AuthoredObservations, observationsSchema } from './schemas/observations.ts'
import { type AuthoredOffice, officePackSchema } from './schemas/office-pack.ts'
import { type AuthoredPractice, practiceSchema } from './schemas/practice.ts'
import { type AuthoredReviews, reviewsSchema } from './schemas/reviews.ts'
import { type AuthoredRows, rowsSchema } from './schemas/rows.ts'
import { type AuthoredRules, rulesSchema } from './schemas/rules.ts'
import { type AuthoredSaid, saidSchema } from './schemas/said.ts'
import { type Sources, sourcesSchema } from './schemas/sources.ts'
import { type AuthoredDeeds, doesSchema } from './schemas/steps.ts'
import { type AuthoredTranslatorNotes, translatorNotesSchema } from './schemas/translator-notes.ts'
import { type AuthoredPiece, type AuthoredTree, pieceSchema, treeSchema } from './schemas/tree.ts'
import { type AuthoredVerdicts, verdictsSchema } from './schemas/verdicts.ts'
import { type Withdrawals, withdrawnSchema } from './schemas/withdrawn.ts'
import { shapedFile } from './shaped-file.ts'

/** What a file says in its format's shape, with the places of its parts. */
export interface Shaped<T> {
  readonly value: T
  readonly doc: Authored
}

/** Every authored file, read and in shape; what could not be is left out and reported. */
export interface AuthoredProject {
  observations: Shaped<AuthoredObservations> | null
  verdicts: Shaped<AuthoredVerdicts> | null
  steps: Shaped<AuthoredDeeds> | null
  sources: Shaped<Sources> | null
  office: Shaped<AuthoredOffice> | null
  withdrawn: Shaped<Withdrawals> | null
  faultScores: Shaped<RecordedScores> | null
  /** What the English alone does not tell whoever translates it. */
  translatorNotes: Shaped<AuthoredTranslatorNotes> | null
  lookAlikes: Shaped<AuthoredLookAlikes> | null
  followUps: Shaped<AuthoredFollowUps> | null
  said: Shaped<AuthoredSaid> | null
  longWords: Shaped<AuthoredLongWords> | null
  readonly pieces: Map<string, Shaped<AuthoredPiece>>
  readonly trees: Map<string, Shaped<AuthoredTree>>
  readonly rules: Map<string, Shaped<AuthoredRules>>
  readonly rows: Map<string, Shaped<AuthoredRows>>
  /** Rules that several trees share, by name. */
  readonly sharedRules: Map<string, Shaped<AuthoredRules>>
  /** Rows that several trees share, by name. */
  readonly sharedRows: Map<string, Shaped<AuthoredRows>>
  /** What is agreed on between English and a language, by its tag. */
  readonly glossaries: Map<string, Shaped<AuthoredGlossary>>
  /** Answers to how-to questions, by ferment. */
  readonly knowHow: Map<string, Shaped<AuthoredKnowHow>>
  /** Invented callers, by tree. */
  readonly practice: Map<string, Shaped<AuthoredPractice>>
  /** Which translations were reviewed, by language tag. */
  readonly reviews: Map<string, Shaped<AuthoredReviews>>
  /** By language tag, then by file stem. */
  readonly words: Map<string, Map<string, Shaped<unknown>>>
}

const NEEDED = {
  observations: 'every observation that a tree asks',
  verdicts: 'the verdicts of each track, gentlest first',
  steps: 'what every step does',
  sources: 'every source that is cited'
} as const

/** Reads all files and puts each in the shape of its format. */
export function readProject(
  files: readonly AuthoredFile[],
  report: FindingReport
): AuthoredProject {
  const project: AuthoredProject = {
    observations: null,
    verdicts: null,
    steps: null,
    sources: null,
    office: null,
    withdrawn: null,
    faultScores: null,
    translatorNotes: null,
    longWords: null,
    lookAlikes: null,
    followUps: null,
    said: null,
    pieces: new Map(),
    trees: new Map(),
    rules: new Map(),
    rows: new Map(),
    sharedRules: new Map(),
    sharedRows: new Map(),
    glossaries: new Map(),
    reviews: new Map(),
    knowHow: new Map(),
    practice: new Map(),
    words: new Map()
  }
  const stems = new Set(
    files.map(({ path }) => fileKind(path)).flatMap(k => (k?.kind === 'tree' ? [k.stem] : []))
  )
  for (const file of files) readInto(project, file, stems, report)
  for (const files of project.words.values()) liftOwnWords(files, stems, report)
  for (const [stem, holds] of Object.entries(NEEDED)) {
    const file = `shared/${stem}.yaml`
    if (!files.some(({ path }) => path === file)) report.add('missing-file', null, { file, holds })
  }
  return project
}

function readInto(
  project: AuthoredProject,
  file: AuthoredFile,
  trees: ReadonlySet<string>,
  report: FindingReport
): void {
  const what = fileKind(file.path)
  const ofWords = what?.kind === 'words' ? wordsSchema(what.stem, trees) : null
  if (what === null || (what.kind === 'words' && ofWords === null)) {
    report.add('unknown-file', startOf(file.path), { file: file.path })
    return
  }
  // A published edition is data of our own making: it is opened and vouched for by itself.
  if (what.kind === 'edition') return
  const ofJson = what.kind === 'words' || what.kind === 'office'
  const as = <T>(format: z.ZodType<T>): Shaped<T> | null => shapedFile(file, format, ofJson, report)
  switch (what.kind) {
    case 'observations':
      project.observations = joined(
        'observations',
        project.observations,
        as(observationsSchema),
        report
      )
      break
    case 'verdicts':
      project.verdicts = as(verdictsSchema)
      break
    case 'steps':
      project.steps = joined('steps', project.steps, as(doesSchema), report)
      break
    case 'sources':
      project.sources = as(sourcesSchema)
      break
    case 'office':
      project.office = as(officePackSchema)
      break
    case 'withdrawn':
      project.withdrawn = as(withdrawnSchema)
      break
    case 'fault-scores':
      project.faultScores = as(recordedScoresSchema)
      break
    case 'translator-notes':
      project.translatorNotes = as(translatorNotesSchema)
      break
    case 'long-words':
      project.longWords = as(longWordsSchema)
      break
    case 'look-alikes':
      project.lookAlikes = joined('look-alikes', project.lookAlikes, as(lookAlikesSchema), report)
      break
    case 'follow-ups':
      project.followUps = joined('follow-ups', project.followUps, as(followUpsSchema), report)
      break
    case 'said':
      project.said = joined('said', project.said, as(saidSchema), report)
      break
    case 'piece':
      keep(project.pieces, what.stem, named(as(pieceSchema), what.stem, report))
      break
    case 'tree':
      keep(project.trees, what.stem, named(as(treeSchema), what.stem, report))
      break
    case 'rules':
      keep(project.rules, what.stem, as(rulesSchema))
      break
    case 'rows':
      keep(project.rows, what.stem, as(rowsSchema))
      break
    case 'shared-rules':
      keep(project.sharedRules, what.stem, as(rulesSchema))
      break
    case 'shared-rows':
      keep(project.sharedRows, what.stem, as(rowsSchema))
      break
    case 'glossary':
      keep(project.glossaries, what.tag, as(glossarySchema))
      break
    case 'reviews':
      keep(project.reviews, what.tag, as(reviewsSchema))
      break
    case 'know-how':
      keep(project.knowHow, what.stem, as(knowHowSchema))
      break
    case 'practice':
      keep(project.practice, what.stem, as(practiceSchema))
      break
    case 'words': {
      const ofTag = project.words.get(what.tag) ?? new Map<string, Shaped<unknown>>()
      project.words.set(what.tag, ofTag)
      if (ofWords) keep(ofTag, what.stem, as(ofWords))
    }
  }
}

function wordsSchema(stem: string, trees: ReadonlySet<string>): z.ZodType<unknown> | null {
  if (hasKey(LOCALE_SCHEMAS, stem)) return LOCALE_SCHEMAS[stem]
  return trees.has(stem) ? treeWordsSchema : null
}

function keep<T>(map: Map<string, T>, stem: string, value: T | null): void {
  if (value !== null) map.set(stem, value)
}

function named<T extends { id: string }>(
  shaped: Shaped<T> | null,
  stem: string,
  report: FindingReport
): Shaped<T> | null {
  if (!shaped || shaped.value.id === stem) return shaped
  report.add('id-not-file-name', shaped.doc.place(['id'], 'value'), { id: shaped.value.id, stem })
  return null
}

import { type Finding, sortFindings } from '../findings/finding.ts'
import { type Places, startOf } from '../findings/place.ts'
import type { CallersWords } from '../tree/callers-words.ts'
import type { LookAlike } from '../tree/look-alikes.ts'
import type { Observation } from '../tree/observation.ts'
import type { PracticeCaller } from '../tree/practice-caller.ts'
import type { Tree } from '../tree/tree.ts'
import type { AuthoredFile } from './authored.ts'
import { buildObservations } from './build-observations.ts'
import { type GuidanceRow, rowsOf } from './build-rows.ts'
import { buildVerdicts, checkSharedSources } from './build-verdicts.ts'
import { checkEditions, checkWithdrawn, readEditions } from './check-editions.ts'
import { checkNumbers } from './check-numbers.ts'
import { checkTranslations } from './check-translations.ts'
import { checkOffice, checkWhole } from './check-whole.ts'
import { checkWords } from './check-words.ts'
import { companionsOf } from './companions.ts'
import type { PublishedEdition } from './edition.ts'
import { meaningFingerprint, wordsFingerprint } from './fingerprint.ts'
import { checkKnowHow, knowHowOf, type LoadedKnowHow } from './know-how.ts'
import { type LinkedTree, linkTree } from './link-tree.ts'
import { type Pictures, picturesBy } from './pictures.ts'
import { placesOf, placesOfDeeds } from './places.ts'
import { checkTold, practiceOf } from './practice.ts'
import { type AuthoredProject, readProject } from './project.ts'
import { type FindingReport, openReport } from './report.ts'
import { type TranslatedText, translatedTexts } from './reviewed-texts.ts'
import { saidBy } from './said.ts'
import type { RecordedScores } from './schemas/fault-scores.ts'
import type { AuthoredGlossary } from './schemas/glossary.ts'
import type { AuthoredOffice } from './schemas/office-pack.ts'
import type { Sources } from './schemas/sources.ts'
import type { Withdrawals } from './schemas/withdrawn.ts'
import { shownWords } from './shown-words.ts'
import { translatorNotes } from './translator-notes.ts'

export type { AuthoredFile, CallersWords, GuidanceRow, LoadedKnowHow, RecordedScores, Sources }

const SHOWN_OF_A_FILE = 50

/** Everything authored, in the form that the other stages use, and all that is wrong with it. */
export interface Loaded {
  /** Those of which nothing was found; of a tree with a finding nothing is shown to anybody. */
  readonly trees: readonly Tree[]
  /** By tree id. */
  readonly places: Readonly<Record<string, Places>>
  readonly observations: Readonly<Record<string, Observation>>
  /** Rows of the guidance, by tree id. */
  readonly rows: Readonly<Record<string, readonly GuidanceRow[]>>
  /** Callers' own words, by language tag. */
  readonly said: CallersWords
  /** Which drawing shows an answer, by observation; `null` for the observation itself. */
  readonly pictures: Pictures
  readonly sources: Sources
  /** What callers mix up, two and two. */
  readonly lookAlikes: readonly LookAlike[]
  /** The answers to how-to questions. */
  readonly knowHow: LoadedKnowHow
  /** Invented callers to practice on. */
  readonly practice: readonly PracticeCaller[]
  /** By language tag, then by the stem of the file. */
  readonly words: Readonly<Record<string, Readonly<Record<string, unknown>>>>
  /** As authored, in shape: `readOfficePack` makes the pack of it. */
  readonly office: AuthoredOffice | null
  /** By language tag, every translated text and whether it was reviewed; of one that is not shown `words` has the English. */
  readonly translations: Readonly<Record<string, readonly TranslatedText[]>>
  /** What the English alone does not tell a translator, by the id of the text. */
  readonly translatorNotes: Readonly<Record<string, string>>
  /** Long English words that advice needs, each with the reason. */
  readonly longWords: Readonly<Record<string, string>>
  /** What is agreed on between English and a language, by its tag. */
  readonly glossaries: Readonly<Record<string, AuthoredGlossary>>
  /** Published editions that are still what was published. */
  readonly editions: readonly PublishedEdition[]
  /** Trees that nobody is shown until a newer edition stands, by id. */
  readonly withdrawn: Withdrawals
  /** What was measured of seeded faults, by tree. */
  readonly faultScores: RecordedScores
  readonly findings: readonly Finding[]
}

/**
 * Makes trees of authored files, or says what is wrong: all findings of a stage at once.
 *
 * A later stage looks only at what an earlier one had nothing to say of.
 */
export async function load(files: readonly AuthoredFile[]): Promise<Loaded> {
  const report = openReport()
  const project = readProject(files, report)
  const inShape = report.findings.length === 0
  const paths = new Set(files.map(({ path }) => path))
  const linked = linkTrees(project, paths, report)
  checkOffice(project, report)
  const { lookAlikes, followUps } = companionsOf(project, report)
  const practice = practiceOf(project, linked, paths, report)
  const said = saidBy(project, report)
  const knowHow = knowHowOf(project, linked, paths, report)
  const rows = linked.map(({ tree }) => [tree.id, rowsOf(tree, project, report)] as const)
  if (inShape && report.findings.length === 0) {
    checkWhole(project, linked, report)
    checkWords(project, linked, paths, report)
    checkNumbers(project, linked, followUps, report)
    checkKnowHow(project, linked, report)
    checkTold(project, report)
  }
  // A translation is held against the English words only when those are right themselves.
  if (inShape && report.findings.length === 0) checkTranslations(project, report)
  const trees = await Promise.all(
    linked.map(async ({ tree: bare }) => {
      const tree = {
        ...bare,
        advice: { ...bare.advice, followUps: followUps[bare.id] ?? [] }
      }
      return {
        ...tree,
        fingerprint: await meaningFingerprint(tree),
        wordsFingerprint: await wordsFingerprint(tree, project)
      }
    })
  )
  const editions = await readEditions(files, report)
  checkEditions(trees, editions, project, report)
  checkWithdrawn(trees, project, report)
  const translations = await translatedTexts(project, report)
  const notes = translatorNotes(project, report)
  const { observations, verdicts, steps } = project
  const deeds = steps && placesOfDeeds(steps.doc)
  const places = linked.flatMap(each => {
    const authored = project.trees.get(each.tree.id)?.doc
    return authored && observations && verdicts && deeds
      ? [
          [
            each.tree.id,
            placesOf(
              each,
              authored,
              observations.doc,
              verdicts.doc,
              deeds,
              project.rules.get(each.tree.id)?.doc
            )
          ] as const
        ]
      : []
  })
  return {
    trees,
    lookAlikes,
    knowHow,
    practice,
    places: Object.fromEntries(places),
    observations: observations
      ? Object.fromEntries(buildObservations(observations, openReport()))
      : {},
    rows: Object.fromEntries(rows),
    said,
    pictures: observations ? picturesBy(observations.value) : {},
    sources: project.sources?.value ?? {},
    words: shownWords(project, translations),
    translations,
    translatorNotes: notes,
    longWords: project.longWords?.value ?? {},
    glossaries: Object.fromEntries([...project.glossaries].map(([tag, { value }]) => [tag, value])),
    office: project.office?.value ?? null,
    editions,
    withdrawn: stillWithdrawn(trees, project),
    faultScores: project.faultScores?.value ?? {},
    findings: bounded(sortFindings(report.findings))
  }
}

function linkTrees(
  project: AuthoredProject,
  paths: ReadonlySet<string>,
  report: FindingReport
): readonly LinkedTree[] {
  const { observations, verdicts, steps, sources } = project
  if (!observations || !verdicts || !steps || !sources) return []
  const before = report.findings.length
  const catalogue = {
    observations: buildObservations(observations, report),
    verdicts: buildVerdicts(verdicts, report),
    sources: new Set(Object.keys(sources.value))
  }
  if (report.findings.length > before) return []
  checkSharedSources(verdicts, catalogue.sources, report)
  return [...project.trees.values()].flatMap(tree => {
    // A piece that is there but out of shape has its own findings: it is not unknown.
    const waits = Object.keys(tree.value.pieces ?? {}).some(
      piece => !project.pieces.has(piece) && paths.has(`shared/pieces/${piece}.yaml`)
    )
    return (waits ? null : linkTree(tree, project, { verdicts, steps }, catalogue, report)) ?? []
  })
}

/** A withdrawal ends with a newer edition than the one withdrawn. */
function stillWithdrawn(trees: readonly Tree[], { withdrawn }: AuthoredProject): Withdrawals {
  return Object.fromEntries(
    Object.entries(withdrawn?.value ?? {}).filter(([id, { edition }]) =>
      trees.some(tree => tree.id === id && tree.edition <= edition)
    )
  )
}

/** A file that is wrong from end to end is not told of line by line. */
function bounded(findings: readonly Finding[]): readonly Finding[] {
  const shown = new Map<string, number>()
  const kept = findings.filter(({ place }) => {
    const file = place?.file ?? ''
    const count = (shown.get(file) ?? 0) + 1
    shown.set(file, count)
    return count <= SHOWN_OF_A_FILE
  })
  const rest = [...shown].flatMap(([file, count]): Finding[] =>
    count > SHOWN_OF_A_FILE
      ? [
          {
            code: 'too-many-findings',
            place: startOf(file),
            because: [],
            facts: { more: count - SHOWN_OF_A_FILE, shown: SHOWN_OF_A_FILE }
          }
        ]
      : []
  )
  return sortFindings([...kept, ...rest])
}

import { generalOutcome } from '../addresses/outcome-address.ts'
import type { Loaded } from '../load/load.ts'
import { textsIn } from '../load/texts.ts'
import {
  type CountSyllables,
  countsOf,
  englishSyllables,
  spanishSyllables
} from '../readability/counts.ts'
import {
  fernandezHuerta,
  gradesOf,
  inflesz,
  infleszBand,
  MOST_GRADE
} from '../readability/grades.ts'
import { commandsIn, HABITS, type Habit, habitsBroken } from '../readability/habits.ts'
import { longWords, withoutNeeded } from '../readability/long-words.ts'
import { reportOf } from '../report/report.ts'
import type { Tree } from '../tree/tree.ts'
import { listedText } from '../words/listed.ts'
import { type Said, say } from '../words/say.ts'
import { createWords, SOURCE_TAG, type Words } from '../words/words.ts'

/** The texts of one verdict's sheet: what to do, and all that stands on it. */
interface SheetTexts {
  readonly verdict: string
  readonly actions: readonly string[]
  readonly all: readonly string[]
}

/** What the sheets of a tree ask of a reader, for its authors. */
export interface TreeReading {
  readonly tree: string
  /** The mean over its sheets, Flesch-Kincaid. */
  readonly actions: number
  readonly sheet: number
  readonly smog: number
  /** The same without needed long words. */
  readonly sheetWithoutNeeded: number
  readonly smogWithoutNeeded: number
  /** Sheets that ask more than they should, hardest first. */
  readonly above: readonly {
    readonly verdict: string
    readonly part: string
    readonly grade: number
  }[]
  /** By language that has a formula: ease of reading, and its band. */
  readonly spanish: {
    readonly huerta: number
    readonly inflesz: number
    readonly band: string
  } | null
}

/** The general sheet of each verdict in one language. No office: its names are of its own choosing. */
function sheetsOf(
  tree: Tree,
  words: Words,
  { sources }: Loaded,
  today: Date
): readonly SheetTexts[] {
  return tree.verdicts.flatMap(({ id }) => {
    const outcome = generalOutcome(tree, [id])
    if (outcome === null) return []
    const said = say(reportOf(tree, outcome, null, today), words, sources)
    const actions = [...said.doNow, ...said.later]
    return [{ verdict: id, actions, all: [...toldOf(said).flatMap(asShown), ...actions] }]
  })
}

/** A list in a sentence is shown as a list: each of its parts stands by itself. */
const asShown = (text: string): readonly string[] => {
  const list = listedText(text)
  return list === null ? [text] : [list.lead, ...list.parts]
}

const toldOf = ({ verdicts, use, recheck, sections }: Said): readonly string[] =>
  [
    ...verdicts.flatMap(({ name, message, why }) => [name, message, why]),
    use,
    recheck,
    ...sections.flatMap(({ title, lines }) => [title, ...lines])
  ].filter(text => text !== null)

/** Reckons the sheets of a tree. */
export function readingOf(tree: Tree, loaded: Loaded, today: Date): TreeReading {
  const sheets = sheetsOf(tree, createWords(loaded.words, SOURCE_TAG), loaded, today)
  const mean = (
    part: 'actions' | 'all',
    formula: 'kincaid' | 'smog',
    syllables: CountSyllables = englishSyllables
  ) => {
    const grades = sheets
      .filter(sheet => sheet[part].length > 0)
      .map(sheet => gradesOf(countsOf(sheet[part], syllables))[formula])
    return grades.reduce((sum, grade) => sum + grade, 0) / Math.max(1, grades.length)
  }
  const above = sheets.flatMap(({ verdict, actions, all }) => [
    ...(actions.length === 0
      ? []
      : [{ verdict, part: 'actions', of: actions, most: MOST_GRADE.actions }]),
    { verdict, part: 'sheet', of: all, most: MOST_GRADE.sheet }
  ])
  const needed = withoutNeeded(loaded.longWords)
  const spanish = Object.hasOwn(loaded.words, 'es')
    ? countsOf(
        sheetsOf(tree, createWords(loaded.words, 'es'), loaded, today).flatMap(({ all }) => all),
        spanishSyllables
      )
    : null
  return {
    tree: tree.id,
    actions: mean('actions', 'kincaid'),
    sheet: mean('all', 'kincaid'),
    smog: mean('all', 'smog'),
    sheetWithoutNeeded: mean('all', 'kincaid', needed),
    smogWithoutNeeded: mean('all', 'smog', needed),
    above: above
      .map(({ verdict, part, of, most }) => ({
        verdict,
        part,
        most,
        grade: gradesOf(countsOf(of)).kincaid
      }))
      .filter(({ grade, most }) => grade > most)
      .map(({ most: _, ...one }) => one)
      .sort((a, b) => b.grade - a.grade),
    spanish:
      spanish === null
        ? null
        : {
            huerta: fernandezHuerta(spanish),
            inflesz: inflesz(spanish),
            band: infleszBand(inflesz(spanish))
          }
  }
}

const tenth = (grade: number): string => grade.toFixed(1)

/** One line for a tree, and one for each sheet that asks too much. */
export function readingLines(reading: TreeReading): readonly string[] {
  const { tree, actions, sheet, smog, sheetWithoutNeeded, smogWithoutNeeded, above, spanish } =
    reading
  const inSpanish =
    spanish === null
      ? ''
      : `; Spanish: Fernández Huerta ${tenth(spanish.huerta)}, INFLESZ ${tenth(spanish.inflesz)} (${spanish.band})`
  return [
    `${tree}: reading: steps grade ${tenth(actions)}, sheets ${tenth(sheet)}, SMOG ${tenth(smog)} ` +
      `(without needed long words ${tenth(sheetWithoutNeeded)} and ${tenth(smogWithoutNeeded)})${inSpanish}`,
    ...above.map(
      ({ verdict, part, grade }) =>
        `${tree}: reading: ${part === 'sheet' ? 'the sheet' : 'the steps'} of ${verdict}: grade ` +
        `${tenth(grade)}, and at most ${part === 'sheet' ? MOST_GRADE.sheet : MOST_GRADE.actions} is wanted`
    )
  ]
}

const BROKEN: Readonly<Record<Habit, string>> = {
  long: 'more than 20 words',
  'forbids-first': 'begins with what not to do',
  'denies-twice': 'denies twice in one clause',
  'two-actions': 'asks for more than one thing'
}

/** How the steps are worded, and the list of long words held both ways. */
export function wordingLines(
  loaded: Loaded,
  trees: readonly TreeReading[],
  today: Date
): readonly string[] {
  const steps = [...textsIn(loaded.words[SOURCE_TAG]?.steps)]
  const commands = commandsIn(steps.map(([, text]) => text))
  const broken = steps.flatMap(([id, text]) =>
    habitsBroken(text, commands).map(habit => ({ id, habit }))
  )
  const words = createWords(loaded.words, SOURCE_TAG)
  const wanted = loaded.trees.filter(({ id }) => trees.some(({ tree }) => tree === id))
  const all = wanted.flatMap(tree =>
    sheetsOf(tree, words, loaded, today).flatMap(sheet => sheet.all)
  )
  const { notListed, unused } = longWords([...new Set(all)], loaded.longWords)
  const named = notListed.slice(0, 20).map(([word, times]) => `${word} (${times})`)
  return [
    ...HABITS.map(habit => {
      const ids = broken.filter(one => one.habit === habit).map(({ id }) => id)
      return `steps: ${ids.length} of ${steps.length} ${BROKEN[habit]}${ids.length > 0 ? `: ${ids.join(', ')}` : ''}`
    }),
    `long words: ${notListed.length} are not listed in shared/long-words.yaml${named.length > 0 ? `, most often ${named.join(', ')}` : ''}`,
    `long words: ${unused.length} listed and not used${unused.length > 0 ? `: ${unused.join(', ')}` : ''}`
  ]
}

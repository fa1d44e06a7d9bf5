import { wordsIn } from './words.ts'

/** One text as `seen.mjs` finds it. */
export interface SeenText {
  readonly text: string
  readonly inSight: string
  readonly part: 'frame' | 'asked' | 'small-print' | 'card' | 'rest'
  readonly doubled: boolean
}

/** What one screen of a walk shows, and how it was left. */
export interface SeenScreen {
  /** What is asked; `start` or `choose` before the first question; null at the outcome. */
  readonly observation: string | null
  /** What is asked under the same answers. */
  readonly along?: string | null
  readonly presses: number
  readonly texts: readonly SeenText[]
  /** How many windows high it is, at least one. */
  readonly screens: number
}

/** Words without scrolling, and of everything that is not folded. */
export interface Words {
  readonly inSight: number
  readonly whole: number
}

/** What one caller in one place and language has to get through. */
export interface Reading {
  readonly caller: string
  readonly place: string
  readonly language: string
  /** What was asked, in order. */
  readonly asked: readonly string[]
  readonly needless: readonly string[]
  readonly before: Words
  readonly outcome: Words
  /** Everything before the outcome, and of the outcome what is in sight. */
  readonly toVerdict: number
  /** Windows scrolled through before the outcome, and the one in which it stands. */
  readonly screens: number
  readonly presses: number
  /** Read aloud at the desk: what is asked with the names of its answers, and the outcome up to its steps. */
  readonly aloud: { readonly asked: number; readonly card: number; readonly smallPrint: number }
}

/** Adds up a walk. The frame (head, foot, the answers so far) is the same on every screen: it counts once. */
export function readingOf(
  walk: { readonly caller: string; readonly place: string; readonly language: string },
  screens: readonly SeenScreen[],
  needless: readonly string[]
): Reading {
  const { language } = walk
  const words = (texts: readonly SeenText[]): Words => ({
    inSight: sum(texts.map(({ inSight }) => wordsIn(inSight, language))),
    whole: sum(texts.map(({ text }) => wordsIn(text, language)))
  })
  const end = screens.at(-1)
  if (end === undefined) throw new Error('nothing was seen')
  const passed = screens.slice(0, -1)
  const shown = (screen: SeenScreen, index: number) =>
    words(screen.texts.filter(({ part }) => part !== 'frame' || index === 0))
  const each = passed.map(shown)
  const outcome = words(end.texts.filter(({ part }) => part !== 'frame'))
  const before = {
    inSight: sum(each.map(({ inSight }) => inSight)),
    whole: sum(each.map(({ whole }) => whole))
  }
  // A danger stays in its place while the rest is asked, and is read out once.
  const aloud = (part: SeenText['part']) => {
    const texts = screens.flatMap(screen =>
      screen.texts.filter(each => each.part === part && !(language !== 'en' && each.doubled))
    )
    const once = part === 'card' ? [...new Set(texts.map(({ text }) => text))] : texts
    return sum(once.map(each => wordsIn(typeof each === 'string' ? each : each.text, language)))
  }
  return {
    ...walk,
    asked: [
      ...new Set(
        passed.flatMap(({ observation, along }) =>
          observation === null || observation === 'start' || observation === 'choose'
            ? []
            : [observation, ...(along ? [along] : [])]
        )
      )
    ],
    needless,
    before,
    outcome,
    toVerdict: before.whole + outcome.inSight,
    screens: Math.round(10 * (sum(passed.map(screen => screen.screens)) + 1)) / 10,
    presses: sum(screens.map(({ presses }) => presses)),
    aloud: { asked: aloud('asked'), card: aloud('card'), smallPrint: aloud('small-print') }
  }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0)

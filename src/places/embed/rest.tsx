import { render } from 'preact'
import { useMemo } from 'preact/hooks'
import { Boundary } from '../../last-resort/boundary.tsx'
import type { OfficePack } from '../../office/office-pack.ts'
import { settingOf } from '../../opening/setting-of.ts'
import type { TextsByTag } from '../../opening/speech.ts'
import { After } from '../../parts/after.tsx'
import { SettingProvider } from '../../parts/setting.tsx'
import { WalkScreen } from '../../parts/walk-screen.tsx'
import lookAlikes from '../../style/look-alikes.css?inline'
import outcome from '../../style/outcome.css?inline'
import print from '../../style/print.css?inline'
import after from '../../style/walk.css?inline'
import type { Answers } from '../../tree/answers.ts'
import type { Language } from '../../words/languages.ts'
import type { WholeTree } from './embed-files.ts'
import { NoScreen } from './no-screen.tsx'
import { styleOf } from './style.ts'

/** A walk from its first answer on. */
export interface RestOfWalk {
  readonly whole: WholeTree
  /** The words in English and in the language spoken. */
  readonly texts: TextsByTag
  readonly tag: string
  readonly drawings: Readonly<Record<string, string>>
  readonly office: OfficePack | null
  readonly today: Date
  readonly start: Answers
  readonly languages: readonly Language[]
  readonly onLanguage: (tag: string) => void
  readonly onStartOver: () => void
}

/** The style of everything that comes after the first question. */
export const restStyle = styleOf(after + lookAlikes + outcome + print)

/** Shows the walk in a box; called again it shows what has changed, and null takes it away. */
export function showWalk(box: Element, walk: RestOfWalk | null): void {
  render(
    walk && (
      <Boundary fallback={<NoScreen texts={walk.texts[walk.tag]} />}>
        <Walk {...walk} />
      </Boundary>
    ),
    box
  )
}

function Walk({
  whole,
  texts,
  tag,
  drawings,
  office,
  today,
  start,
  languages,
  onLanguage,
  onStartOver
}: RestOfWalk) {
  const setting = useMemo(() => {
    const opened = { bundle: { ...whole, texts: {} }, texts, drawings }
    return settingOf(opened, { tag, texts }, office, today)
  }, [whole, texts, tag, drawings, office, today])
  return (
    <SettingProvider value={setting}>
      <WalkScreen
        start={start}
        notice={null}
        quiet={false}
        ownsPage={false}
        languages={languages}
        onLanguage={onLanguage}
        onLeave={null}
        onStartOver={onStartOver}
        underOutcome={({ answers, replace, workOut }) => (
          <After answers={answers} onAnswer={replace} onInputs={workOut} />
        )}
      />
    </SettingProvider>
  )
}

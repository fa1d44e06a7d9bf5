import '../style/framed.css'
import '../style/leads.css'
import type { ComponentChildren } from 'preact'
import { homeOf } from '../addresses/sheet-address.ts'
import type { SheetsBundle } from '../opening/bundle.ts'
import type { OtherSheet, OtherSheetName, OtherSheets } from '../parts/print-choice.ts'
import { SettingProvider } from '../parts/setting.tsx'
import type { Words } from '../words/words.ts'
import { wordsWith } from '../words/words-with.ts'
import { BatchRecord } from './batch-card.tsx'
import { ClassAnswers } from './class-page.tsx'
import { KeyLeads } from './key-sheet.tsx'
import { LookAlikePairs, pairsAsked } from './look-alike-chart.tsx'
import { SheetFrame } from './sheet-frame.tsx'

/** The groups of texts that come with these sheets alone. */
const THEIRS = /^(?:ui:(?:card|chart|class|key|know-how)\.|know-how:)/

/** The sheets that are not about a verdict, for whoever looks at what will be printed. */
export const otherSheets =
  ({ card, answers, sources, words: texts }: SheetsBundle): OtherSheets =>
  setting => {
    const { tree, lookAlikes, office } = setting
    const pairs = pairsAsked(lookAlikes, tree)
    const withTheirs = (words: Words) => wordsWith(words, texts, THEIRS)
    const sheet = (name: OtherSheetName, content: () => ComponentChildren): OtherSheet => ({
      name,
      title: words => withTheirs(words).t(`ui:${name}.title`),
      side: words => (
        <SettingProvider
          value={{
            ...setting,
            words: withTheirs(words),
            second: null,
            sources: { ...setting.sources, ...sources }
          }}
        >
          <SheetFrame name={name} home={homeOf(office)}>
            {content()}
          </SheetFrame>
        </SettingProvider>
      )
    })
    return [
      ...(card === null ? [] : [sheet('card', () => <BatchRecord {...card} />)]),
      ...(pairs.length === 0 ? [] : [sheet('chart', () => <LookAlikePairs pairs={pairs} />)]),
      ...(answers.length === 0 ? [] : [sheet('class', () => <ClassAnswers answers={answers} />)]),
      sheet('key', () => <KeyLeads />)
    ]
  }

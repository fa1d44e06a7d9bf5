import type { ComponentChildren } from 'preact'
import { renderToString } from 'preact-render-to-string'
import type { OtherSheetName } from '../parts/print-choice.ts'
import { SettingProvider } from '../parts/setting.tsx'
import { batchCardOf } from '../tree/batch-card.ts'
import { SOURCE_TAG } from '../words/words.ts'
import { BatchRecord } from './batch-card.tsx'
import { ClassAnswers, forClass } from './class-page.tsx'
import { KeyLeads } from './key-sheet.tsx'
import { LookAlikePairs, pairsAsked } from './look-alike-chart.tsx'
import { paperPage } from './paper-page.ts'
import { SheetFrame } from './sheet-frame.tsx'
import { type SheetOf, settingOf } from './verdict-sheet.tsx'

/** The key of a tree as a page of its own. */
export const keySheetHtml = (sheet: SheetOf): string => framed(sheet, 'key', <KeyLeads />)

/** What is mixed up at a tree's own questions; null where nothing is. */
export function lookAlikeChartHtml(sheet: SheetOf): string | null {
  const pairs = pairsAsked(sheet.lookAlikes, sheet.tree)
  return pairs.length === 0 ? null : framed(sheet, 'chart', <LookAlikePairs pairs={pairs} />)
}

/** The record of one batch, to be filled in by hand; null where a ferment has none. */
export function batchCardHtml(sheet: SheetOf): string | null {
  const { tree, texts, knowHow } = sheet
  const card = batchCardOf(tree, texts[SOURCE_TAG]?.[tree.id], knowHow.allowed[tree.id])
  return card && framed(sheet, 'card', <BatchRecord {...card} />)
}

/** The limits of a ferment's making on one page; null where none are chosen for a class. */
export function classSheetHtml(sheet: SheetOf): string | null {
  const answers = forClass(sheet.knowHow.answers, sheet.tree.id)
  return answers.length === 0 ? null : framed(sheet, 'class', <ClassAnswers answers={answers} />)
}

/** A sheet in its own language and, where that is a draft, in English behind it. */
function framed(sheet: SheetOf, name: OtherSheetName, content: ComponentChildren): string {
  const { tree, language, home } = sheet
  const setting = settingOf(sheet)
  const languages = [setting.words, setting.second?.words].filter(words => words !== undefined)
  const body = languages
    .map(words =>
      renderToString(
        <SettingProvider value={{ ...setting, words, second: null }}>
          <SheetFrame name={name} home={home}>
            {content}
          </SheetFrame>
        </SettingProvider>
      )
    )
    .join('')
  const title = `${setting.words.t(`ui:${name}.title`)} · ${setting.words.t(`${tree.id}:title`)}`
  return paperPage({ ...sheet, title, language, body })
}

import type { ComponentChildren } from 'preact'
import { addressOf } from '../addresses/route.ts'
import { isPast } from '../office/stale.ts'
import type { OtherSheetName } from '../parts/print-choice.ts'
import { Qr } from '../parts/qr.tsx'
import { useSetting } from '../parts/setting.tsx'
import { NonDiscrimination, SheetNumbers } from '../parts/sheet-side.tsx'
import { directionOf, inLatinDigits } from '../words/direction.ts'
import { isDraft } from '../words/languages.ts'
import { standingOf } from '../words/say.ts'
import { sentence } from '../words/sentence.ts'
import { cautionText } from '../words/tree-texts.ts'

/** What stands around every sheet that is not about a verdict. */
export function SheetFrame({
  name,
  home,
  children
}: {
  name: OtherSheetName
  /** The address of this installation, ending in a slash. */
  home: string
  children: ComponentChildren
}) {
  const { words, tree, office, today } = useSetting()
  const address = home + addressOf(tree.id, words.tag)
  const overdue = isPast(tree.review.due, today)
  const { draft, edition, due, overdue: late } = standingOf({ tree, overdue }, words)
  const translation = isDraft(words.tag) ? words.t('ui:draft-translation') : null
  const doubts = [draft, late, translation].filter(doubt => doubt !== null)
  const printed = new Intl.DateTimeFormat(inLatinDigits(words.tag), { dateStyle: 'medium' }).format(
    today
  )
  return (
    <article class={`framed framed-${name}`} lang={words.tag} dir={directionOf(words.tag)}>
      <header class="framed-head">
        <div>
          <p>{office?.office.name ?? 'Jarside'}</p>
          <h1>
            {words.t(`ui:${name}.title`)}: {words.t(`${tree.id}:title`)}
          </h1>
          <SheetNumbers />
        </div>
        <Qr text={address} label={words.t('ui:sheet.scan')} />
      </header>
      {children}
      <footer class="framed-foot">
        <p>
          {doubts.map(doubt => (
            <strong key={doubt}>{sentence(doubt)} </strong>
          ))}
          {name !== 'chart' && cautionText(words, tree.id, 'who-must-not')}{' '}
          {cautionText(words, tree.id, 'not-proof')} {words.t('ui:sheet.local-first')}{' '}
          <NonDiscrimination />
        </p>
        <p>
          <bdi>{address.replace(/^https?:\/\//, '')}</bdi> · {edition} (
          {tree.fingerprint.slice(0, 6)}){' · '}
          {words.t('ui:sheet.review', { due })} · {words.t('ui:sheet.printed', { date: printed })}
        </p>
      </footer>
    </article>
  )
}

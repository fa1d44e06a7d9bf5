import type { ComponentChildren } from 'preact'
import type { OfficePack } from '../office/office-pack.ts'
import { Foot } from './foot.tsx'
import type { LanguageChoice } from './language-switch.tsx'
import { Masthead, type MastheadProps } from './masthead.tsx'

/** What every screen is given by its place: the languages to change to, the office and the day. */
export interface ScreenFrame extends Partial<LanguageChoice> {
  readonly office: OfficePack | null
  readonly today: Date
}

/** A whole screen: its masthead, its main part, and the numbers to call at its foot. */
export function Screen({
  look = 'screen',
  main: Main = 'main',
  under,
  more,
  office,
  today,
  children,
  ...masthead
}: ScreenFrame &
  MastheadProps & {
    look?: string
    /** A walk inside another page is not that page's main part. */
    main?: 'main' | 'div'
    /** Between the masthead and the main part. */
    under?: ComponentChildren
    /** What can be done besides, folded at the foot. */
    more?: ComponentChildren
    children: ComponentChildren
  }) {
  return (
    <div class={look}>
      <Masthead {...masthead} />
      {under}
      <Main class={look === 'screen' ? 'main' : undefined}>{children}</Main>
      <Foot office={office} today={today}>
        {more}
      </Foot>
    </div>
  )
}

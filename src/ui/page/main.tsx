import catalogue, { openers } from 'virtual:jarside/catalogue'
import { render } from 'preact'
import { type OfficePack, readOfficePack } from '../../office/office-pack.ts'
import '../style/fonts.css'
import '../style/base.css'
import '../style/question.css'
import '../style/outcome.css'
import '../style/print.css'
import { App } from './app.tsx'

/** The office pack is this installation's own file; without it the two fixed numbers stand. */
async function officePack(): Promise<OfficePack | null> {
  try {
    const answer = await fetch('./office.json')
    return answer.ok ? readOfficePack(await answer.json()) : null
  } catch {
    return null
  }
}

const page = document.getElementById('page')
if (page !== null) {
  const show = (office: OfficePack | null) =>
    render(<App catalogue={catalogue} openers={openers} office={office} today={new Date()} />, page)
  page.replaceChildren()
  show(null)
  officePack().then(show)
}

import catalogue, { openers } from 'virtual:jarside/catalogue'
import { render } from 'preact'
import '../style/fonts.css'
import '../style/base.css'
import '../style/question.css'
import '../style/look-alikes.css'
import '../style/outcome.css'
import '../style/sheet.css'
import '../style/print.css'
import { App } from './app.tsx'

const page = document.getElementById('page')
if (page !== null) {
  page.replaceChildren()
  render(<App catalogue={catalogue} openers={openers} />, page)
}

import catalogue, { openers } from 'virtual:jarside/catalogue'
import { render } from 'preact'
import '../style/fonts.css'
import '../style/base.css'
import '../style/question.css'
import '../style/look-alikes.css'
import '../style/outcome.css'
import '../style/sheet.css'
import '../style/print.css'
import '../style/desk.css'
import { Desk } from './desk.tsx'

const page = document.getElementById('page')
if (page !== null) {
  page.replaceChildren()
  render(<Desk catalogue={catalogue} openers={openers} />, page)
}

import catalogue, { openers } from 'virtual:jarside/catalogue'
import { render } from 'preact'
import '../style/fonts.css'
import '../style/base.css'
import '../style/question.css'
import '../style/workbench.css'
import { Workbench } from './workbench.tsx'

const page = document.getElementById('page')
if (page !== null) {
  page.replaceChildren()
  render(<Workbench catalogue={catalogue} openers={openers} />, page)
}

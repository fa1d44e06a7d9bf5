import catalogue, { openers } from 'virtual:jarside/catalogue'
import words from 'virtual:jarside/workbench'
import { render } from 'preact'
import '../style/fonts.css'
import '../style/base.css'
import '../style/question.css'
import '../style/workbench.css'
import { withMoreWords } from '../opening/more-words.ts'
import { Workbench } from './workbench.tsx'

const page = document.getElementById('page')
if (page !== null) {
  page.replaceChildren()
  render(<Workbench {...withMoreWords(catalogue, openers, words)} />, page)
}

import catalogue, { openers } from 'virtual:jarside/catalogue'
import { drawings, pairs, words } from 'virtual:jarside/look-alikes'
import { render } from 'preact'
import '../style/fonts.css'
import '../style/base.css'
import '../style/question.css'
import '../style/look-alikes.css'
import { withMoreWords } from '../opening/more-words.ts'
import { LookAlikes } from './look-alikes.tsx'

const page = document.getElementById('page')
if (page !== null) {
  page.replaceChildren()
  render(
    <LookAlikes {...withMoreWords(catalogue, openers, words)} pairs={pairs} drawings={drawings} />,
    page
  )
}

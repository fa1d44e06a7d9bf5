import catalogue, { openers } from 'virtual:jarside/catalogue'
import { drawings, pairs, words } from 'virtual:jarside/look-alikes'
import '../../style/fonts.css'
import '../../style/base.css'
import '../../style/page.css'
import '../../style/question.css'
import '../../style/walk.css'
import '../../style/choose.css'
import '../../style/look-alikes.css'
import { showPage } from '../../last-resort/show-page.tsx'
import { withMoreWords } from '../../opening/more-words.ts'
import { LookAlikes } from './look-alikes.tsx'

showPage(
  <LookAlikes {...withMoreWords(catalogue, openers, words)} pairs={pairs} drawings={drawings} />
)

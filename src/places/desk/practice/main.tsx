import catalogue, { openers } from 'virtual:jarside/catalogue'
import contacts from 'virtual:jarside/contacts'
import { callers, drawings, verdicts, words } from 'virtual:jarside/practice'
import '../../../style/fonts.css'
import '../../../style/base.css'
import '../../../style/question.css'
import '../../../style/walk.css'
import '../../../style/choose.css'
import '../../../style/look-alikes.css'
import '../../../style/outcome.css'
import '../../../style/know-how.css'
import '../../../style/preview.css'
import '../../../style/sheet.css'
import '../../../style/print.css'
import '../../../style/desk.css'
import '../../../style/record.css'
import '../../../style/practice.css'
import { showPage } from '../../../last-resort/show-page.tsx'
import { withMoreWords } from '../../../opening/more-words.ts'
import { PracticePage } from './practice-page.tsx'

const desk = withMoreWords(catalogue, openers, contacts)
showPage(
  <PracticePage
    {...withMoreWords(desk.catalogue, desk.openers, words)}
    tellings={words}
    callers={callers}
    verdicts={verdicts}
    drawings={drawings}
  />
)

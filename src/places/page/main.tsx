import catalogue, { openers } from 'virtual:jarside/catalogue'
import '../../style/fonts.css'
import '../../style/base.css'
import '../../style/question.css'
import '../../style/walk.css'
import '../../style/choose.css'
import '../../style/look-alikes.css'
import '../../style/outcome.css'
import '../../style/sheet.css'
import '../../style/print.css'
import { showPage } from '../../last-resort/show-page.tsx'
import { App } from './app.tsx'

showPage(<App catalogue={catalogue} openers={openers} />)

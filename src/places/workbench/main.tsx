import catalogue, { openers } from 'virtual:jarside/catalogue'
import words from 'virtual:jarside/workbench'
import '../../style/fonts.css'
import '../../style/base.css'
import '../../style/page.css'
import '../../style/question.css'
import '../../style/walk.css'
import '../../style/workbench.css'
import { showPage } from '../../last-resort/show-page.tsx'
import { withMoreWords } from '../../opening/more-words.ts'
import { Workbench } from './workbench.tsx'

showPage(<Workbench {...withMoreWords(catalogue, openers, words)} />)

import catalogue, { openers } from 'virtual:jarside/catalogue'
import { knowHow, words } from 'virtual:jarside/know-how'
import '../../style/fonts.css'
import '../../style/base.css'
import '../../style/question.css'
import '../../style/walk.css'
import '../../style/outcome.css'
import '../../style/know-how.css'
import '../../style/how-to.css'
import { showPage } from '../../last-resort/show-page.tsx'
import { withMoreWords } from '../../opening/more-words.ts'
import { HowTo } from './how-to.tsx'

showPage(<HowTo {...withMoreWords(catalogue, openers, words)} knowHow={knowHow} allWords={words} />)

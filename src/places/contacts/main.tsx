import catalogue, { openers } from 'virtual:jarside/catalogue'
import words from 'virtual:jarside/contacts'
import '../../style/fonts.css'
import '../../style/base.css'
import '../../style/question.css'
import '../../style/print.css'
import '../../style/record.css'
import '../../style/contacts.css'
import { showPage } from '../../last-resort/show-page.tsx'
import { withMoreWords } from '../../opening/more-words.ts'
import { ContactsPage } from './contacts-page.tsx'

showPage(<ContactsPage {...withMoreWords(catalogue, openers, words)} />)

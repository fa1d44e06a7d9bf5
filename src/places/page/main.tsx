import front from 'virtual:jarside/front'
import '../../style/fonts.css'
import '../../style/base.css'
import '../../style/question.css'
import '../../style/walk.css'
import '../../style/choose.css'
import '../../style/page.css'
import { showPage } from '../../last-resort/show-page.tsx'
import { Front } from './front.tsx'

showPage(<Front {...front} />)

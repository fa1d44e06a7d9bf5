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
import '../../style/kiosk.css'
import '../../style/kiosk-start.css'
import '../../style/kiosk-visit.css'
import { showPage } from '../../last-resort/show-page.tsx'
import { Kiosk } from './kiosk.tsx'

// Whatever the address brought along, a kiosk begins with nobody's answers.
history.scrollRestoration = 'manual'
// The state of the entry is the watchdog's.
history.replaceState(history.state, '', location.pathname)
// A long press is somebody looking closely, not somebody asking for a menu.
addEventListener('contextmenu', event => event.preventDefault())
addEventListener('dragstart', event => event.preventDefault())
showPage(<Kiosk catalogue={catalogue} openers={openers} />)

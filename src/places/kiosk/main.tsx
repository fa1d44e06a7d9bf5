import catalogue, { openers } from 'virtual:jarside/catalogue'
import words from 'virtual:jarside/kiosk'
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
import '../../style/kiosk-aids.css'
import '../../style/kiosk-staff.css'
import { showPage } from '../../last-resort/show-page.tsx'
import { withMoreWords } from '../../opening/more-words.ts'
import { Kiosk } from './kiosk.tsx'

// Whatever the address brought along, a kiosk begins with nobody's answers.
history.scrollRestoration = 'manual'
// The state of the entry is the watchdog's.
history.replaceState(history.state, '', location.pathname)
// A long press is somebody looking closely, not somebody asking for a menu.
addEventListener('contextmenu', event => event.preventDefault())
// Two fingers on a touch pad come as a wheel, and in one browser as a gesture of its own.
addEventListener('wheel', event => event.ctrlKey && event.preventDefault(), { passive: false })
addEventListener('gesturestart', event => event.preventDefault())
// A link or a file that is dropped would open in the kiosk's place.
for (const drag of ['dragstart', 'dragover', 'drop']) {
  addEventListener(drag, event => event.preventDefault())
}
showPage(<Kiosk {...withMoreWords(catalogue, openers, words)} />)

import { default as catalogue, openers } from 'virtual:jarside/catalogue'
import { showPage } from '../../last-resort/show-page.tsx'
import { readOfficePack } from '../../office/read-office.ts'
import { speechIn } from '../../opening/speech.ts'
import type { Setting } from '../../parts/setting.tsx'
import { SOURCE_TAG } from '../../words/words.ts'
import '../../style/fonts.css'
import '../../style/base.css'
import '../../style/question.css'
import '../../style/walk.css'
import '../../style/choose.css'
import '../../style/page.css'
import '../../style/look-alikes.css'
import '../../style/outcome.css'
import '../../style/know-how.css'
import '../../style/preview.css'
import '../../style/sheet.css'
import './gallery.css'
import { Gallery } from './gallery.tsx'

/** An hour at which the office of the demo is open. */
const TODAY = new Date('2026-11-24T16:00:00Z')
const TREE = 'kombucha-jar'

async function settingOf(tree: string): Promise<Setting> {
  const opener = openers.trees[tree]
  if (opener === undefined) throw new Error(`there is no tree ${tree}`)
  const [bundle, drawn, office] = await Promise.all([
    opener.open(),
    opener.draw(),
    fetch('./office.json').then(answer => answer.json())
  ])
  const { texts, ...rest } = bundle.default
  return {
    ...rest,
    ...speechIn({ [SOURCE_TAG]: { ...catalogue.texts, ...texts } }, SOURCE_TAG),
    drawings: drawn.default,
    photoPage: './look-alikes.html',
    office: readOfficePack(office),
    today: TODAY
  }
}

const setting = await settingOf(TREE)
const show = () => showPage(<Gallery setting={setting} at={location.hash.replace(/^#\/?/, '')} />)
addEventListener('hashchange', show)
show()

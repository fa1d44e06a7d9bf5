import type { Texts } from '../opening/bundle.ts'
import { groupOf } from '../tree/group.ts'
import type { Tree } from '../tree/tree.ts'

/** Groups of the screens' words that other pages, and paper, ask for by themselves. */
const ELSEWHERE: ReadonlySet<string> = new Set([
  ...['workbench', 'reckon', 'photo', 'last-resort', 'know-how', 'contacts', 'practice'],
  'self-test',
  ...['kiosk', 'staff', 'plain', 'key', 'card', 'class', 'chart', 'decision-chart'],
  // It is put beside the texts when they are loaded.
  'in-english'
])

/** What the screens before a tree say. */
export function screenWords(trees: readonly Tree[], words: Texts): Texts {
  const titles = trees.map(({ id }) => {
    const { title, about } = groupOf(words[id])
    return [id, { title, about }] as const
  })
  const ui = Object.fromEntries(
    Object.entries(groupOf(words.ui)).filter(([group]) => !ELSEWHERE.has(group))
  )
  return { ui, ...Object.fromEntries(titles) }
}

/** What the workbench says beside the screens' own words: no caller waits for it. */
export function workbenchWords(words: Texts): Texts {
  const { workbench, reckon } = groupOf(words.ui)
  return { ui: { workbench, reckon } }
}

/** What the kiosk says beside the screens' own words: no other place waits for it. */
export function kioskWords(words: Texts): Texts {
  const { kiosk, staff } = groupOf(words.ui)
  return { ui: { kiosk, staff } }
}

/** What the page says on which a webmaster tries the embed. */
export function selfTestWords(words: Texts): Texts {
  const { 'self-test': own } = groupOf(words.ui)
  return { 'self-test': own }
}

/** What is said of the contact log, with the verdicts by name: the desk and the log alone ask for it. */
export function contactsWords(words: Texts): Texts {
  const { contacts } = groupOf(words.ui)
  const names = Object.entries(groupOf(words.verdicts)).map(
    ([id, texts]) => [id, { name: groupOf(texts).name }] as const
  )
  return { ui: { contacts }, verdicts: Object.fromEntries(names) }
}

/** What practice calls say beside the desk's words: what callers tell, and the verdicts by name. */
export function practiceWords(words: Texts): Texts {
  const { practice } = groupOf(words.ui)
  const { verdicts, ...named } = contactsWords(words)
  return {
    ...named,
    verdicts,
    ui: { practice },
    practice: words.practice,
    pictures: words.pictures
  }
}

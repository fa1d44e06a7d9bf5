/** What a text is for. All but a label are safety texts, and may never be missing. */
export type TextKind = 'action' | 'referral' | 'caution' | 'advice' | 'label'

/** Parts of a tree's own texts, and of the shared verdicts', by the first word of their key. */
const BY_FIRST_WORD: Readonly<Record<string, TextKind>> = {
  cautions: 'caution',
  use: 'advice',
  verdicts: 'advice',
  'rules-of-thumb': 'advice'
}

/** Words of the screens that carry caution: without them a screen would reassure, or send somebody back. */
const SCREEN_CAUTIONS = new Set([
  'draft',
  'draft-translation',
  'overdue',
  'education',
  'people-first',
  'from-memory',
  'hands-off',
  'outcome-from-address',
  'outcome-in-general',
  'outcome-other-edition',
  'withdrawn'
])

/** The kind of a text, decided by its key alone so that no file can forget to say it. */
export function kindOf(namespace: string, key: string): TextKind {
  const [first = '', ...rest] = key.split('.')
  switch (namespace) {
    case 'steps':
      return 'action'
    case 'notes':
      return 'advice'
    case 'observations':
    case 'pictures':
      return 'label'
    case 'verdicts':
      return rest.at(-1) === 'name' ? 'label' : 'advice'
    case 'look-alikes':
      return rest.at(-1) === 'sure' ? 'caution' : 'label'
    case 'follow-ups':
    case 'know-how':
      return rest.at(-1) === 'answer' ? 'action' : 'label'
    case 'ui':
      if (first === 'referral') return 'referral'
      return SCREEN_CAUTIONS.has(first) ||
        key === 'sheet.general' ||
        key.startsWith('look-alikes.never-')
        ? 'caution'
        : 'label'
    default:
      return BY_FIRST_WORD[first] ?? 'label'
  }
}

/** Whether a text tells somebody what to do or what to beware of. */
export const isSafetyText = (namespace: string, key: string): boolean =>
  kindOf(namespace, key) !== 'label'

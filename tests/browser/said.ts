import kombucha from '../../locales/en/kombucha-jar.json' with { type: 'json' }

/** What is said of a jar: the cards in order, and the use line. */
export interface Said {
  readonly first: string
  readonly also?: readonly string[]
  /** What may be drunk; null in an emergency, where nobody asks. */
  readonly use: keyof typeof kombucha.use | null
}

const drink = 'as-directed'
const wait = 'not-yet'
/** What must be said of each jar, written apart from the tree: the cards in order, and the use line. */
export const SAID: Readonly<Record<string, Said>> = {
  'new-film': { first: 'normal-growth', use: wait },
  'merging-islands': { first: 'normal-growth', use: drink },
  strands: { first: 'yeast-strands', use: drink },
  blisters: { first: 'normal-growth', use: drink },
  'white-fuzz': { first: 'likely-mold', use: 'never' },
  'green-fuzz': { first: 'likely-mold', use: 'never' },
  'wrinkled-film': { first: 'wait-and-recheck', use: wait },
  'pink-with-hibiscus': { first: 'normal-growth', use: drink },
  'pink-without': { first: 'discard-and-sanitize', use: 'never' },
  maggots: { first: 'discard-and-sanitize', use: 'never' },
  'day-nine-by-strip': { first: 'wait-and-recheck', use: wait },
  'somebody-ill': { first: 'doctor-today', also: ['likely-mold'], use: 'never' },
  emergency: { first: 'emergency', use: null },
  'burst-jar': { first: 'pressure-hazard', also: ['normal-growth'], use: 'never' },
  'lead-pot': { first: 'discard-and-sanitize', use: 'never' }
}

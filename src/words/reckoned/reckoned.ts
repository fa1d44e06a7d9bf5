import type { Span } from '../../science/span.ts'
import type { TextKey } from '../text-key.ts'
import type { TextValues } from '../words.ts'

/** One sentence about a result: its key under `ui:reckon`, and the numbers that stand in it. */
export interface ResultSentence {
  readonly key: TextKey
  readonly values?: TextValues
}

/** What a calculator came to, before it is worded. */
export interface Reckoned {
  /** Null where nothing published covers it, or it is refused. */
  readonly span: Span | null
  /** As written beside the numbers: `pH`, `bar`, `mL`, `%`. */
  readonly unit: string
  /** The sentence that decides first, then what belongs beside it. */
  readonly says: readonly ResultSentence[]
  readonly sources: readonly string[]
  /** Further numbers and answers, for programs. */
  readonly more: Readonly<Record<string, unknown>>
}

/** A number as it stands in a sentence: never more digits than it is good for. */
export const digits = (value: number, most: number): number => Number(value.toFixed(most))

/** Publications behind the calculators, as they are cited. */
export const SOURCES = {
  acidified: '21 CFR 114 (4.6, the line of acidified food)',
  finished:
    'Niagara Region Public Health, Kombucha Best Practices; Nummer 2013 (4.2, finished kombucha)',
  queensland: 'Queensland Government, Fermented foods (at most 4.6 within a day)',
  pKa: 'CRC values as in LibreTexts table E1; ECHA dossiers 14252 and 1957 (acid constants)',
  tea: 'Simpson, Shaw and Smith 2001; Lunkes and Hashizume 2014 (pH of tea); the buffer of sweet tea is an assumption',
  rates: 'Chen and Liu 2000; Sievers 1995; Chong 2024 (acid and gas made in a day)',
  weiss: 'Weiss 1974, Marine Chemistry 2:203 (carbon dioxide in water)',
  bottles: 'GB 4544 and makers’ statements (new bottles); a third of it is our judgement',
  ttb: 'TTB, Kombucha; 27 CFR 25.15 (0.5 % alcohol)',
  sugar: 'USDA sucrose table 135-A-50',
  rinse: '40 CFR 180.940 (200 ppm without a rinse)',
  usda: 'USDA Complete Guide to Home Canning (3 tablespoons to 5 pounds)',
  kraut: 'Oregon State University SP 50-745; Satora 2020 (salt in sauerkraut)',
  spoons: 'Weight of a spoon of salt: from memory, set wide',
  wilson: 'Newcombe 1998, Statistics in Medicine 17:857 (Wilson interval)',
  kappa: 'Fleiss, Cohen and Everitt 1969, Psychological Bulletin 72:323 (standard error of kappa)'
} as const

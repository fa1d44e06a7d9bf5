import type { Loaded } from '../load/load.ts'
import type { OfficePack } from '../office/office-pack.ts'
import type { Words } from '../words/words.ts'
import type { Paint } from './paint.ts'

/** What the texts are made with. */
export interface Making {
  readonly words: Words
  readonly paint: Paint
  readonly sources: Loaded['sources']
  readonly office: OfficePack | null
}

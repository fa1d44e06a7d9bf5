import type { Track } from '../../tree/observation.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Words } from '../../words/words.ts'
import { type TypeOf, textWidth, wrapText } from '../text-width.ts'

/** Something drawn, in points from the upper left of what it is part of. */
export type DrawnItem = {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
} & (
  | {
      readonly kind: 'text'
      readonly text: string
      readonly type: TypeOf
      readonly white: boolean
      /** Where it is in another language than its chart. */
      readonly lang?: string
    }
  /** The pattern of a verdict, or of a use. */
  | { readonly kind: 'swatch'; readonly of: string }
  | { readonly kind: 'rule' }
  | { readonly kind: 'bar' }
  /** What the number of a box stands on: its shape tells what is asked about. */
  | { readonly kind: 'tab'; readonly about: Track }
  | { readonly kind: 'tag'; readonly shape: 'on' | 'back' | 'end' }
)

/** A measured part of the chart. */
export interface DrawnPart {
  readonly width: number
  readonly height: number
  readonly items: readonly DrawnItem[]
}

/** What the parts of one chart share. */
export interface DecisionTerms {
  readonly tree: Tree
  readonly words: Words
  readonly remarks: readonly string[]
}

/** In points: nothing on the chart is smaller. */
export const SMALLEST = 9
export const TYPES = {
  ask: { size: 10, bold: true },
  label: { size: SMALLEST, bold: false },
  mark: { size: SMALLEST, bold: true },
  small: { size: SMALLEST, bold: false },
  number: { size: 11.5, bold: true }
} as const satisfies Readonly<Record<string, TypeOf>>

const LEADING = 1.14
export const lineHeight = ({ size }: TypeOf): number => size * LEADING

/** Set below one another. */
export class Column {
  readonly #items: DrawnItem[] = []
  readonly #tag: string
  y: number

  constructor(tag: string, y = 0) {
    this.#tag = tag
    this.y = y
  }

  /** A text in lines of at most a width; returns how wide they are. */
  text(text: string, x: number, width: number, type: TypeOf, white = false, lang?: string): number {
    const lines = wrapText(text, width, type, this.#tag)
    const widths = lines.map(line => textWidth(line, type, this.#tag))
    lines.forEach((line, index) => {
      this.add({
        kind: 'text',
        x,
        y: this.y,
        width: widths[index] ?? 0,
        ...boxed(line, type),
        white,
        ...(lang !== undefined && { lang })
      })
      this.y += lineHeight(type)
    })
    return Math.max(0, ...widths)
  }

  add(item: DrawnItem): void {
    this.#items.push(item)
  }

  part(width: number): DrawnPart {
    return { width, height: this.y, items: this.#items }
  }
}

export const boxed = (text: string, type: TypeOf) => ({ text, type, height: lineHeight(type) })

export const SWATCH = { width: 14, height: 9 }

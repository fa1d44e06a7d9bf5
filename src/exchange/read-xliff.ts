import { parseXml, XmlElement, XmlError, XmlText } from '@rgrove/parse-xml'
import { type ReturnedText, UnreadableExchange } from './exchange-text.ts'
import { NOTES, XLIFF } from './write-xliff.ts'

/**
 * The texts of an XLIFF 2 document, as whatever program left it: segments that it split are joined again,
 * and marks of its own in a text are read through. @throws UnreadableExchange
 */
export function readXliff(text: string, language: string): readonly ReturnedText[] {
  const root = rootOf(text)
  const { version = '', trgLang } = root.attributes
  if (root.name !== 'xliff' || root.attributes.xmlns !== XLIFF || !version.startsWith('2.')) {
    throw new UnreadableExchange('This is no XLIFF 2 file. Export it as XLIFF 2.0 or 2.1.')
  }
  if (trgLang !== language) {
    throw new UnreadableExchange(
      `This file is in \`${trgLang ?? 'no language'}\`. Import it as that language, not as \`${language}\`.`
    )
  }
  return childrenOf(root, 'file').flatMap(file =>
    unitsIn(file).map(unit => returnedOf(file.attributes.id ?? '', unit))
  )
}

function rootOf(text: string): XmlElement {
  try {
    const { root } = parseXml(text.replace(/^\uFEFF/, ''))
    if (root !== null) return root
  } catch (error) {
    if (!(error instanceof XmlError)) throw error
    throw new UnreadableExchange(
      `Line ${error.line}, column ${error.column}: this is no well-formed XML. Export the file again.`
    )
  }
  throw new UnreadableExchange('This file holds nothing. Export it again.')
}

const elementsIn = (parent: XmlElement): readonly XmlElement[] =>
  parent.children.filter(child => child instanceof XmlElement)
const childrenOf = (parent: XmlElement, name: string): readonly XmlElement[] =>
  elementsIn(parent).filter(child => child.name === name)

/** The units of a file, those in groups too. */
const unitsIn = (parent: XmlElement): readonly XmlElement[] =>
  elementsIn(parent).flatMap(child =>
    child.name === 'unit' ? [child] : child.name === 'group' ? unitsIn(child) : []
  )

function returnedOf(file: string, unit: XmlElement): ReturnedText {
  const id = `${file}:${unit.attributes.id ?? ''}`
  const data = new Map(
    childrenOf(unit, 'originalData')
      .flatMap(each => childrenOf(each, 'data'))
      .map(each => [each.attributes.id ?? '', saidIn(each, id, new Map())])
  )
  const pieces = elementsIn(unit).filter(({ name }) => name === 'segment' || name === 'ignorable')
  const sides = pieces.map((piece, index) => {
    const [source] = childrenOf(piece, 'source')
    const [target] = childrenOf(piece, 'target')
    const order = Number(target?.attributes.order ?? index + 1)
    return { piece, source, target, order }
  })
  const english = sides.map(({ source }) => (source ? saidIn(source, id, data) : '')).join('')
  const targets = [...sides].sort((a, b) => a.order - b.order)
  const open = sides.some(({ piece, target }) => piece.name === 'segment' && target === undefined)
  const target = targets
    .map(each => {
      // White space between two segments that the program did not copy stays as it was.
      const side = each.target ?? (each.piece.name === 'ignorable' ? each.source : undefined)
      return side ? saidIn(side, id, data) : ''
    })
    .join('')
  return {
    id,
    english,
    target: open || sides.length === 0 ? null : target,
    from: noteOf(unit, NOTES.from)
  }
}

const noteOf = (unit: XmlElement, category: string): string | null =>
  childrenOf(unit, 'notes')
    .flatMap(notes => childrenOf(notes, 'note'))
    .find(note => note.attributes.category === category)
    ?.text.trim() ?? null

/** Marks of the translator's program around or between words, which say nothing themselves. */
const SEEN_THROUGH = new Set(['pc', 'mrk'])
const SAYS_NOTHING = new Set(['sm', 'em', 'sc', 'ec'])

function saidIn(part: XmlElement, id: string, data: ReadonlyMap<string, string>): string {
  return part.children
    .map(child => {
      if (child instanceof XmlText) return child.text
      if (!(child instanceof XmlElement) || SAYS_NOTHING.has(child.name)) return ''
      if (SEEN_THROUGH.has(child.name)) return saidIn(child, id, data)
      const { hex = '', dataRef = '', equiv } = child.attributes
      if (child.name === 'cp' && /^[0-9A-Fa-f]{1,6}$/.test(hex) && Number(`0x${hex}`) <= 0x10ffff) {
        return String.fromCodePoint(Number(`0x${hex}`))
      }
      const text = child.name === 'ph' ? (data.get(dataRef) ?? equiv) : undefined
      if (text !== undefined) return text
      throw new UnreadableExchange(
        `\`${id}\` holds a \`<${child.name}>\` that stands for nothing here. Put back the one of the English.`
      )
    })
    .join('')
}

import { must } from '../tree/must.ts'
/** An element of XML: attributes that are undefined are left out. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | undefined>>,
  ...content: readonly string[]
): string {
  const given = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escaped(value as string)}"`)
    .join('')
  return content.length === 0
    ? `<${name}${given}/>`
    : `<${name}${given}>${content.join('')}</${name}>`
}

/** Text as it may stand in XML 1.0, which has no place for most control signs, not even escaped. */
export function escaped(text: string): string {
  return [...text]
    .filter(isCharacter)
    .join('')
    .replace(/[&<>"\t\n\r]/g, sign => `&#${sign.charCodeAt(0)};`)
}

/** The Char production of XML 1.0 (from memory). */
function isCharacter(sign: string): boolean {
  const code = must(sign.codePointAt(0), 'sign')
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd
  return code < 0xd800 || (code > 0xdfff && code !== 0xfffe && code !== 0xffff)
}

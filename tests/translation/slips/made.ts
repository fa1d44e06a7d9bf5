import type { TextPair } from '../../../src/translation/pair.ts'

/** What a hurried translator gets wrong. */
export const KINDS = [
  'number',
  'unit',
  'phone',
  'placeholder',
  'dropped-item',
  'untranslated',
  'negation',
  'danger-word',
  'register-term'
] as const
export type SlipKind = (typeof KINDS)[number]

/** A slip in one text: what stands there is said otherwise. */
export interface Slip extends TextPair {
  readonly kind: SlipKind
  readonly damaged: string
}

type Damage = (pair: TextPair) => readonly string[]

/** The text with each place of a pattern said otherwise, one at a time; as often as it changes anything. */
const each =
  (pattern: RegExp, instead: (found: string) => string): Damage =>
  ({ target }) =>
    [...target.matchAll(pattern)].flatMap(({ 0: found, index }) => {
      const said = instead(found)
      const damaged = target.slice(0, index) + said + target.slice(index + found.length)
      return damaged === target ? [] : [damaged]
    })

const word = (inside: string) => new RegExp(`(?<![\\p{L}\\d])(?:${inside})(?![\\p{L}])`, 'gu')
const swap = (from: string, to: string) => each(word(from), () => to)

const OTHER_DIGIT: Readonly<Record<string, string>> = { '1': '2', '9': '3' }
const otherDigit = (digits: string) =>
  digits.replace(/\d(?=\D*$)/, digit => OTHER_DIGIT[digit] ?? String((Number(digit) + 1) % 10))
const outsideGaps = '(?![^{}]*\\}\\})'

/** The items of a list between semicolons, or between commas where there are three and more. */
const withoutOneItem: Damage = ({ target }) => {
  const by = (mark: string) =>
    target.split(mark).length > 3
      ? [...target.matchAll(new RegExp(`${mark} [^,;.:()]+(?=${mark})`, 'g'))].map(
          ({ 0: found, index }) => target.slice(0, index) + target.slice(index + found.length)
        )
      : []
  return [...by(';'), ...by(',')]
}

const sentences = (text: string) => text.split(/(?<=[.!?])\s+(?=[\p{Lu}¿])/u)
const withoutOneSentence: Damage = ({ target }) => {
  const all = sentences(target)
  return all.length < 2 ? [] : all.map((_, at) => all.filter((_, other) => other !== at).join(' '))
}
const oneInEnglish: Damage = ({ english, target }) => {
  const ours = sentences(english)
  const theirs = sentences(target)
  if (ours.length !== theirs.length || ours.length < 2) return []
  return theirs.map((_, at) =>
    theirs.map((say, other) => (other === at ? ours[at] : say)).join(' ')
  )
}

/** Every way of going wrong that is made by a machine, by its kind. */
const DAMAGES: readonly (readonly [SlipKind, Damage])[] = [
  [
    'number',
    each(new RegExp(`(?<![\\d.,-])\\d+(?:[.,]\\d+)?(?![\\d-])${outsideGaps}`, 'g'), otherDigit)
  ],
  ['number', each(/[¼½¾⅓⅔]/g, found => (found === '½' ? '¼' : '½'))],
  ['number', swap('dos', 'tres')],
  ['number', swap('tres', 'dos')],
  ['unit', swap('cucharaditas', 'cucharadas')],
  ['unit', swap('tazas', 'cucharadas')],
  ['unit', each(/(?<=\d )mL/g, () => 'L')],
  ['unit', each(/(?<=\d )°F/g, () => '°C')],
  ['unit', each(/(?<=\d )días/g, () => 'horas')],
  ['unit', each(/(?<=\d )horas/g, () => 'minutos')],
  ['unit', each(/(?<=\d )semanas/g, () => 'días')],
  [
    'unit',
    each(/(?<=\d )(?:cm|kg|g)(?!\p{L})/gu, found =>
      found === 'cm' ? 'mm' : found === 'kg' ? 'g' : 'kg'
    )
  ],
  ['phone', each(/1-800-222-1222/g, () => '1-800-222-1212')],
  ['phone', each(/(?<!\d)911(?!\d)/g, () => '912')],
  ['placeholder', each(/\{\{\w+\}\}/g, () => '')],
  ['placeholder', each(/\{\{\w+\}\}/g, found => found.replace('}}', 's}}'))],
  ['placeholder', each(/\{\{\w+\}\}/g, found => found.slice(1))],
  ['dropped-item', withoutOneItem],
  ['dropped-item', withoutOneSentence],
  ['untranslated', oneInEnglish],
  ['negation', each(/(?<!\p{L})[Nn]o (?=\p{L})/gu, () => '')],
  ['negation', each(/(?<!\p{L})[Nn]unca (?=\p{L})/gu, () => '')],
  ['negation', each(/(?<!\p{L})[Ss]in (?=\p{L}+(?<![aei]r)(?!\p{L}))/gu, () => 'con ')],
  // "No coma y beba" is bad Spanish, and forbids no less.
  ['negation', each(/(?<!com\p{L}+ )(?<!\p{L})ni(?!\p{L})/gu, () => 'y')],
  ['negation', pair => (/\bonly\b/i.test(pair.english) ? swap('solo', 'también')(pair) : [])],
  ['negation', swap('nadie', 'alguien')],
  ['danger-word', swap('moho', 'levadura')],
  ['danger-word', swap('levadura', 'moho')],
  ['danger-word', swap('deseche', 'guarde')],
  ['danger-word', swap('Deseche', 'Guarde')],
  ['danger-word', swap('toxina', 'levadura')],
  ['danger-word', swap('estallar', 'enfriarse')],
  ['danger-word', swap('cloro \\(lejía\\)', 'vinagre')],
  ['danger-word', swap('vinagre', 'agua')],
  ['danger-word', swap('mayor riesgo', 'menor riesgo')],
  ['danger-word', swap('plomo', 'cobre')],
  ['danger-word', swap('médico', 'vecino')],
  ['danger-word', swap('párpados caídos', 'labios caídos')],
  ['danger-word', swap('pecho', 'pie')],
  ['register-term', swap('tanda', 'lote')],
  ['register-term', swap('la tanda', 'el tanda')],
  ['register-term', swap('el frasco', 'la frasco')],
  ['register-term', swap('gérmenes', 'microbios')],
  ['register-term', swap('inflada', 'abombada')],
  ['register-term', swap('cuarto', 'habitación')],
  ['register-term', each(/^Llame/g, () => 'Llama')],
  ['register-term', each(/^Deje/g, () => 'Deja')],
  ['register-term', each(/^Mire/g, () => 'Mira')],
  ['register-term', swap('su', 'tu')]
]

/** Every slip that is made in these texts, each text's own. */
export const slipsIn = (pairs: readonly TextPair[]): readonly Slip[] =>
  pairs.flatMap(pair =>
    DAMAGES.flatMap(([kind, damage]) =>
      damage(pair)
        .filter(damaged => damaged !== pair.target)
        .map(damaged => ({ ...pair, kind, damaged }))
    )
  )

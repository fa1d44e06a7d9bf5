import type { TextPair } from '../../../src/translation/pair.ts'

/** What a hurried translator gets wrong. */
export const KINDS = [
  'number',
  'unit',
  'bound',
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
/** Where words stand without spaces, a word begins and ends anywhere. */
const swapSigns = (from: string, to: string) => each(new RegExp(from, 'gu'), () => to)
/** "At least 4" as "at most 4". */
const otherSide = (least: string, most: string): readonly (readonly [SlipKind, Damage])[] => [
  ['bound', each(new RegExp(`${least}(?= (?:pH )?\\d)`, 'gu'), () => most)],
  ['bound', each(new RegExp(`${most}(?= (?:pH )?\\d)`, 'gu'), () => least)]
]

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

const sentences = (text: string) =>
  text.split(/(?<=[.!?؟])\s+(?=[\p{Lu}\p{Lo}¿])|(?<=[。！？])(?=\S)/u)
const joined = (all: readonly string[]) => all.join(/[。！？]$/.test(all[0] ?? '') ? '' : ' ')
const withoutOneSentence: Damage = ({ target }) => {
  const all = sentences(target)
  return all.length < 2 ? [] : all.map((_, at) => joined(all.filter((_, other) => other !== at)))
}
const oneInEnglish: Damage = ({ english, target }) => {
  const ours = sentences(english)
  const theirs = sentences(target)
  if (ours.length !== theirs.length || ours.length < 2) return []
  return theirs.map((_, at) =>
    joined(theirs.map((say, other) => (other === at ? (ours[at] ?? '') : say)))
  )
}

type Damages = readonly (readonly [SlipKind, Damage])[]

/** What goes wrong in every language: numbers, symbols of units, gaps, parts left out, parts in English. */
const EVERYWHERE: Damages = [
  [
    'number',
    each(new RegExp(`(?<![\\d.,-])\\d+(?:[.,]\\d+)?(?![\\d-])${outsideGaps}`, 'g'), otherDigit)
  ],
  ['number', each(/[¼½¾⅓⅔]/g, found => (found === '½' ? '¼' : '½'))],
  ['unit', each(/(?<=\d )mL/g, () => 'L')],
  ['unit', each(/(?<=\d )°F/g, () => '°C')],
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
  ['untranslated', oneInEnglish]
]

const IN_SPANISH: Damages = [
  ['number', swap('dos', 'tres')],
  ['number', swap('tres', 'dos')],
  ['unit', swap('cucharaditas', 'cucharadas')],
  ['unit', swap('tazas', 'cucharadas')],
  ['unit', each(/(?<=\d )días/g, () => 'horas')],
  ['unit', each(/(?<=\d )horas/g, () => 'minutos')],
  ['unit', each(/(?<=\d )semanas/g, () => 'días')],
  ...otherSide('al menos', 'como máximo'),
  ['bound', swap('o más', 'o menos')],
  ['bound', swap('o menos', 'o más')],
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

const IN_CHINESE: Damages = [
  ['unit', each(/(?<=\d ?)天/gu, () => '小时')],
  ['unit', each(/(?<=\d ?)(?:个)?小时/gu, () => '分钟')],
  ['unit', each(/(?<=\d ?)周/gu, () => '天')],
  ['unit', swapSigns('茶匙', '汤匙')],
  ['bound', each(/至少(?= ?\d)/gu, () => '最多')],
  ['bound', each(/(?<=\d ?(?:°F|天|周)?)以上/gu, () => '以下')],
  ['bound', each(/(?<=\d ?)或以下/gu, () => '或以上')],
  ['negation', swapSigns('不要', '要')],
  // 能不能 and 有没有 ask, and deny nothing.
  ['negation', swapSigns('(?<!能)不能', '能')],
  ['negation', swapSigns('(?<!有)没有', '有')],
  ['danger-word', swapSigns('霉菌', '酵母')],
  ['danger-word', swapSigns('扔掉', '保存')],
  ['danger-word', swapSigns('毒素', '酵母')],
  ['danger-word', swapSigns('爆裂', '变冷')],
  ['danger-word', swapSigns('漂白剂', '醋')],
  ['danger-word', swapSigns('铅', '铜')],
  ['danger-word', swapSigns('医生', '邻居')]
]

const IN_VIETNAMESE: Damages = [
  ['unit', each(/(?<=\d )ngày/gu, () => 'giờ')],
  ['unit', each(/(?<=\d )giờ/gu, () => 'phút')],
  ['unit', each(/(?<=\d )tuần/gu, () => 'ngày')],
  ['unit', swap('muỗng cà phê', 'muỗng canh')],
  ...otherSide('ít nhất', 'nhiều nhất'),
  ['bound', swap('trở xuống', 'trở lên')],
  ['bound', swap('trở lên', 'trở xuống')],
  ['negation', each(/(?<!\p{L})[Đđ]ừng /gu, () => '')],
  ['negation', each(/(?<!\p{L})[Kk]hông (?!khí|ai|có gì)/gu, () => '')],
  ['danger-word', swap('nấm mốc', 'men')],
  ['danger-word', swap('vứt bỏ', 'giữ lại')],
  ['danger-word', swap('độc tố', 'men')],
  ['danger-word', swap('vỡ tung', 'nguội đi')],
  ['danger-word', swap('thuốc tẩy', 'giấm')],
  ['danger-word', swap('chì', 'đồng')],
  ['danger-word', swap('bác sĩ', 'hàng xóm')]
]

const IN_ARABIC: Damages = [
  ['unit', each(/(?<=\d )(?:أيام|يومًا)/gu, () => 'ساعات')],
  ['unit', each(/(?<=\d )(?:ساعات|ساعة)/gu, () => 'دقائق')],
  ['unit', each(/(?<=\d )(?:أسابيع|أسبوعًا)/gu, () => 'أيام')],
  ['bound', swap('أو أقل', 'أو أكثر')],
  ['bound', swap('أو أكثر', 'أو أقل')],
  ['negation', each(/(?<!\p{L})لا (?=\p{L})/gu, () => '')],
  ['negation', each(/(?<!\p{L})ليس(?:ت)? (?=\p{L})/gu, () => '')],
  ['danger-word', swap('العفن', 'الخميرة')],
  ['danger-word', swap('عفن', 'خميرة')],
  ['danger-word', swap('تخلّص من', 'احتفظ بـ')],
  ['danger-word', swap('سموم', 'خميرة')],
  ['danger-word', swap('الرصاص', 'النحاس')],
  ['danger-word', swap('مبيّض الكلور', 'الخل')],
  ['danger-word', swap('الطبيب|طبيب|بطبيب', 'جار')]
]

const BY_LANGUAGE: Readonly<Record<string, Damages>> = {
  es: IN_SPANISH,
  zh: IN_CHINESE,
  vi: IN_VIETNAMESE,
  ar: IN_ARABIC
}

/** Every slip that is made in these texts of a language, each text's own. */
export const slipsIn = (pairs: readonly TextPair[], tag: string): readonly Slip[] =>
  pairs.flatMap(pair =>
    [...EVERYWHERE, ...(BY_LANGUAGE[tag] ?? [])].flatMap(([kind, damage]) =>
      damage(pair)
        .filter(damaged => damaged !== pair.target)
        .map(damaged => ({ ...pair, kind, damaged }))
    )
  )

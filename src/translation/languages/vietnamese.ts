import type { LanguageFacts } from '../language.ts'

/** Vietnamese. `năm` is five and a year, so that its numbers in words are not compared. */
export const VIETNAMESE: LanguageFacts = {
  tag: 'vi',
  spaced: true,
  lengths: [0.5, 2.1],
  numbers: {},
  // The first number of "75 đến 85 °F" has the unit of the second.
  beforeUnits: 'đến [\\d.,]+|giờ|nguyên|đầy',
  units: {
    teaspoon: 'muỗng cà phê|thìa cà phê',
    // A bare spoon, unless it is a teaspoon.
    tablespoon: '(?:muỗng|thìa) canh|(?:muỗng|thìa)(?! cà phê)',
    // Not the grain of `ngũ cốc` and not the dishes of `rửa chén`; `ly` is a drinking glass.
    cup: '(?<!ngũ )cốc|(?<!rửa )chén',
    'fluid ounce': 'ounce chất lỏng|oz chất lỏng|fl oz',
    ounce: 'ounce|oz',
    pint: 'pint',
    quart: 'quart',
    gallon: 'gallon(?: mỹ)?',
    pound: 'pound|cân anh',
    inch: 'inch',
    foot: 'feet|foot|bộ',
    mL: 'ml|mililít',
    L: 'l|lít',
    mm: 'mm',
    cm: 'cm',
    kg: 'kg',
    mg: 'mg',
    g: 'g|gam|gram',
    '°F': '°f',
    '°C': '°c',
    '%': '%|phần trăm|đến [\\d.,]+%',
    ppm: 'ppm',
    bar: 'bar',
    psi: 'psi',
    'g/L': 'g/l',
    second: 'giây',
    minute: 'phút',
    hour: 'giờ|tiếng',
    day: 'ngày',
    week: 'tuần',
    month: 'tháng',
    year: 'năm|tuổi'
  },
  bounds: {
    orMore: 'trở lên|trở đi|hoặc (?:hơn|nhiều hơn|cao hơn|lâu hơn|nóng hơn|ấm hơn)',
    orLess: 'trở xuống|hoặc (?:ít hơn|thấp hơn|ngắn hơn|lạnh hơn|mát hơn)',
    over: '(?:ít nhất|tối thiểu|(?<!không )hơn|trên|(?<!không )quá) (?=(?:ph )?\\d)',
    under: '(?:nhiều nhất|tối đa|không quá|không hơn|ít hơn|dưới|thấp hơn) (?=(?:ph )?\\d)'
  },
  denials: 'none-lost',
  negations: /(?<!\p{L})(?:không|chưa|đừng|chớ|chẳng|không ai|không bao giờ)(?!\p{L})/giu,
  chained: /(?!)/giu,
  lacking: /(?!)/giu,
  stray: /(?!)/giu,
  // Air; the last word of a question, asked or told; words in which `không` is a part: wrong, ill, fine, cheap, else.
  saidOnce:
    /(?<!\p{L})(?:không (?:khí|ổn|khỏe|sao|tốn|đắt)|nếu không(?=[,:])|(?:hay|hoặc|lúc) (?:không|chưa))(?!\p{L})|(?<=\p{L} )(?<!(?<!\p{L})(?:thì|là|cũng|và) )(?:không|chưa)(?=[?.,:;]|$)/giu,
  // With `không khỏe` for "ill" and the like, which may also stand for "not well".
  softNegations:
    /(?<!\p{L})(?:trừ khi|cho đến khi|chỉ|mới|tránh|thiếu|ngoại trừ|thay vì|khỏi|ngoài|ngăn|không (?:ổn|khỏe|sao)|nếu không(?=[,:])|hoặc không|hay chưa)(?!\p{L})/giu,
  softLacking: /(?!)/giu,
  clauses:
    /[,;:—()]|(?<!\p{L})(?:và|nhưng|vì|nên|nếu|khi|trong khi|cho đến khi|trừ khi|mà|thì|rồi|để|hoặc)(?!\p{L})/iu,
  // "Or more" of an English limit is one word here, and counts as the "or" that it stands for.
  joins: /,?\s(?:và|hoặc|hay|cũng không|rồi|cả|chứ|trở (?:lên|xuống|đi))(?!\p{L})|[,;]/giu,
  givesAway: new Set()
}

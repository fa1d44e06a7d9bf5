import type { LanguageFacts } from '../language.ts'

/** "The", "and", "for" and the like are written as one word with their noun: `لل` is "for the". */
const withNoun = (nouns: string): string => `(?:[وف]?(?:[بك]?(?:ال)?|لل?))(?:${nouns})`

/** A number before the last one of a range or of a sum, whose unit is that of the last: "2 إلى 3", "1 و½". */
const UP_TO = '(?:إلى|أو|و) \\d+(?:[.,⁄]\\d+)*'

/**
 * Modern Standard Arabic. It says two of a thing by the ending of its noun, so that numbers in words are not
 * compared. Units stand in the texts with their Latin signs; of the Arabic ones those are not listed that are
 * words themselves: `سم` is also "poison", `غ` a letter with which words begin.
 */
export const ARABIC: LanguageFacts = {
  tag: 'ar',
  spaced: true,
  // It writes short vowels as no letters, and "it is" not at all.
  lengths: [0.47, 1.9],
  numbers: {},
  beforeUnits: `من|أخرى|كاملة?|${UP_TO}`,
  units: {
    teaspoon: withNoun(
      '(?:ملعقة|ملاعق) (?:شاي|صغيرة)|ملعقت(?:ا|ي) شاي|ملعقت(?:ان|ين) صغيرت(?:ان|ين)'
    ),
    // "Spoon" without its size is this one, as in English; "his spoons" are spoons as well.
    tablespoon: withNoun(
      '(?:ملعقة|ملاعق|ملاعقه)(?! (?:شاي|صغيرة))(?: (?:طعام|كبيرة))?|ملعقت(?:ا|ي) طعام|ملعقت(?:ان|ين) كبيرت(?:ان|ين)'
    ),
    cup: withNoun('كوبًا|كوبا|كوب|أكواب|كوبين|كوبان'),
    'fluid ounce': withNoun('(?:أونصات|أونصة) سائلة'),
    ounce: withNoun('(?:أونصات|أونصة|أوقية|أوقيات)(?! سائلة)'),
    pint: withNoun('باينت|باينتات'),
    quart: withNoun('كوارت|كوارتات|ربع جالون|ربع غالون'),
    gallon: withNoun('[جغ]الون(?:ات|ًا|ا)?(?: أمريكي(?:ة)?)?'),
    pound: withNoun('(?:رطل|أرطال|باوند|رطلًا)(?! لكل بوصة)'),
    inch: withNoun('بوصة|بوصات|إنش'),
    foot: 'قدم|أقدام|قدمًا',
    mL: 'ml|ملليلتر|مليلتر|ملليلترات|مليلترًا',
    L: withNoun('l|لتر|لترات|لترًا|ليتر'),
    mm: 'mm|ملم|مليمتر|ملليمتر',
    cm: 'cm|سنتيمتر|سنتيمترات|سنتيمترًا',
    kg: 'kg|كغ|كجم|كيلوغرام',
    mg: 'mg|ملغ|ملليغرام|مليغرام',
    g: withNoun('g|غرام|غرامات|غرامًا|جرام|جرامات|جرامًا'),
    '°F': '°f|°ف|درجة فهرنهايت|فهرنهايت',
    '°C': '°c|°م|درجة مئوية|مئوية',
    // The sign stands close to its number, so that a range before it is told of here.
    '%': '(?:(?:إلى|أو) \\d+(?:[.,]\\d+)? ?)?%|٪|بالمئة|في المئة|بالمائة|في المائة|(?:ب?ال)?نسبة المئوية',
    ppm: 'ppm|جزءًا في المليون|جزء في المليون|أجزاء في المليون',
    bar: 'bar|بار',
    psi: 'psi|رطل لكل بوصة مربعة',
    'g/L': 'g/l|غ/ل|غرام/لتر|غرامات لكل لتر|غرامًا لكل لتر',
    second: 'ثانية|ثوان|ثواني|ثوانٍ',
    minute: 'دقيقة|دقائق|دقيقتين',
    hour: 'ساعة|ساعات|ساعتين',
    day: 'يوم|يومًا|يوما|أيام|يومين',
    week: 'أسبوع|أسبوعًا|أسبوعا|أسابيع|أسبوعين',
    month: 'شهر|شهرًا|شهرا|أشهر|شهور|شهرين',
    year: 'سنة|سنوات|سنتين|عامًا|عام|أعوام'
  },
  bounds: {
    orMore: 'أو (?:أكثر|أعلى|فوق|أطول|أسخن|أدفأ)|فأكثر|فما فوق',
    orLess: 'أو (?:أقل|أدنى|دون|أبرد|أقصر)|فأقل|فما دون',
    over: '(?:على الأقل|ما لا يقل عن|لا تقل عن|(?<!لا )أكثر من|أعلى من|فوق|يزيد على|تزيد على) (?=(?:ph )?\\d)',
    under:
      '(?:على الأكثر|لا أكثر من|لا يزيد على|لا تزيد على|لا يتجاوز|لا تتجاوز|أقل من|أدنى من|دون|تحت|حتى) (?=(?:ph )?\\d)'
  },
  denials: 'counted',
  negations:
    /(?<!\p{L})(?:[وف]?(?:لم|لن|أ?ليس|أ?ليست|ليسا|ليستا|ليسوا|لست|ألا|لئلا|إياك|ممنوع)|ف?لا|[وف]?[بل]?عدم|[وي]?ت?تعذر\p{L}*)(?!\p{L})/gu,
  // "And not", as "nor".
  chained: /(?<!\p{L})ولا(?!\p{L})/gu,
  // `دون` before a number is "under"; `غير` is also "other than", and "not" where an adjective follows that
  // English has a word of its own for: "dull" is `غير لامع`.
  lacking:
    /(?<!\p{L})(?:[وفب]?(?:ال)?غير(?! (?:(?:ال)?لامع|طبيعي|ذلك|رائحة|ما |ارتفاع|لون|الألوان|اللون|الجواب|الكومبوتشا))|و?بلا|و?(?:من |ب)دون(?:ه|ها|هما|هم)?|(?<!فما |ما )دون(?! (?:\d|ذلك)))(?!\p{L})/gu,
  // "Except" and "let nobody": without the "not" before them they say the contrary.
  stray:
    /(?<!(?<!\p{L})(?:[وف]?لا|[وف]?ألا|[وف]?لم|[وف]?لن|[وف]?ليس\p{L}*|وما|ما)(?:\s[^.؛:]*)?)(?<=\s)(?:إلا(?! إذا)|سوى)(?!\p{L})|(?<!لا )تدع أحدًا/gu,
  // "No harm in it" is "fine", "not cease" is "still", "not … except" is "only", "let nobody in" is "keep out".
  saidOnce:
    /(?<!\p{L})(?:[وف]?لا (?:بأس|[تي]زال|زال\p{L}*|تدع أحدًا)(?!\p{L})|(?:ما )?لا (?:يقل|تقل|يزيد|تزيد|يتجاوز|تتجاوز) (?:عن|على)(?!\p{L})|[وف]?(?:لا|ألا|لم|لن) (?=[^.؛:،]{1,60}(?:إلا(?! إذا)|سوى)(?!\p{L})))/gu,
  softNegations:
    /(?<!\p{L})[وف]?(?:إلا|إلّا|ما لم|حتى|فقط|سوى|تجنب|تجنّب|بدلًا|بدل|خارج|امتنع|يمنع|تمنع|يخلو|خالٍ|خالية|الخالي|الخالية|منع|رفض|غياب|الشك|شككت)(?!\p{L})/gu,
  softLacking: /(?!)/gu,
  clauses:
    /[،؛:—().]|\s(?=[وف]?(?:لم|لن|ليس\p{L}*)(?!\p{L}))|(?<!\p{L})(?:لكن|ولكن|لأن|لأنه|لأنها|إذا|وإذا|فإذا|حتى|بينما|ما لم|إن|ثم|كي|لكي|حين|عندما|التي|الذي|الذين|أن|أنه|أنها|بل)(?!\p{L})/u,
  // Besides: "view from the side, close up:" opens what a picture shows, where English goes on with a comma.
  joins:
    /،|؛|(?<=\s)(?:أو|أم|ثم|و(?=\p{L}\p{M}*\p{L}|\d))|(?<=^منظر [^:]{3,40}):|(?<=^منظر من الجانب)\s(?=عن قرب)/gu,
  givesAway: new Set()
}

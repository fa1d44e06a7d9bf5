import type { LanguageFacts } from '../language.ts'

/** English as the source of translations. */
export const ENGLISH: LanguageFacts = {
  tag: 'en',
  spaced: true,
  lengths: [1, 1],
  numbers: {
    two: '2',
    twice: '2',
    both: '2',
    double: '2',
    three: '3',
    four: '4',
    five: '5',
    six: '6',
    seven: '7',
    eight: '8',
    nine: '9',
    ten: '10',
    eleven: '11',
    twelve: '12',
    fifteen: '15',
    twenty: '20',
    thirty: '30',
    half: '1/2',
    third: '3rd',
    thousand: '1000'
  },
  beforeUnits: 'more|full|whole',
  units: {
    teaspoon: 'teaspoons?',
    tablespoon: 'tablespoons?|spoons?|spoonfuls?',
    cup: 'cups?',
    ounce: 'ounces?',
    'fluid ounce': 'fluid ounces?|fl oz',
    pint: 'pints?',
    quart: 'quarts?',
    gallon: '(?:us )?gallons?',
    pound: 'pounds?',
    inch: 'inch(?:es)?',
    foot: 'f(?:ee|oo)t',
    mL: 'ml',
    L: 'l|liters?',
    mm: 'mm',
    cm: 'cm',
    kg: 'kg',
    mg: 'mg',
    g: 'g|grams?',
    '°F': '°f',
    '°C': '°c',
    '%': '%|percent',
    ppm: 'ppm',
    bar: 'bar',
    psi: 'psi',
    'g/L': 'g/l',
    second: 'seconds',
    minute: 'minutes?',
    hour: 'hours?',
    day: 'days?',
    week: 'weeks?',
    month: 'months?',
    year: 'years?'
  },
  bounds: {
    orMore: 'or (?:more|higher|above|over|warmer|hotter|longer|older|later)',
    orLess: 'or (?:less|lower|below|under|fewer|colder|cooler|younger|earlier)',
    over: '(?:at least|(?<!no )more than|over|above) (?=(?:ph )?\\d)',
    under: '(?:at most|no more than|less than|fewer than|under|below|up to) (?=(?:ph )?\\d)'
  },
  denials: 'counted',
  negations: /\b(?:no|not|none|never|nobody|nothing|nowhere|neither|cannot)\b|n[’']t\b/giu,
  chained: /\bnor\b/giu,
  lacking: /\bwithout\b/giu,
  stray: /(?!)/giu,
  saidOnce: /(?!)/giu,
  softNegations:
    /\b(?:keep\w* \w+ from|otherwise|unless|until|leaves? \w+ out|lack\w*|fail\w*|rule[sd]? out|shuts? out|avoid\w*|only|hardly|rather|instead|spoil\w*|doubt|unclear)\b/giu,
  softLacking:
    /\b(?:un[a-z]{4,}|sound|taken out|airtight|warm\w*|cut|off|flat|still|plain|empty|loose\w*|room|counter|raw|green|out)\b|less\b/giu,
  clauses:
    /[,;:—()]|\b(?:and|but|so|because|unless|until|if|when|while|even|that|which|who|then)\b/iu,
  joins: /,?\s(?:and|or|nor)\b|[,;]/giu,
  givesAway: new Set(
    `the and of to with is are it this that these those for from not do does you your or if when then than
    at by on out will can may has have was were be been any all more less into over under its they them their
    there which what who how only still each every both after before while until unless would could should
    keep throw call drink eat away cold warm jar lid bottle batch clean never
    again first next look looks one two three hours days weeks which had because about`.split(/\s+/)
  )
}

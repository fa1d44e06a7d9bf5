import type { LanguageFacts } from '../language.ts'

/** Simplified Chinese. Its words stand without spaces, so that a form may begin and end inside a row of letters. */
export const CHINESE: LanguageFacts = {
  tag: 'zh',
  spaced: false,
  lengths: [0.15, 0.95],
  numbers: {},
  beforeUnits: '多|整|个',
  units: {
    teaspoon: '茶匙',
    tablespoon: '汤匙|大匙|勺子|勺',
    // A drinking glass is 玻璃杯 and no measure.
    cup: '(?<!玻璃)杯',
    'fluid ounce': '液量盎司|液盎司',
    ounce: '盎司',
    pint: '品脱',
    quart: '夸脱',
    gallon: '(?:美制)?加仑',
    pound: '磅',
    inch: '英寸',
    // “pH 计” is mostly a plain “meter” in English: like the feet of a body, it is not compared as a measure.
    foot: '英尺|ph 计(?!，已|：没)',
    mL: 'ml|毫升',
    // 升 is also "to rise": 升高, 升起, 上升.
    L: 'l(?![a-z])|(?<![上回爬])升(?![高起上到温])',
    mm: 'mm|毫米',
    cm: 'cm|厘米',
    kg: 'kg|千克|公斤',
    mg: 'mg|毫克',
    g: 'g(?![a-z/])|(?<![千公毫])克(?![力罗])',
    '°F': '°f',
    '°C': '°c',
    '%': '%|百分之几|百分比',
    ppm: 'ppm',
    bar: 'bar|巴(?!氏)',
    psi: 'psi',
    'g/L': 'g/l|克/升',
    second: '秒',
    minute: '分钟',
    hour: '(?:个)?小时',
    day: '天|日',
    week: '周|星期|个星期',
    month: '个月|月',
    year: '年|岁'
  },
  bounds: {
    orMore: '或(?:更多|更高|以上|更久|更长|更暖|更热|更晚|更老)|及以上',
    orLess: '或(?:更少|更低|以下|更短|更凉|更冷|更早|更小)|及以下',
    over: '(?:至少|(?<!不)超过|高于|多于|(?<!不)大于)(?= ?(?:ph ?值? ?)?\\d)',
    under: '(?:最多|至多|不超过|少于|低于|不到|不足|小于)(?= ?(?:ph ?值? ?)?\\d)'
  },
  denials: 'none-lost',
  negations: /不|没(?!收)|未(?!来)|无|勿|切忌|非|(?<![特分区类个级识性告差])别(?![的人处名种])/gu,
  chained: /(?!)/gu,
  lacking: /(?!)/gu,
  stray: /(?!)/gu,
  // Questions of the kind "is or not", words in which 不, 没 or 无 denies nothing, "too … to", and what English
  // says with "leave it": the glossary holds that one.
  saidOnce:
    /(\p{Script=Han})不\1|有没有|不得不|并非没有|无不|不[同锈断停时久仅只止光单少足够变贵管论良]|不舒服|不适(?![合用])|不一样|不对劲?|不到(?= ?\d)|(?<!看)不见了|[含模]糊不清|神志不清|差不多|花不了|无[论力关菌]|没问题|没事|没过(?![期滤])|非[常食]|太[^。；]{1,14}，[^，。；]{0,4}(?:无法|不能)|不要(?:再)?(?:打开|碰|动)/gu,
  softNegations: /除非|避免|以免|禁止|否|不够|有没有|不要(?:再)?(?:打开|碰|动)/gu,
  softLacking: /(?!)/gu,
  clauses: /[，；：、—()。]|但|而(?!且)|因为|如果|除非|直到|否则|就|并且|所以/u,
  joins: /[、，；：]|和|或|与|及|并|而|又|且|同(?![时样一类种])/gu,
  givesAway: new Set()
}

import type { LanguageFacts } from '../language.ts'

/** Spanish as it is written for readers in the United States. */
export const SPANISH: LanguageFacts = {
  tag: 'es',
  numbers: {
    dos: '2',
    ambos: '2',
    ambas: '2',
    tres: '3',
    cuatro: '4',
    cinco: '5',
    seis: '6',
    siete: '7',
    ocho: '8',
    nueve: '9',
    diez: '10',
    once: '11',
    doce: '12',
    quince: '15',
    veinte: '20',
    treinta: '30',
    media: '1/2',
    doble: '2',
    mitad: '1/2',
    tercera: '3rd',
    tercer: '3rd',
    tercero: '3rd',
    mil: '1000'
  },
  beforeUnits: 'de|más|otros|otras',
  units: {
    teaspoon: 'cucharaditas?',
    tablespoon: 'cucharadas?|cucharas?',
    cup: 'tazas?',
    'fluid ounce': 'onzas? líquidas?',
    ounce: 'onzas?',
    pint: 'pintas?',
    quart: 'cuartos? de galón',
    gallon: 'gal[oó]n(?:es)?',
    pound: 'libras?',
    inch: 'pulgadas?',
    foot: 'pies?',
    mL: 'ml',
    L: 'l|litros?',
    mm: 'mm',
    cm: 'cm',
    kg: 'kg',
    mg: 'mg',
    g: 'g|gramos?',
    '°F': '°f',
    '°C': '°c',
    '%': '%|por ciento|porcentaje',
    ppm: 'ppm',
    bar: 'bar',
    psi: 'psi',
    'g/L': 'g/l|gramos por litro',
    second: 'segundos',
    minute: 'minutos?',
    hour: 'horas?',
    day: 'días?',
    week: 'semanas?',
    month: 'mes(?:es)?',
    year: 'años?'
  },
  bounds: {
    orMore: 'o (?:más|mayor(?:es)?)',
    orLess: 'o (?:menos|menor(?:es)?)',
    over: '(?:al menos|por lo menos|(?<!no )más de|por encima de|arriba de) (?=(?:ph )?d)',
    under: '(?:como máximo|no más de|menos de|menores de|por debajo de|hasta|bajo) (?=(?:ph )?d)'
  },
  // "Nobody" before a verb denies alone; "nothing" and "none" do so only where they begin a clause.
  negations:
    /(?<!\p{L})(?:no|nunca|jamás|tampoco|evite[nl]?|(?<!(?<!\p{L})a )nadie)(?!\p{L})|^\P{L}*(?:(?:si|todavía|que|con|por|de|y|o|en|como|para|desde|casi|aunque|más|ya|cuando|a|hay|así)\s+)*(?:nada|ning(?:ún|un[oa]s?))(?!\p{L})/giu,
  chained: /(?<!\p{L})ni(?!\p{L})/giu,
  lacking: /(?<!\p{L})sin(?!\p{L})/giu,
  stray:
    /^(?!\P{L}*(?:\p{L}+\s+){0,2}ni(?!\p{L}))(?:(?!(?<!\p{L})(?:no|nunca|jamás|tampoco|sin|evit\p{L}+|ni|nadie|nada|ning\p{L}+)(?!\p{L})).)+(?<!\p{L})(?:ni|a nadie)(?!\p{L})/giu,
  saidOnce: /(?<=(?<!\p{L})com(?:a|an|e|en|er|erla|erlo|ió) )ni(?= beb)/giu,
  softNegations:
    /(?<!\p{L})(?:falt\p{L}*|desconoc\p{L}*|descart\p{L}*|impid\p{L}*|opac\p{L}+|salvo|excepto|apenas)(?!\p{L})/giu,
  softLacking: /(?!)/giu,
  clauses:
    /[,;:—()]|(?<!\p{L})(?:y|e|pero|así que|porque|aunque|si|cuando|mientras|hasta|que|quien|luego|entonces)(?!\p{L})/iu,
  joins: /,?\s(?:y|e|o|u|ni)(?!\p{L})|[,;]/giu,
  givesAway: new Set()
}

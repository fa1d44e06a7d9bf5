import type { Grammar } from './grammar.ts'

/** What people say before they come to it. */
const BEFORE =
  '^(?:(?:y|pero|o|oiga|oye|entonces|bueno|ay|disculpe|pues|mi pregunta es|es que|a ver|tambien|ahora|hola) )*'

/** The small words of Spanish, as tokens have them: without accents. */
export const ES: Grammar = {
  dropped: 'el la los las un una unos unas es esta estan son era eran fue',
  negators: 'no sin nunca jamas ningun ninguna ninguno tampoco ni nada nadie',
  doubts: [
    ...['no se', 'no estoy seguro', 'no estoy segura', 'no seguro', 'no segura'],
    ...['no puedo decir'],
    ...['ni idea', 'no tengo idea', 'dificil decir', 'no medi', 'no sabe', 'no sabemos'],
    ...['no lo se', 'no sabria', 'no recuerdo']
  ],
  hedges: ['quiza', 'tal vez', 'talvez', 'lo mejor', 'puede que', 'puede ser'],
  seen: 've ven nota notan huele siente mira aprecia observa vio',
  bridges: '',
  bridgesAfterNo: `hay ve ven veo vi tiene tienen tengo he ha visto noto nota huele olor rastro senal
    de a se algun alguna como`,
  light: `hay tiene tienen tengo veo ve ven se lo le que de del en con a al mi su muy poco algo como
    parece ya todavia aun ahora hoy aqui esto eso y o tambien pues sale yo
    me nos hola dice encima arriba lleva hace por adentro bien nomas ahi salio salieron use usamos puse pusimos
    le unas ha han estado cada quiere tomar comer beber`,
  besideReadings: `hace desde lleva llevo llevamos van va lectura medido medi midio fermentando
    temperatura por`,
  begun: 'empece empezamos comence comenzamos prepare preparamos',
  saying: 'marca marco dio da dice sale salio',
  correcting: 'no perdon digo espera espere corrijo mejor dicho',
  corrections: [
    ...['ay', 'perd[oó]n', 'digo', 'no,? digo', 'esper[ae]', 'no,? esper[ae]', 'no,? perd[oó]n'],
    ...['mejor dicho', 'corrijo', 'quise decir', 'me equivoqu[eé]', 'en realidad', 'm[aá]s bien']
  ],
  // "No era moho" says what it was not: only with a comma, which cuts the line, does a "no" correct here.
  refusals: ['nadie', 'ninguno', 'ninguna', 'es que'],
  pleas: [
    `${BEFORE}(?:(?:me |la |lo |las |los |le |nos |se )*(?:puedo|podemos|podria|podriamos|podre|debo|debemos|deberia|deberiamos)|(?:tengo|tenemos|hay) que|(?:la|lo|las|los) (?:tiro|boto|echo|guardo|lavo|limpio|dejo|uso)|tiro (?:todo|la|el))\\b`,
    `${BEFORE}(?:se la|se lo|se las|se los|la|lo|las|los)? ?(?:puede|pueden|podra|podran|podria) (?:usar|comer|tomar|beber|dar|hacer|guardar|salvar|lavar|quitar|servir|poner|seguir)`,
    `${BEFORE}(?:se puede|se pueden|se podra|se podria)\\b`,
    `${BEFORE}(?:sirve|sirven|servira|sera|seran|estara|estaran) `,
    `${BEFORE}(?:es|esta|estan|son) (?:todavia |aun )?(?:malo|mala|malos|malas|peligroso|peligrosa|seguro|segura|normal|bueno|buena|buenos|buenas|grave|toxico|toxica|comestible|bien(?=$| (?:si|que|para|asi|tomar|comer|usar)))(?: |$)`,
    `${BEFORE}(?:cuanto|cuanta|cuantos|cuantas|por que|cual|cuales)\\b`,
    `${BEFORE}(?:cuando|donde|quien) (?:puedo|podemos|debo|esta|estara|se|le|la|lo)\\b`,
    `${BEFORE}como (?:le|la|lo|se|puedo|hago|hacemos|debo|lavo|limpio)\\b`,
    `${BEFORE}como [a-z]{2,}(?:o|amos|emos|imos)\\b`,
    `${BEFORE}que (?:hago|hacemos|pasa|paso|debo|puedo|significa|le|sera|es|son|tan)\\b`,
    '\\b(?:quiero|quisiera|queria|quieren) (?:saber|preguntar)\\b',
    '\\b(?:me pregunto|no se si puedo|cree que|creen que)\\b'
  ],
  looks: [`${BEFORE}(?:es|son|hay|tiene|esta) [a-z ]+\\?$`],
  runOn: [
    '(?<!\\b(?:no|la|lo|las|los|me|se|le|nos|que)\\s+)(?:la |lo |me la |me lo )?(?:puedo|podemos|debo)',
    '(?<!\\b(?:que|no)\\s+)se puede (?:comer|tomar|beber|usar|salvar|hacer)',
    '(?<!\\b(?:no|se)\\s+)(?:esta buen[ao]|es normal|es malo)'
  ],
  turnedOut: 'solo puro pura nomas realmente',
  bodily: [
    ...['respirar', 'respira', 'tragar', 'traga', 'ver', 've', 'hablar', 'habla', 'pararse'],
    ...['parar', 'pie', 'retiene', 'retener', 'caminar', 'camina']
  ],
  impersonal: 'se',
  persons: 'yo ella nosotros ellos usted',
  kin: `mama madre papa padre abuela abuelo abuelita abuelito hijo hija esposo esposa marido bebe nino
    nina nieto nieta hermano hermana tia tio prima primo sobrina sobrino suegra suegro comadre compadre
    vecina vecino amiga amigo senora senor`,
  owners: 'yo nosotros usted',
  has: 'tiene tienen tengo cumplio cumple',
  carrying: 'embarazada embarazo gestacion',
  ages: 'ano edad anito',
  from: 'mayor',
  below: 'menor',
  senses: 'huele olor sabe sabor',
  shakers: `antes podria otro otra vecina vecino amiga amigo creo pienso miedo temo preocupa preocupada
    preocupado excepto salvo casi cerca junto pasado pasada quisiera evitar cuando dejo menos libre
    siempre si`,
  shakerRuns: ['ya no', 'ultima vez', 'ultima tanda', 'ultimo frasco', 'ano pasado', 'vez pasada'],
  and: 'y e',
  or: 'o u ni',
  but: 'pero sino',
  self: 'yo',
  pets: 'perro perra perrito gato gata gatito gallina pollo cabra puerco caballo loro pajaro',
  cold: 'refri refrigerador nevera congelador frio fria',
  kitchen: 'cucharada cucharadita cuchara taza onza libra gramo pizca puno',
  excepting: 'excepto salvo menos',
  besideWell: 'gracias aqui todavia hasta ahora por y si',
  noLonger: 'era eran fue',
  unsearched: 'que cual donde cuando quien por sobre hasta para desde durante tambien',
  places: 'en dentro sobre cerca bajo del de',
  numbers: `cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince
    dieciseis diecisiete dieciocho diecinueve veinte veintiuno veintidos veintitres veinticuatro
    veinticinco veintiseis veintisiete veintiocho veintinueve treinta treintaiuno`
}

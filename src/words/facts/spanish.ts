import type { Grammar } from './grammar.ts'

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
    me nos hola dice encima arriba lleva hace por`,
  besideReadings: `hace desde lleva llevo llevamos van va lectura medido medi midio fermentando
    temperatura por`,
  begun: 'empece empezamos comence comenzamos prepare preparamos',
  saying: 'marca marco dio da dice sale salio',
  correcting: 'no perdon digo espera espere corrijo mejor dicho',
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
  ages: 'ano edad anito',
  from: 'mayor',
  below: 'menor',
  brews: 'frasco jarra kombucha tanda scoby hongo',
  senses: 'huele olor sabe sabor',
  shakers: `antes podria otro otra vecina vecino amiga amigo creo pienso miedo temo preocupa preocupada
    preocupado casi cerca junto pasado pasada quiero quisiera evitar cuando dejo menos libre
    ultimo ultima siempre si`,
  shakerRuns: ['ya no'],
  and: 'y e',
  or: 'o u ni',
  but: 'pero sino',
  unsearched: 'que cual donde cuando quien por sobre hasta para desde durante tambien',
  places: 'en dentro sobre cerca bajo del de',
  numbers: `cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince
    dieciseis diecisiete dieciocho diecinueve veinte veintiuno veintidos veintitres veinticuatro
    veinticinco veintiseis veintisiete veintiocho veintinueve treinta treintaiuno`
}

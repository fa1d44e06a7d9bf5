/** The small words of a language: they say how a fact is meant, never which fact. */
export interface Grammar {
  /** Left out of phrases and lines alike: "the lid is bulging" is "lid bulging". */
  readonly dropped: string
  /** They turn round what stands after them. */
  readonly negators: string
  /** Ways of saying that one does not know, each a run of words. */
  readonly doubts: readonly string[]
  /** What may follow `no se` so that it is no "I do not know". */
  readonly seen: string
  /** What may stand between a negator and what it rules out. */
  readonly bridges: string
  /** The same after a plain "no", which may also answer a question: "no it has". */
  readonly bridgesAfterNo: string
  /** They say nothing of their own beside a phrase. */
  readonly light: string
  /** They say nothing of their own beside a reading. */
  readonly besideReadings: string
  /** With them a phrase tells of another time, another jar or a worry. */
  readonly shakers: string
  /** The same in several words: "used to be hairy", not "used a crock". */
  readonly shakerRuns: readonly string[]
  readonly and: string
  readonly or: string
  readonly but: string
  /** No phrase is looked up by them. */
  readonly unsearched: string
  /** Before them stands a place, not what is told of. */
  readonly places: string
  /** In order from zero. */
  readonly numbers: string
}

const EN: Grammar = {
  dropped: 'a an the is are was were be been am',
  negators: 'no not never none nothing without nor neither cannot non nobody',
  doubts: [
    ...['not sure', 'unsure', 'not certain', 'uncertain', 'maybe', 'might', 'may'],
    ...['possibly', 'perhaps', 'not know', 'dunno', 'no idea', 'no clue', 'cannot tell'],
    ...['not tell', 'cannot say', 'hard to tell', 'hard to say', 'not check', 'not checked'],
    ...['not measure', 'not measured', 'not test', 'not tested', 'never measured', 'never tested'],
    ...['never checked']
  ],
  seen: '',
  bridges: `any sign trace of see seen saw seeing notice noticed visible find found have has had
    look looking like smell smelling single`,
  bridgesAfterNo: 'any sign trace of visible single',
  light: `it its this that these those there here i we you he she they my our your her his has have
    had with of on in at to so just now yet still very really quite bit little some kind sort look
    looking looked like seem appear see seen got get gotten today currently also too then
    definitely clearly and or as into well ok okay um uh`,
  besideReadings: `for ago reading read say said level value test tested measured show shown using
    by from came out sit sitting ferment fermenting fermented brew brewing brewed going
    temperature temp count`,
  shakers: `if could anything everything gone stopped last previous previously earlier other another neighbor friend
    think thought guess worry worried afraid scared hope hoping wonder wondering would should want
    wanted going will near nearby next beside than how avoid prevent almost nearly barely hardly
    supposed suppose instead free zero less ask asked wrong doubt anymore longer unless except
    neither whether vanished cleared picture photo article always sometimes
    usually`,
  shakerRuns: ['used to', 'got rid', 'get rid'],
  and: 'and plus',
  or: 'or nor',
  but: 'but',
  unsearched: 'about what which where when who why side one two',
  places: 'in on inside at near under around of',
  numbers: `zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen
    fifteen sixteen seventeen eighteen nineteen twenty`
}

const ES: Grammar = {
  dropped: 'el la los las un una unos unas es esta estan son era eran fue',
  negators: 'no sin nunca jamas ningun ninguna ninguno tampoco ni nada nadie',
  doubts: [
    ...['no se', 'no estoy seguro', 'no estoy segura', 'no seguro', 'no segura', 'quiza'],
    ...['tal vez', 'talvez', 'lo mejor', 'puede que', 'puede ser', 'no puedo decir'],
    ...['ni idea', 'no tengo idea', 'dificil decir', 'no medi', 'no sabe', 'no sabemos'],
    ...['no lo se', 'no sabria', 'no recuerdo']
  ],
  seen: 've ven nota notan huele siente mira aprecia observa vio',
  bridges: '',
  bridgesAfterNo: `hay ve ven veo vi tiene tienen tengo he ha visto noto nota huele olor rastro senal
    de a se algun alguna como`,
  light: `hay tiene tienen tengo veo ve ven se lo le que de del en con a al mi su muy poco algo como
    parece ya todavia aun ahora hoy aqui esto eso y o tambien pues sale`,
  besideReadings: `hace desde lleva llevo llevamos van va marca dio da lectura medido medi midio
    fermentando temperatura por`,
  shakers: `antes podria otro otra vecina vecino amiga amigo creo pienso miedo temo preocupa preocupada
    preocupado casi cerca junto pasado pasada quiero quisiera evitar cuando dejo menos libre
    ultimo ultima siempre`,
  shakerRuns: ['ya no'],
  and: 'y e',
  or: 'o u ni',
  but: 'pero sino',
  unsearched: 'que cual donde cuando quien por sobre',
  places: 'en dentro sobre cerca bajo del de',
  numbers: `cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince
    dieciseis diecisiete dieciocho diecinueve veinte`
}

/**
 * The languages whose small words are known. Words of any other are offered, never taken: nobody
 * could tell there a "no" from a "yes".
 */
export const GRAMMARS: Readonly<Record<string, Grammar>> = { en: EN, es: ES }

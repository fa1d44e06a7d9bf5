/** The small words of a language: they say how a fact is meant, never which fact. */
export interface Grammar {
  /** Left out of phrases and lines alike: "the lid is bulging" is "lid bulging". */
  readonly dropped: string
  /** They turn round what stands after them. */
  readonly negators: string
  /** Ways of saying that one does not know, each a run of words. */
  readonly doubts: readonly string[]
  /** Doubts that soften what is told and say nothing of what is only named: "maybe the lid". */
  readonly hedges: readonly string[]
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
  /** With them somebody says when a jar was begun; what begins by itself is another thing. */
  readonly begun: string
  /** They say that something shows a number. */
  readonly saying: string
  /** They take back what was just said. */
  readonly correcting: string
  /** With them a part begins that corrects the one before; patterns, as typed. */
  readonly corrections: readonly string[]
  /** After "no" they go on with what is so: "no it was". */
  readonly refusals: readonly string[]
  /** What asks for advice or leave; patterns, without accents. */
  readonly pleas: readonly string[]
  /** What asks whether something is there. */
  readonly looks: readonly string[]
  /** With them a question begins in the middle of a line. */
  readonly runOn: readonly string[]
  /** After "but" they say what something turned out to be: "but it is just bubbles". */
  readonly turnedOut: string
  /** What a body does, with the word that must follow: its failing is a danger sign. */
  readonly bodily: readonly string[]
  /** "Is not seen" is said of things: before these words no body acts. */
  readonly impersonal: string
  readonly persons: string
  readonly kin: string
  /** Of the persons, whoever may tell of a jar: "I'm 9 days in", not "she is 9 days old". */
  readonly owners: string
  /** Of them alone a number may be an age: "tengo 67". */
  readonly has: string
  /** Beside a number of weeks or months they make it how long somebody is with child. */
  readonly carrying: string
  /** Beside a number they make it an age. */
  readonly ages: string
  readonly from: string
  readonly below: string
  /** They say which sense tells: "smells like vinegar and bread". */
  readonly senses: string
  readonly and: string
  readonly or: string
  readonly but: string
  /** Whoever says this speaks for nobody else: "I haven't had any". */
  readonly self: string
  /** Whoever has some of it is nobody to ask about. */
  readonly pets: string
  /** Where something stands that does not ferment on. */
  readonly cold: string
  /** Measures of the kitchen, none of which is read. */
  readonly kitchen: string
  /** They take somebody out of what is said of all. */
  readonly excepting: string
  /** All that may stand beside "everyone is fine". */
  readonly besideWell: string
  /** With them it was so once: "everyone was fine". */
  readonly noLonger: string
  /** No phrase is looked up by them. */
  readonly unsearched: string
  /** Before them stands a place, not what is told of. */
  readonly places: string
  /** In order from zero. */
  readonly numbers: string
}

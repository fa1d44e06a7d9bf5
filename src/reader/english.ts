import type { Grammar } from './grammar.ts'

/** What people say before they come to it. */
const BEFORE =
  '^(?:(?:so|and|but|or|ok|okay|well|hi|hello|hey|um|uh|now|then|also|just|please|anyway|my question is|i guess) )*'

/** The small words of English. */
export const EN: Grammar = {
  dropped: 'a an the is are was were be been am',
  negators: 'no not never none nothing without nor neither cannot non nobody',
  doubts: [
    ...['not sure', 'unsure', 'not certain', 'uncertain', 'not know'],
    ...['dunno', 'no idea', 'no clue', 'cannot tell'],
    ...['not tell', 'cannot say', 'hard to tell', 'hard to say', 'not check', 'not checked'],
    ...['not measure', 'not measured', 'not test', 'not tested', 'never measured', 'never tested'],
    ...['never checked']
  ],
  hedges: ['maybe', 'might', 'may', 'possibly', 'perhaps'],
  seen: '',
  bridges: `any sign trace of see seen saw seeing notice noticed visible find found have has had
    look looking like smell smelling single`,
  bridgesAfterNo: 'any sign trace of visible single',
  light: `it its them this that these those there here i we you he she they my our your her his has have
    had with of on in at to so just now yet still very really quite bit little some pretty kinda look
    looking looked like seem appear see seen got get gotten today currently also too then
    definitely clearly and or as into well ok okay um uh yes yeah hi hello me us am about say said
    stuff thing top today ago has big large all nasty gross weird funny strange odd stinky icky
    ugly huge sort kind lot lots been getting own used use put fine last night morning
    whole entire every each`,
  besideReadings: `for after since ago reading level value test tested measured shown using about
    by from came out sit sitting ferment fermenting fermented brew brewing brewed going
    temperature temp count`,
  begun: 'start started begin began begun made brewed mixed',
  saying: 'read say said show showing give gave mark',
  correcting: 'no wait sorry actually mean correction oops scratch',
  corrections: [
    ...['oh', 'oops', 'sorry', 'wait', 'no wait', 'wait no', 'no sorry', 'hold on', 'scratch that'],
    ...[
      'actually',
      'no actually',
      'well actually',
      'i mean',
      'i meant',
      'correction',
      'my mistake'
    ],
    ...['let me correct that', 'strike that']
  ],
  refusals: [
    ...[
      "it(?:'?s)?",
      "that(?:'?s)?",
      "they(?:'?re)?",
      "he(?:'s| is| was| has| had| did)",
      'she',
      'we',
      "i(?:'?m)?",
      'the',
      'my'
    ],
    ...["there(?:'?s)?", 'nobody', 'no one', 'none', 'not', 'just', 'only', 'her', 'his', 'our']
  ],
  pleas: [
    `${BEFORE}(?:can|could|should|shall|would|will|may|must|am|do|does|did) (?:i|we|you|he|she|they|it|this|that|these|those|my|the|anyone|anybody|someone|somebody|people|kids)\\b`,
    `${BEFORE}how (?:long|much|many|do|can|should|often|soon|would|could|is|are|does|did|come|about|to|bad|sour|cold|warm|late)\\b`,
    `${BEFORE}what (?:do|does|should|can|could|would|will|is|are|was|if|about|now|kind|the|this|that|causes|caused|happens?|temperature|ph)\\b`,
    `${BEFORE}(?:when|where|which|who) (?:do|does|should|can|could|will|would|are|did)\\b`,
    `${BEFORE}(?:when|where) is\\b`,
    `${BEFORE}(?:is|are) [a-z]+(?: [a-z]+)? for\\b`,
    `${BEFORE}(?:why|whats|what's|any chance|any way|do you)\\b`,
    `${BEFORE}(?:is|are) (?:it|this|that|these|those|they|he|she|my [a-z]+|the [a-z]+) (?:still )?(?:ok|okay|safe|fine|normal|bad|dangerous|going|alright|all right|good|ruined|done|ready|supposed|edible|toxic|harmful|dead|alive)\\b`,
    '\\b(?:wondering|wonder|asking|want(?:ed)? to know|need to know|tell me|ask you|curious) (?:if|whether|how|what|why|when|about whether)\\b',
    '\\b(?:do you think|is there a way|is there any way|ok to|okay to|safe to|good to eat|good to drink)\\b'
  ],
  looks: [
    `${BEFORE}(?:is|are|was|were|has|have|isnt|arent) (?:it|this|that|these|those|there|they|he|she|any|some|anyone|anybody|someone|somebody)\\b`
  ],
  runOn: [
    '(?<!\\b(?:what|how|when|where|why|whether|if|that|not|never)\\s+)(?:can|should|could|do|shall) (?:i|we)',
    '(?<!\\b(?:what|how|if|whether|think)\\s+)(?:is|are) (?:it|this|that|they|these) (?:still )?(?:ok|okay|safe|fine|bad|normal|ruined|good|dangerous)',
    '(?<!\\b(?:know|sure|matter|no)\\s+)(?:how long|how much|what should|what do i)'
  ],
  turnedOut: 'just only actually really',
  bodily: [
    ...['breathe', 'breathing', 'swallow', 'swallowing', 'see', 'seeing', 'speak', 'speaking'],
    ...['talk', 'talking', 'stand', 'walk', 'keep down', 'keeping down']
  ],
  impersonal: '',
  persons: 'i he she we they you',
  kin: `mom mother dad father parent grandma grandmother grandpa grandfather granny nana husband wife
    ownson daughter baby kid child toddler sister brother aunt uncle cousin niece nephew friend neighbor
    roommate partner boy girl man woman patient teen coworker`,
  has: '',
  owners: 'i we you',
  carrying: 'pregnant along expecting',
  ages: 'year yr yo age aged turned turn',
  from: 'over older above',
  below: 'under younger below',
  senses: 'smell smelling smelled taste tasted',
  shakers: `if could anything everything gone stopped previous previously earlier other another neighbor friend
    else onetime think thought guess worry worried afraid scared hope hoping wonder wondering would should want
    wanted going will near nearby next beside than how avoid prevent almost nearly barely hardly
    supposed suppose instead free zero less ask asked wrong doubt anymore longer unless except
    neither whether vanished cleared picture photo article always sometimes
    usually`,
  shakerRuns: [
    ...['last time', 'last batch', 'last one', 'last year', 'last jar', 'last summer'],
    ...['used to', 'got rid', 'get rid', 'it started', 'this started', 'that started'],
    ...['he started', 'she started', 'they started', 'it began', 'this began', 'that began']
  ],
  and: 'and plus',
  or: 'or nor',
  but: 'but',
  self: 'i',
  pets: 'dog puppy cat kitten chicken hen goat pig horse parrot bird',
  cold: 'fridge refrigerator freezer chilled cold',
  kitchen: 'tablespoon tbsp teaspoon tsp cup ounce oz pound lb gram spoon spoonful pinch handful',
  excepting: 'except besides unless excluding apart aside',
  besideWell: 'so far yet here thank thanks you luckily thankfully well and yes yeah ok okay',
  noLonger: 'was were',
  unsearched: `about what which where when who why side one two up off down out over away back onto
    through until since after before during oclock`,
  places: 'in on inside at near under around of',
  numbers: `zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen
    fifteen sixteen seventeen eighteen nineteen twenty twentyone twentytwo twentythree twentyfour
    twentyfive twentysix twentyseven twentyeight twentynine thirty thirtyone`
}

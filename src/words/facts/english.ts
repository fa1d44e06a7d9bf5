import type { Grammar } from './grammar.ts'

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
  light: `it its this that these those there here i we you he she they my our your her his has have
    had with of on in at to so just now yet still very really quite bit little some pretty kinda look
    looking looked like seem appear see seen got get gotten today currently also too then
    definitely clearly and or as into well ok okay um uh yes yeah hi hello me us am about say said
    stuff thing top today ago has`,
  besideReadings: `for ago reading level value test tested measured shown using about
    by from came out sit sitting ferment fermenting fermented brew brewing brewed going
    temperature temp count`,
  begun: 'start started begin began begun made brewed mixed',
  saying: 'read say said show showing give gave mark',
  correcting: 'no wait sorry actually mean correction oops',
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
  ages: 'year yr yo age aged turned turn',
  from: 'over older above',
  below: 'under younger below',
  brews: 'jar batch brew kombucha scoby',
  senses: 'smell smelling smelled taste tasted',
  shakers: `if could anything everything gone stopped last previous previously earlier other another neighbor friend
    else think thought guess worry worried afraid scared hope hoping wonder wondering would should want
    wanted going will near nearby next beside than how avoid prevent almost nearly barely hardly
    supposed suppose instead free zero less ask asked wrong doubt anymore longer unless except
    neither whether vanished cleared picture photo article always sometimes
    usually`,
  shakerRuns: [
    ...['used to', 'got rid', 'get rid', 'it started', 'this started', 'that started'],
    ...['he started', 'she started', 'they started', 'it began', 'this began', 'that began']
  ],
  and: 'and plus',
  or: 'or nor',
  but: 'but',
  unsearched: `about what which where when who why side one two up off down out over away back onto
    through until since after before during oclock`,
  places: 'in on inside at near under around of',
  numbers: `zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen
    fifteen sixteen seventeen eighteen nineteen twenty twentyone twentytwo twentythree twentyfour
    twentyfive twentysix twentyseven twentyeight twentynine thirty thirtyone`
}

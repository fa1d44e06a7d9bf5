import type { AskedLanguage } from './language.ts'

const THIS =
  '(?:it|this|that|these|those|them|mine|my [a-z ]{2,40}?|the (?:jar|batch|bottle|brew|stuff|liquid|top|whole thing|rest)[a-z ]{0,20}?)'
const STATE =
  '(?:ok|okay|safe|unsafe|fine|good|bad|normal|ruined|spoiled|edible|ready|alright|all right|dangerous|toxic|poisonous|dead|alive|contaminated|mold|mould|moldy|mouldy|rotten|off|healthy|drinkable|done for|infected)'
const WHO = '(?:i|we|you|he|she|they|people|anyone|somebody|someone|kids|children|my [a-z]+)'

/** English, as callers ask in it. */
export const EN: AskedLanguage = {
  small: `a an the is are was were be been am do does did i we you he she they me us my our your it its this
    that these those of to in on at for from by and or if so can could may might should would will must
    shall how what when why which who where there have has had get got with as am about please tell hi
    hello just any some not no into then than one use using need want take`,
  alike: [
    'fridge refrigerator refrigerate refrigerated icebox chill',
    'freeze freezer frozen freezing',
    'child children kid kids toddler infant baby teen teenager son daughter',
    'warm temperature heat degrees hot fahrenheit',
    'throw dispose discard trash garbage toss bin',
    'clean sanitize disinfect sterilize wash',
    'begin start restart',
    'keep store storage shelf last',
    'vessel container crock jar pot',
    'pregnant pregnancy expecting',
    'alcohol alcoholic abv boozy',
    'culture scoby mother pellicle disc',
    'burst explode exploded explosion blew shattered',
    'sick ill vomiting nausea puking diarrhea',
    'bubble fizz fizzy carbonation carbonated',
    'mold mould moldy mouldy',
    'medicine medication drug pills prescription',
    'cut reduce less lower',
    'dog cat pet puppy',
    'holiday vacation away travel trip',
    'bug flies gnat insect'
  ],
  emergencies: [
    '\\b(?:cannot|can not|cant|trouble|hard(?:er)? (?:time|to)|difficulty|struggling to|unable to|problem|not) ?(?:to )?(?:breath|swallow|speak|talk|see\\b|move)',
    '\\b(?:short of breath|not breathing|choking|throat (?:is )?(?:closing|swell|swollen)|swollen (?:face|throat|tongue)|face (?:is )?swell)',
    '\\b(?:blur(?:red|ry)|double) (?:vision|seeing|sight)|\\bseeing double\\b|\\bvision (?:is )?(?:blur|double)',
    '\\b(?:droop(?:y|ing)?|droopy|sagging) (?:eye)?lids?|\\beyelids? (?:are |is )?droop',
    '\\bslurr(?:ed|ing)|\\bspeech is\\b',
    '\\b(?:collapsed?|unconscious|passed out|fainted|seizure|convuls|paraly[sz]ed|paralysis|not waking|wont wake|unresponsive)',
    '\\bchest (?:pain|hurts)|\\bpain in (?:my|his|her|the) chest',
    '\\b(?:bleeding (?:a lot|heavily|badly)|deep cut|glass in (?:my|his|her|the|an) eye)',
    '\\b(?:baby|infant) (?:is )?(?:floppy|limp)|\\bfloppy baby\\b|\\b(?:weak|weakness) (?:in )?(?:arms|legs|muscles)'
  ],
  judging: [
    `\\b(?:is|are|was|were|looks?|seems?|smells?|think) ${THIS} (?:still |really |maybe |even |actually |going )?${STATE}\\b(?! (?:to|for) (?!drink|eat|consume|have|serve|keep using|use\\b$))`,
    `\\b(?:is|was) (?:it|this|that) (?:ok|okay|safe|fine|alright|all right|good) to (?:drink|eat|consume|have it|serve|use (?:it|this|that))\\b`,
    '\\b(?:safe|unsafe|ok|okay|fine|good) to (?:drink|eat|consume)\\b',
    `\\b(?:can|could|may|should|do|would|will|did) ${WHO} (?:still |just |even |safely |now )?(?:drink|eat|have|taste|serve|consume|swallow) ${THIS}(?:\\b|$)`,
    `\\b(?:can|could|may|should) ${WHO} (?:still |just |even |now )?(?:use|keep|save|skim|scoop|fix|salvage|rescue) (?:it|this|that|these|those|them|mine)(?: off| anyway| still| now)?(?: or\\b.*)?$`,
    `\\b(?:should|must|need|have) (?:${WHO} |to )(?:to )?(?:throw|toss|dump|discard|trash|pitch) (?:it|this|that|them|mine|my)\\b`,
    '\\b(?:is|are) (?:it|this|that|these|there) (?:any |some )?(?:a )?(?:mold|mould|moldy|mouldy|botulism|kahm|poison|yeast)\\b',
    '\\bwhat (?:is|are) (?:this|that|these|those|the|all) [a-z ]{0,40}(?:in|on|at|inside) (?:my|the top|top|it)\\b',
    '\\bwhat (?:is|are) (?:this|that|these|those)\\b',
    '\\bwhat(?: is|s) wrong\\b|\\bsomething (?:is )?wrong\\b|\\b(?:went|gone|going|go) bad\\b(?!.*\\bhow long)',
    '\\b(?:looks?|smells?) (?:weird|odd|strange|funny|gross|moldy|mouldy|off|bad|wrong|rotten|nasty)',
    '\\b(?:mold|mould|fuzz|fuzzy|hair|hairy|furry|something)[a-z ]{0,20} (?:on|in|inside|floating in) (?:my|it|the top|top|this)\\b',
    '\\bdid (?:i|we) (?:ruin|kill|spoil)\\b',
    '\\b(?:my|this|the) [a-z]+ (?:is |has |looks |got |turned )(?:moldy|mouldy|mold|mould|slimy|fuzzy|furry|hairy|rotten)'
  ],
  spares: ['\\b(?:when|how (?:long|soon|many|late)|how do (?:i|we|you) know)\\b']
}

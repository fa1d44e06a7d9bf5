import type { AskedLanguage } from './language.ts'

const STATE =
  '(?:bien|buen[oa]s?|mal[oa]s?|normal(?:es)?|list[oa]s?|echad[oa]s? a perder|moho|peligros[oa]s?|toxic[oa]s?|venenos[oa]s?|segur[oa]s?|comestibles?|podrid[oa]s?|arruinad[oa]s?|muert[oa]s?|viv[oa]s?|contaminad[oa]s?)'
const OF =
  '(?:mi|mis|el mio|la mia|esto|eso|este|ese|esta [a-z]+ mia|el frasco|la tanda|lo de arriba)'

/** Spanish, as callers in the United States ask in it. */
export const ES: AskedLanguage = {
  small: `de la el los las un una unos unas y o u en con para por que como cuando donde quien cual se me le les
    lo mi mis su sus al del es son esta estan ser si no a yo puedo puede podemos pueden debo hay tengo tiene
    hacer hago hace ya muy mas este esto esta eso ese favor hola quiero saber va van ir uso usar usa necesito necesita`,
  alike: [
    'refrigerador refrigerar refri nevera heladera frigorifico',
    'congelador congelar congelada congelado',
    'nino ninos nina ninas hijo hija bebe chiquito adolescente chamaco',
    'temperatura calor caliente grados tibio',
    'tirar tiro desechar botar boto basura deshacerme',
    'limpiar desinfectar esterilizar lavar lavo',
    'empezar comenzar iniciar reiniciar',
    'guardar guardo conservar almacenar dura duran durar',
    'recipiente frasco vasija olla jarra vitrolero',
    'embarazo embarazada encinta',
    'alcohol alcoholica alcoholico',
    'cultivo scoby madre disco',
    'estallar estallo exploto explotar revento reventar',
    'enfermo enferma vomito diarrea nausea',
    'gas burbujas gasificada',
    'moho hongo mohoso enmohecido',
    'medicina medicamento pastillas remedio',
    'bajar reducir menos',
    'perro gato mascota',
    'vacaciones viaje',
    'mosca mosquito insecto bicho'
  ],
  emergencies: [
    '\\b(?:no (?:puede|puedo|pueden|podia)|dificultad|trabajo|cuesta|problemas?|batalla)(?: para| en| al)? (?:respirar|tragar|hablar|ver\\b|moverse)',
    '\\b(?:no respira|se ahoga|se asfixia|falta (?:el|de) aire|garganta (?:cerrada|hinchada)|se (?:le|me) cierra la garganta|cara hinchada|lengua hinchada)',
    '\\b(?:vision|vista) (?:borrosa|doble|nublada)|\\bve (?:doble|borroso)|\\bveo (?:doble|borroso)',
    '\\bparpados? (?:caidos?|cerrados?)|\\bse (?:le|me) caen los parpados',
    '\\b(?:habla arrastrad|arrastra las palabras|arrastrando las palabras|no se le entiende)',
    '\\b(?:se desmayo|desmayad|desmayo|inconsciente|convulsi|paraliz|paralisis|no despierta|no reacciona|se desplomo)',
    '\\bdolor (?:de|en el) pecho|\\b(?:me|le) duele el pecho',
    '\\b(?:sangra mucho|cortada profunda|vidrio en (?:el|un) ojo)',
    '\\bbebe (?:esta )?(?:flojo|flacido|aguado)|\\bdebilidad en (?:los brazos|las piernas)'
  ],
  judging: [
    `^(?:y |pero |oiga |disculpe |hola )*(?:esta|estan|es|son|sera|sigue|siguen) (?:todavia |aun |ya )?${STATE}\\b(?! (?:usar|poner|hacer|guardar|dejar|anadir|echar|fermentar|lavar))`,
    `\\b${OF}[a-z ]{0,30} (?:esta|estan|es|son|sera|sigue|siguen|salio|quedo|se puso|tiene|tienen) (?:todavia |aun |ya )?${STATE}`,
    `\\b(?:esta|estan|es|son|sera|sigue) (?:todavia |aun |ya )?${STATE} (?:para (?:beber|tomar|comer)(?:la|lo|las|los)?\\b|${OF}\\b)`,
    '\\b(?:segur[oa]|buen[oa]|bien) (?:de |para )?(?:beber|tomar|comer)(?:la|lo|las|los)?\\b',
    '\\b(?:puedo|podemos|puede|pueden|debo|se puede)(?: todavia| aun)? (?:beber|tomar|comer|usar|servir|salvar)(?:me|se)?(?:la|lo|las|los)\\b',
    '\\b(?:la|lo|las|los) (?:puedo|podemos|puede|pueden|debo) (?:beber|tomar|comer|usar|salvar|guardar)(?: asi| todavia)?$',
    `\\b(?:puedo|podemos|puede|pueden|se puede)(?: todavia| aun)? (?:beber|tomar|comer) (?:${OF}\\b|asi\\b|$)`,
    '\\bse puede (?:beber|tomar|comer)$',
    '\\b(?:la|lo|los|las) (?:tiro|boto|desecho)\\b|\\b(?:debo|tengo que|hay que) (?:tirar|botar|desechar)(?:la|lo|las|los)\\b',
    '\\bque (?:es|son|sera) (?:esto|eso|esta cosa|estas cosas|lo (?:blanco|negro|verde|rosa|peludo))',
    '\\b(?:tiene|tienen|hay|salio|le salio|crecio|veo) (?:un |unos |algo )?(?:moho|hongos?|pelusa|pelitos?)\\b',
    '\\bse (?:echo|habra echado|echaron) a perder\\b|\\bque le pasa\\b|\\balgo (?:anda |esta )?mal\\b',
    '\\b(?:se ve|huele) (?:rar[oa]|mal|fe[oa]|extran[oa]|podrid[oa])',
    '\\bes (?:moho|hongo|botulismo|veneno|kahm|levadura)\\b'
  ],
  spares: ['\\b(?:cuando|cuanto tiempo|cuantos dias|cuanto tarda)\\b']
}

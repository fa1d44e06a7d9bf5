/** The manual page of `jarside reckon`. */
export const RECKON_MANUAL = `NAME
  jarside reckon - work out acidity, gas, bleach, salt, sugar, agreement

USAGE
  jarside reckon mix --starter 2cup --batch 1gal --starter-ph 3.0 --instrument meter
  jarside reckon mix --starter 2cup --batch 1gal --starter-kind two-weeks-or-more
  jarside reckon course --at 75F --day 8 [--start-ph 4.5] [--readings 0:4.5,4:4.1,8:3.9]
  jarside reckon gas --sugar 20g/L --days 3 --at 75F --bottle swing-top --headspace 5%
  jarside reckon bleach --label 8.25% --target 200ppm --water 1gal [--additive scented]
  jarside reckon salt --salt 3tbsp --salt-kind canning --vegetables 5lb --for kraut
  jarside reckon brix 8.0 [4.0]
  jarside reckon agree 20 5 10 15 [--weights linear]

  Every result is an interval: what is not known stays not known, and is never a pass. None of it
  replaces a reading, a label or a tested recipe.

OPTIONS
  --instrument  meter, narrow-strip or wide-strip; without it the widest counts. For course as well
  --starter-kind  two-weeks-or-more, one-to-two-weeks, young-or-chilled, unknown: when nobody measured
  --days        left out: as long as the sugar lasts
  --bottle      swing-top, beer, plastic, sparkling, square, canning-jar, wine, unknown
  --additive    scented, gel, splashless: refused
  --salt-kind   canning, table, kosher-flake, coarse-sea, unknown: for spoons
  --for         kraut, dill, kimchi, other
  --weights     none, linear or quadratic; agree takes 4, 9, 16 … counts, row by row
  --lang <language>  the language of the sentences, such as es; English without it
  --json        print one object: { low, mid, high, unit, says, sources, … }
  --in <folder>  read words from this folder
  --help        show this page

EXIT CODES
  0  worked out, or refused with the reason      2  a number that cannot be, or an option that does not fit`

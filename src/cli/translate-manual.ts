import { REVIEWERS } from '../translation/ledger.ts'

export const TRANSLATE_MANUAL = `NAME
  jarside translate - what is translated, what was reviewed, and what has to be read

USAGE
  jarside translate status [--in <folder>]
  jarside translate packet <language> [--in <folder>]
  jarside translate accept <language> --text <name> ... --by <role> [--in <folder>]
  jarside translate export <language> [--as xliff|csv] [--open] [--to <file>] [--in <folder>]
  jarside translate import <language> <file> [--try] [--in <folder>]

  status prints, for each language and kind of text, how many are missing, drafts, reviewed and
  stale.
  packet prints what a reader has to read: English and translation, what to do first, then whom to
  call, cautions, advice and labels, and in each those that forbid something first.
  accept writes down that somebody in a role has read a text against its English. It holds for
  these two sentences: change either and it is stale at once, and the English is shown alone.
  The ledger is shared/reviews/<language>.json. No name of a person stands in it.

  export gives out every text with its English, its kind, a note where the English alone misleads
  (shared/translator-notes.yaml) and the most words that a tight place has room for: as XLIFF 2.1
  for translators' programs, or as CSV for a spreadsheet. In XLIFF nobody can edit gaps, links and
  phone numbers. A language that is not begun may be named: all its texts are open.
  import takes back what was translated. It leaves a text, and says why with both sides, where its
  English or its translation was changed since it was given out, where the checks of
  jarside check find something in it, and where it is too long for its place. What the file says
  of the state of a text is not asked: what is taken in is a draft until somebody accepts it.

OPTIONS
  --text <name>  a text as packet names it, or all of a file: \`steps:call-911\`, \`steps\`
  --by <role>    ${REVIEWERS.join(', ')}
  --as <format>  xliff (the usual) or csv
  --open         give out only what is missing, stale or a draft
  --to <file>    write the file there; without it, it is printed
  --try          say what an import would do, and write nothing
  --in <folder>  work on this folder's files
  --help         show this page

EXIT CODES
  0  done     1  an import left something
  2  an unknown language, text or role, a file that cannot be read, or an option that does not fit`

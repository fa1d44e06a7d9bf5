/** The manual page of `jarside plain`. */
export const PLAIN_MANUAL = `NAME
  jarside plain - write trees as pages that need no script

USAGE
  jarside plain <tree> --out <folder> [options]
  jarside plain --all --out <folder> [options]

  Each answer is a link to the next question; the last page says what to do. A page needs no other
  file but one style sheet, can be printed, and has the numbers to call. What was told before is not
  kept: verdicts and what may be drunk are unfolded into the links, and the last page lists what
  goes with single answers under "if you said".

OPTIONS
  --all                 every tree that is not withdrawn
  --lang <language>     such as es; give it once for each. Every language without it
  --out <folder>        where the files go; it is made when it is not there
  --in <folder>         read trees and words from this folder
  --help                show this page

FILES
  index.html, plain.css, <language>/index.html, <language>/<tree>/*.html

EXIT CODES
  0  written      1  the tree has findings
  2  unknown tree or language, or an option that does not fit`

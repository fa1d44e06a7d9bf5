/** The manual page of `jarside pack`. */
export const PACK_MANUAL = `NAME
  jarside pack - write the kiosk as one file that needs no server

USAGE
  jarside pack --single-file --out <file.html> [options]

  The file holds the program, its style and typefaces, the ferments and languages chosen, and the
  office's numbers. Any browser opens it from a memory stick, with no network: it asks for nothing.
  It goes on being what it was: write it anew when questions or numbers change. After 30 days it
  says that it may be out of date.

  It is put together from what npm run build left, which has to be of the same trees.

OPTIONS
  --single-file         one file; the only form there is
  --tree <tree>         such as kombucha-jar; give it once for each. Every ferment without it
  --lang <language>     such as es; give it once for each. English is always there: it stands
                        beside drafts. Every language without it
  --out <file>          where the file goes
  --built <folder>      where the build is, when it is not in dist
  --in <folder>         read trees and office from this folder
  --help                show this page

EXIT CODES
  0  written      1  the build is missing, or of other trees than these
  2  unknown tree or language, or an option that does not fit`

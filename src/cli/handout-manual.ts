/** The manual page of `jarside handout`. */
export const HANDOUT_MANUAL = `NAME
  jarside handout - write sheets for callers and for the wall as PDF, with HTML beside each

USAGE
  jarside handout <tree> --verdict <verdict> --out <folder> [options]
  jarside handout <tree> --sheet <kind> --out <folder> [options]
  jarside handout [<tree>] --all --out <folder> [options]

  Black and white, in 12 points or more. A verdict sheet is one side for each language: a draft has
  the English on the other side. It is general: no jar was looked at, so it frees nothing to drink.
  What an office hands out is checked against its own numbers in the office pack. The PDF is tagged,
  and needs Chromium or Chrome: one on the path, or the one that JARSIDE_BROWSER names.

OPTIONS
  --sheet <kind>        verdict without it; give it once for each:
                        verdict      what to do, for the caller
                        key          the whole tree as numbered leads, for a power cut
                        chart        the same leads drawn as a chart, for reviewers and for
                                     a wall: letter, tabloid, a4, a3; as SVG too
                        look-alikes  what gets mixed up, for a wall: letter, tabloid, a4, a3
                        batch        the record card of a batch
                        class        the limits of its making, for a class
  --verdict <verdict>   such as likely-mold; give it once for each
  --all                 every sheet of the tree, or of every tree, in every language
  --lang <language>     such as es; English without it; give it once for each
  --paper <paper>       letter without it, or a4; for a wall tabloid or a3 as well
  --large               18 points, in one column, on as many pages as that takes
  --out <folder>        where the files go; it is made when it is not there
  --office <file>       an office pack in place of public/office.json
  --address <address>   the web address on the sheet, in place of the office's own
  --in <folder>         read trees and words from this folder
  --help                show this page

FILES
  <tree>-<verdict or kind>-<language>-<paper>.pdf and .html, of a chart .svg as well; HTML and SVG
  need no other file
  index.html lists them; manifest.json says what each was made from, and its SHA-256. A sheet that
  stands there already, made from the same, is not made again.

EXIT CODES
  0  written      1  a sheet takes more than its side, or the tree has findings
  2  unknown tree, sheet, verdict, language or paper, no browser, or an option that does not fit`

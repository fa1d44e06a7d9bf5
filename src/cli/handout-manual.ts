/** The manual page of `jarside handout`. */
export const HANDOUT_MANUAL = `NAME
  jarside handout - write the sheet of a verdict as PDF, with HTML beside it

USAGE
  jarside handout <tree> --verdict <verdict> --out <folder> [options]
  jarside handout <tree> --all --out <folder> [options]

  One side of one page, black and white. The sheet is general: no jar was looked at, so it frees
  nothing to drink. What an office hands out is checked against its own numbers in
  public/office.json. The PDF is tagged, and needs Chromium or Chrome: one on the path, or the one
  that JARSIDE_BROWSER names.

OPTIONS
  --verdict <verdict>   such as likely-mold; give it once for each
  --all                 every verdict of the tree, in every language
  --lang <language>     such as es; English without it. A draft has the English beside it
  --paper letter|a4     letter without it
  --out <folder>        where the files go; it is made when it is not there
  --address <address>   the web address on the sheet, in place of the office's own
  --in <folder>         read trees and words from this folder
  --help                show this page

FILES
  <tree>-<verdict>-<language>-<paper>.pdf and .html; the HTML needs no other file

EXIT CODES
  0  written      1  a sheet takes more than one side, or the tree has findings
  2  unknown tree, verdict, language or paper, no browser, or an option that does not fit`

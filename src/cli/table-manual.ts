/** The manual page of `jarside table`. */
export const TABLE_MANUAL = `NAME
  jarside table - write a tree as complete decision tables

USAGE
  jarside table <tree> --format dmn|csv|html [options]

  One table for each track (person, container, batch), for the use, and for each note: every set of
  answers fits exactly one row (hit policy UNIQUE). A measure stands as whether it was measured, and
  as its lowest, its reading and its highest; a count as its number. Rows name the sources they rest
  on. A table over 500 rows is split into several that are complete together.
  The table of the person has the emergencies. The others are for answers without one.

OPTIONS
  --format dmn    OMG DMN 1.3, answers by their ids; one file for each table with its parts
  --format csv    for a spreadsheet, in words; one file for each table and each part
  --format html   one page, in words, for reading and printing
  --only <table>  person, container, batch, use, or a note; give it once for each. All without it
  --lang <language>  the words of csv and html, such as es; English without it
  --out <folder>  where the files go; it is made when it is not there. Without it the file is
                  printed here, if it is one
  --bom           begin a CSV with a byte order mark, for spreadsheets that ask for one
  --in <folder>   read trees and words from this folder
  --help          show this page

FILES
  <tree>-<table>.dmn, <tree>-<table>-<language>.csv, <tree>-tables-<language>.html

EXIT CODES
  0  written      1  the tree has findings
  2  unknown tree, table, format or language, or an option that does not fit`

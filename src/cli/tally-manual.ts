export const TALLY_MANUAL = `NAME
  jarside tally - add up the contact logs of several desks

USAGE
  jarside tally FILE... [--quarter 2026-4 | --fiscal-year 2027 | --year 2026 | --from DAY --to DAY]
                [--csv | --json] [--every-number] [--bad FILE]

  Each file holds JSON Lines, as the desk's page "Log and reports" writes them; \`-\` reads them from the
  input. What stands in several files counts once; of an edited record the latest version counts. A
  fiscal year is the federal one: 2027 runs from October 1, 2026 to September 30, 2027. Without a time
  everything is added up. Counts under five, and as many more that none can be worked out, are hidden.

OPTIONS
  --quarter <year>-<1..4>  a calendar quarter
  --fiscal-year <year>     a federal fiscal year, by the year in which it ends
  --year <year>            a calendar year
  --from, --to <day>       any days, both included: 2026-10-01
  --csv                    print rows for a spreadsheet
  --json                   print one object
  --every-number           hide nothing: for the office itself, not for others
  --bad <file>             write the lines that cannot be read to a file, to be mended
  --in <folder>            take names from this folder
  --help                   show this page

EXIT CODES
  0  added up
  1  added up, but for lines that cannot be read: they are counted and the first ones shown
  2  a file or an option that does not fit`

/** The manual page of `jarside walk`. */
export const WALK_MANUAL = `NAME
  jarside walk - walk a tree from its first question to an outcome

USAGE
  jarside walk <tree> [options]
  jarside walk <tree>@<edition> [options]     as it was published, with its words then

  In a terminal it asks one question at a time. Anywhere else, or with --json, it
  never asks: it takes the answers given and says how far they lead.

OPTIONS
  --given <observation>=<answer>   one fact; give the option once for each
      surface-texture=dry-fuzzy      a choice: one of its answers, or unsure
      jar-signs=insects-inside       a sign that was seen; :no or :unsure after it otherwise
      jar-ph=3.9@narrow-strip        a reading and its instrument; without one, the least exact
      day=9                          a count; or unsure
  --none <observation>             the signs left open were looked for and are not there
  --unsure <observation>           not sure: of the signs left open, or of the whole answer
  --json                           print one object (see below)
  --strict                         exit with 1 when the answers do not finish the walk
  --in <folder>                    read trees and words from this folder
  --help                           show this page

  Facts may come in any order. Of two answers to one choice the more worrying counts, and of
  two for one sign yes before unsure before no. Two different readings of one measure are refused.

KEYS, IN A TERMINAL
  a number  choose that answer; for signs, several with commas or spaces
  0         none of these: rules out the signs still open
  u         not sure: of the signs still open, or of the answer; 4? is not sure of sign 4 alone
  b, c      go back one answer; change any earlier one
  w         why this is asked, and on whose word
  q         quit (also Ctrl-C, Ctrl-D); nothing is kept

OBJECT
  tree, edition, fingerprint, draft, review   which tree speaks, and how far it is reviewed
  finished, asks      whether an outcome is reached; else the observation asked next
  verdict, also, use  the outcome, or null; verdict first, the rest in order
  atLeast, possible   the gentlest, and every verdict, that can still happen (null: nothing there)
  alarms              what cannot wait for the outcome: a person, a jar that may burst
  trail               the questions passed with answers, sources and what each raised
  notes, noteTexts    the notes met, as ids and as sentences in the same order
  message, doNow, later, referral, cautions, recheck, sources   what is said
  stopped             "emergency" where that ended the walk before its other questions

EXIT CODES
  0  answered          1  not finished (--strict), or the tree has findings
  2  unknown tree, observation or answer, or an option that does not fit`

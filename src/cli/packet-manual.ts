/** The manual page of `jarside packet`. */
export const PACKET_MANUAL = `NAME
  jarside packet - write what the specialist who signs a tree reads, and the file that comes back

USAGE
  jarside packet <tree> --out <folder> [options]

  One document in English: what to look at first (own caution, memory, common practice, sources that
  differ), every rule with its source, which answers lead to which outcome, the readings nearest each
  limit, all words, what is new since the last published edition, and a place to sign by role. It is
  HTML that needs no other file; a PDF stands beside it where Chromium or Chrome is at hand, on the
  path or named in JARSIDE_BROWSER.

  Beside it stands <tree>.review.yaml. The reviewer's office writes a decision for each item of part 1
  and the day on which each role signed. jarside publish <tree> --review <file> takes it back. A review
  file that is there already is never written over.

OPTIONS
  --paper <paper>  letter without it, or a4
  --out <folder>   where the files go; it is made when it is not there
  --in <folder>    read trees and words from this folder
  --help           show this page

FILES
  <tree>.packet.html, <tree>.packet.pdf, <tree>.review.yaml

EXIT CODES
  0  written      1  the tree has findings
  2  an unknown tree or paper, or an option that does not fit`

import type { ErrorCode, YAMLError } from 'yaml'

interface Fault {
  readonly fault: string
  readonly cure: string
}

const OTHERWISE: Fault = {
  fault: 'something stands where it cannot',
  cure: 'Compare the line and the one above it with a neighbour that works: a colon, a quotation mark or a bracket is often missing.'
}

const FAULTS: Partial<Record<ErrorCode, Fault>> = {
  BAD_INDENT: {
    fault: 'the line is not indented like its neighbours',
    cure: 'Begin it under the first letter of the line that it belongs with.'
  },
  TAB_AS_INDENT: { fault: 'a tab indents the line', cure: 'Indent with spaces.' },
  MISSING_CHAR: {
    fault: 'a closing bracket, a quotation mark, a comma or a colon is missing',
    cure: 'Close what is open, put a comma between entries and a colon after a name.'
  },
  BAD_SCALAR_START: {
    fault: 'a text begins with a sign that has another meaning',
    cure: 'Put quotation marks around the text.'
  },
  BAD_DQ_ESCAPE: {
    fault: 'a backslash stands before a letter that it cannot go with',
    cure: 'Write the sign itself, or two backslashes for one.'
  },
  BLOCK_AS_IMPLICIT_KEY: {
    fault: 'two colons stand on one line',
    cure: 'Put quotation marks around a text that holds a colon, or begin a new line.'
  },
  MULTILINE_IMPLICIT_KEY: {
    fault: 'a name before a colon runs over several lines',
    cure: 'Close the bracket or quotation mark above, and put a colon after each name.'
  },
  BLOCK_IN_FLOW: {
    fault: 'a bracket above is still open',
    cure: 'Close the bracket, or write the whole group on lines of its own.'
  },
  KEY_OVER_1024_CHARS: { fault: 'a name before a colon is very long', cure: 'Shorten the name.' },
  MULTIPLE_DOCS: {
    fault: 'a second document begins',
    cure: 'Remove the line of three hyphens, or move the rest into a file of its own.'
  },
  TAG_RESOLVE_FAILED: {
    fault: 'a word with an exclamation mark names a kind that is not read',
    cure: 'Leave the word out, or put quotation marks around the text.'
  },
  RESOURCE_EXHAUSTION: {
    fault: 'the file asks for too much at once',
    cure: 'Split the file, and write out what is repeated.'
  }
}

/** A fault of syntax in plain words, with its cure. */
export function syntaxFault({ code, message }: Pick<YAMLError, 'code' | 'message'>): Fault {
  // Where a bracket is not closed, the next line is the first that looks wrong.
  const open = code === 'BAD_INDENT' && message.startsWith('Flow')
  return FAULTS[open ? 'BLOCK_IN_FLOW' : code] ?? OTHERWISE
}

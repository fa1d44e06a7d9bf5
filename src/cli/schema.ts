import { existsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { jsonSchemas } from '../load/json-schema.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { say } from './terminal.ts'
import { makeFolder, writeWhole } from './write-file.ts'

const FOLDER = 'shared/schemas'

const MANUAL = `NAME
  jarside schema - write the JSON Schema of every authored format, for editors

USAGE
  jarside schema [--out <folder>]

  An editor that reads them completes and checks a file as it is typed. A file of YAML names its
  schema in its first line, a file of JSON in its first key, each by the way from the file to it:

    # yaml-language-server: $schema=../${FOLDER}/tree.schema.json
    "$schema": "../../${FOLDER}/locale-notes.schema.json",

  An editor sees one file at a time: whether a name is known elsewhere, jarside check says.

OPTIONS
  --out <folder>  where they go; it is made when it is not there. Without it they go to
                  ${FOLDER} of the folder one is in, which must hold trees
  --help          show this page

EXIT CODES
  0  written
  2  an option that does not fit, or no folder to write to`

/** `jarside schema`: the shapes of all authored files, for authors' editors. */
export const schema: Command = {
  name: 'schema',
  summary: 'write the JSON Schemas with which editors complete and check',
  manual: MANUAL,
  async run(args, terminal) {
    const { values, positionals } = readArguments(args, {
      out: { type: 'string' },
      help: { type: 'boolean' }
    })
    if (positionals.length > 0) {
      throw new BadUse('`jarside schema` takes no names: it writes every schema.')
    }
    if (values.out === undefined && !existsSync('trees')) {
      throw new BadUse('There is no folder `trees` here. Say where to: `--out <folder>`.')
    }
    const folder = values.out ?? FOLDER
    if (existsSync(folder) && !statSync(folder).isDirectory()) {
      throw new BadUse(`\`${folder}\` is a file. Name a folder.`)
    }
    makeFolder(folder)
    for (const { name, describes, text } of jsonSchemas()) {
      writeWhole(join(folder, name), text)
      say(terminal.output, `${name.padEnd(32)}for ${describes}`)
    }
    return 0
  }
}

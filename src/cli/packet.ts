import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { MUST_SIGN } from '../load/schemas/review-file.ts'
import { packetOf } from '../paper/packet/packet.ts'
import { packetHtml } from '../paper/packet/packet-page.tsx'
import { countOf } from '../paper/packet/rule-words.ts'
import { BadUse } from './bad-use.ts'
import { browserProgram } from './browser.ts'
import { type Command, readArguments } from './command.ts'
import { namedOne } from './named-one.ts'
import { PACKET_MANUAL } from './packet-manual.ts'
import { paperFonts } from './paper-style.ts'
import { printPages } from './print-sheets.ts'
import { packetParts, stateOf } from './review-packet.ts'
import { reviewTemplate, rolesFor } from './review-template.ts'
import { say, type Terminal } from './terminal.ts'
import { treeNamed } from './tree-named.ts'
import { makeFolder, writeWhole } from './write-file.ts'

const PAPERS_OF_A_PACKET = ['letter', 'a4'] as const

/** `jarside packet`: what a specialist reads before signing, and the file that comes back. */
export const packet: Command = {
  name: 'packet',
  summary: 'write what the specialist who signs a tree reads',
  manual: PACKET_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      paper: { type: 'string', default: 'letter' },
      out: { type: 'string' },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const project = await open(values.in)
    const tree = treeNamed(project, positionals, terminal)
    if (tree === undefined) return 1
    if (!project.loaded.trees.includes(tree)) {
      throw new BadUse(
        `Edition ${tree.edition} is published: there is nothing to sign. Name the tree as it stands: \`${tree.id}\`.`
      )
    }
    if (values.out === undefined) throw new BadUse('Say where to: `--out <folder>`.')
    const paper = namedOne(
      values.paper,
      PAPERS_OF_A_PACKET,
      `There is no paper \`${values.paper}\` for a packet.`,
      'Papers'
    )
    const contents = packetOf(await packetParts(project, tree))
    const state = stateOf(tree, contents.items)
    const roles = rolesFor(Object.keys(project.loaded.words))
    const reviewFile = `${tree.id}.review.yaml`
    const name = `${tree.id}.packet`
    const html = packetHtml({
      packet: contents,
      paper,
      fonts: paperFonts(),
      itemsFingerprint: state.items,
      reviewFile,
      roles,
      mustSign: MUST_SIGN,
      today: terminal.today
    })
    makeFolder(values.out)
    await printed(name, html, values.out, terminal)
    // The browser gives the page back in its own spelling: the file is what was made here.
    writeWhole(join(values.out, `${name}.html`), html)
    say(terminal.output, `${name}.html  ${countOf(contents.items.length, 'item')} to decide`)
    keepReview(join(values.out, reviewFile), reviewTemplate(state, contents.items, roles), terminal)
    return 0
  }
}

/** Prints the page where there is a browser; without one the HTML is the whole packet. */
async function printed(
  name: string,
  html: string,
  folder: string,
  terminal: Terminal
): Promise<void> {
  if (browserProgram() === undefined) {
    say(terminal.errors, 'No PDF: it needs Chromium or Chrome. The HTML prints the same.')
    return
  }
  await printPages([{ name, html, svg: null }], folder, terminal.today, () =>
    say(terminal.output, `${name}.pdf`)
  )
}

/** Somebody may have filled it in: what is there stays. */
function keepReview(file: string, text: string, terminal: Terminal): void {
  if (existsSync(file)) {
    const same = readFileSync(file, 'utf8') === text
    if (!same) say(terminal.errors, `${file} is there already and was left as it is.`)
    return
  }
  writeWhole(file, text)
  say(terminal.output, file)
}

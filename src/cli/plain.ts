import { join } from 'node:path'
import {
  languageFile,
  type PlainFile,
  type PlainIndex,
  sharedFiles,
  treeFiles
} from '../paper/plain-files.ts'
import { unfold } from '../plain/unfold.ts'
import { must } from '../tree/must.ts'
import type { Tree } from '../tree/tree.ts'
import { isDraft, languagesOf } from '../words/languages.ts'
import { createWords, SOURCE_TAG, type Words } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { languageNamed } from './named-one.ts'
import { PLAIN_MANUAL } from './plain-manual.ts'
import type { Project } from './read-project.ts'
import { say } from './terminal.ts'
import { treeNamed } from './tree-named.ts'
import { wordsOfTree } from './words-of-tree.ts'
import { makeFolder, writeWhole } from './write-file.ts'

/** `jarside plain`: trees as pages that walk by links, without a script. */
export const plain: Command = {
  name: 'plain',
  summary: 'write trees as pages that need no script',
  manual: PLAIN_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      all: { type: 'boolean', default: false },
      lang: { type: 'string', multiple: true, default: [] },
      out: { type: 'string' },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const project = await open(values.in)
    if (values.all && positionals.length > 0) throw new BadUse('Give `--all` or a tree, not both.')
    const one = values.all ? null : treeNamed(project, positionals, terminal)
    if (one === undefined) return 1
    if (values.out === undefined) throw new BadUse('Say where to: `--out <folder>`.')
    const tags = tagsNamed(project, values.lang)
    const counts = new Map<string, { files: number; bytes: number }>()
    for (const { name, text } of plainFiles(
      project,
      one === null ? shownTrees(project) : [one],
      tags,
      terminal.today
    )) {
      const file = join(values.out, name)
      makeFolder(join(file, '..'))
      writeWhole(file, text)
      const [tag = '', tree = '', rest] = name.split('/')
      const of = rest === undefined ? '.' : `${tag}/${tree}`
      const before = counts.get(of) ?? { files: 0, bytes: 0 }
      counts.set(of, { files: before.files + 1, bytes: before.bytes + Buffer.byteLength(text) })
    }
    for (const [of, { files, bytes }] of counts) {
      say(terminal.output, `${of}  ${files} files  ${(bytes / 1e6).toFixed(1)} MB`)
    }
    return 0
  }
}

/** The trees that are given out, in their order. */
export const shownTrees = ({ loaded }: Project): readonly Tree[] =>
  loaded.trees
    .filter(({ id }) => !Object.hasOwn(loaded.withdrawn, id))
    .toSorted((a, b) => (a.order ?? loaded.trees.length) - (b.order ?? loaded.trees.length))

/** Every plain page of some trees in some languages, one by one. */
export function* plainFiles(
  { loaded, office }: Project,
  trees: readonly Tree[],
  tags: readonly string[],
  today: Date
): Generator<PlainFile> {
  const languages = languagesOf(loaded.words).filter(({ tag }) => tags.includes(tag))
  const index: PlainIndex = { languages, office, today }
  const screen = (tag: string): Words => createWords(loaded.words, tag)
  yield* sharedFiles(screen(must(tags[0], 'language')), index)
  for (const tag of tags) {
    const words = screen(tag)
    const entries = trees.map(({ id }) => ({
      id,
      title: words.t(`${id}:title`),
      about: words.t(`${id}:about`)
    }))
    yield languageFile(words, entries, index)
  }
  for (const tree of trees) {
    const walk = unfold(tree)
    const { texts, sources } = wordsOfTree(tree, loaded)
    for (const tag of tags) {
      const english = isDraft(tag) ? createWords(texts, SOURCE_TAG) : null
      const words = createWords(texts, tag)
      yield* treeFiles({ tree, walk, words, english, sources, office, today }, languages)
    }
  }
}

function tagsNamed({ loaded }: Project, named: readonly string[]): readonly string[] {
  const every = languagesOf(loaded.words).map(({ tag }) => tag)
  return named.length > 0 ? named.map(tag => languageNamed(tag, every)) : every
}

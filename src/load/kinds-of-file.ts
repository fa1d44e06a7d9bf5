/** What stands once in `shared/` for all trees, and what a tree alone has of it in its own folder. */
const SHARED_OUT = ['observations', 'steps', 'said', 'look-alikes', 'follow-ups'] as const
export type SharedOut = (typeof SHARED_OUT)[number]

/** What a file is by where it stands; null where nothing is read. */
export type FileKind =
  | {
      readonly kind:
        | 'verdicts'
        | 'sources'
        | 'office'
        | 'withdrawn'
        | 'fault-scores'
        | 'translator-notes'
        | 'long-words'
    }
  | { readonly kind: SharedOut }
  | { readonly kind: 'glossary' | 'reviews'; readonly tag: string }
  | {
      readonly kind:
        | 'piece'
        | 'tree'
        | 'rules'
        | 'rows'
        | 'shared-rules'
        | 'shared-rows'
        | 'know-how'
        | 'practice'
      readonly stem: string
    }
  | { readonly kind: 'edition'; readonly stem: string; readonly edition: number }
  | { readonly kind: 'words'; readonly tag: string; readonly stem: string }

const NAME = '[a-z][a-z0-9]*(?:-[a-z0-9]+)*'
const WHERE: readonly (readonly [RegExp, (parts: readonly string[]) => FileKind])[] = [
  [/^shared\/verdicts\.yaml$/, () => ({ kind: 'verdicts' })],
  [/^shared\/sources\.yaml$/, () => ({ kind: 'sources' })],
  ...SHARED_OUT.map(
    kind => [new RegExp(`^(?:shared|trees/${NAME})/${kind}\\.yaml$`), () => ({ kind })] as const
  ),
  [
    /^shared\/glossary\/([a-z]{2,3}(?:-[A-Za-z0-9]{2,8})*)\.yaml$/,
    ([, tag = '']) => ({ kind: 'glossary', tag })
  ],
  [
    /^shared\/reviews\/([a-z]{2,3}(?:-[A-Za-z0-9]{2,8})*)\.json$/,
    ([, tag = '']) => ({ kind: 'reviews', tag })
  ],
  [/^shared\/translator-notes\.yaml$/, () => ({ kind: 'translator-notes' })],
  [/^shared\/long-words\.yaml$/, () => ({ kind: 'long-words' })],
  [/^public\/office\.json$/, () => ({ kind: 'office' })],
  [/^trees\/withdrawn\.json$/, () => ({ kind: 'withdrawn' })],
  [/^trees\/fault-scores\.json$/, () => ({ kind: 'fault-scores' })],
  [new RegExp(`^shared/pieces/(${NAME})\\.yaml$`), ([, stem = '']) => ({ kind: 'piece', stem })],
  [new RegExp(`^trees/(${NAME})/rules\\.yaml$`), ([, stem = '']) => ({ kind: 'rules', stem })],
  [new RegExp(`^trees/(${NAME})/tree\\.yaml$`), ([, stem = '']) => ({ kind: 'tree', stem })],
  [new RegExp(`^trees/(${NAME})/rows\\.yaml$`), ([, stem = '']) => ({ kind: 'rows', stem })],
  [
    new RegExp(`^shared/rules/(${NAME})\\.yaml$`),
    ([, stem = '']) => ({ kind: 'shared-rules', stem })
  ],
  [
    new RegExp(`^shared/rows/(${NAME})\\.yaml$`),
    ([, stem = '']) => ({ kind: 'shared-rows', stem })
  ],
  [
    new RegExp(`^shared/know-how/(${NAME})\\.yaml$`),
    ([, stem = '']) => ({ kind: 'know-how', stem })
  ],
  [
    new RegExp(`^shared/practice/(${NAME})\\.yaml$`),
    ([, stem = '']) => ({ kind: 'practice', stem })
  ],
  [
    new RegExp(`^trees/editions/(${NAME})@([1-9]\\d{0,5})\\.json$`),
    ([, stem = '', edition = '']) => ({ kind: 'edition', stem, edition: Number(edition) })
  ],
  [
    new RegExp(`^locales/([a-z]{2,3}(?:-[A-Za-z0-9]{2,8})*)/(${NAME})\\.json$`),
    ([, tag = '', stem = '']) => ({ kind: 'words', tag, stem })
  ]
]

/** What the file at that place is read as. */
export function fileKind(path: string): FileKind | null {
  for (const [where, kind] of WHERE) {
    const parts = where.exec(path)
    if (parts) return kind(parts)
  }
  return null
}

/** The id of the tree whose file stands at that place; null for any other file. */
export function treeAt(path: string): string | null {
  const kind = fileKind(path)
  return kind?.kind === 'tree' ? kind.stem : null
}

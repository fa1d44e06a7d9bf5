import { z } from 'zod'
import { groupOf } from '../tree/group.ts'
import type { FileKind } from './kinds-of-file.ts'
import { followUpsSchema } from './schemas/follow-ups.ts'
import { glossarySchema } from './schemas/glossary.ts'
import { knowHowSchema } from './schemas/know-how.ts'
import { LOCALE_SCHEMAS, treeWordsSchema } from './schemas/locales.ts'
import { longWordsSchema } from './schemas/long-words.ts'
import { lookAlikesSchema } from './schemas/look-alikes.ts'
import { observationsSchema } from './schemas/observations.ts'
import { officePackSchema } from './schemas/office-pack.ts'
import { practiceSchema } from './schemas/practice.ts'
import { reviewFileSchema } from './schemas/review-file.ts'
import { rowsSchema } from './schemas/rows.ts'
import { rulesSchema } from './schemas/rules.ts'
import { saidSchema } from './schemas/said.ts'
import { sourcesSchema } from './schemas/sources.ts'
import { doesSchema } from './schemas/steps.ts'
import { translatorNotesSchema } from './schemas/translator-notes.ts'
import { pieceSchema, treeSchema } from './schemas/tree.ts'
import { verdictsSchema } from './schemas/verdicts.ts'

/** The format of one kind of authored file, as an editor can read it. */
export interface JsonSchema {
  /** The name of its file. */
  readonly name: string
  /** The authored files that it describes. */
  readonly describes: string
  /** Its text: draft 2020-12. */
  readonly text: string
}

interface Format {
  readonly stem: string
  readonly describes: string
  readonly title: string
  readonly schema: z.ZodType
}

type Group = Record<string, unknown>

const yaml = (stem: string, describes: string, title: string, schema: z.ZodType): Format => ({
  stem,
  describes: `${describes}.yaml`,
  title,
  schema
})
const words = (stem: string, file: string, schema: z.ZodType): Format => ({
  stem: `locale-${stem}`,
  describes: `locales/<language>/${file}.json`,
  title: `Words in one language: ${stem}`,
  schema
})

const FORMATS: readonly Format[] = [
  yaml('observations', 'shared/observations', 'Every observation there is', observationsSchema),
  yaml('verdicts', 'shared/verdicts', 'The verdicts of each track', verdictsSchema),
  yaml('steps', 'shared/steps', 'What every step does', doesSchema),
  yaml('sources', 'shared/sources', 'Every source that is cited', sourcesSchema),
  yaml('look-alikes', 'shared/look-alikes', 'What callers mix up', lookAlikesSchema),
  yaml('follow-ups', 'shared/follow-ups', 'What callers ask afterwards', followUpsSchema),
  yaml('know-how', 'shared/know-how/<ferment>', 'Answers to how-to questions', knowHowSchema),
  yaml('practice', 'shared/practice/<tree>', 'Invented callers to practice on', practiceSchema),
  yaml('said', 'shared/said', 'More of what callers say', saidSchema),
  yaml(
    'glossary',
    'shared/glossary/<language>',
    'What English and a language agree on',
    glossarySchema
  ),
  yaml(
    'translator-notes',
    'shared/translator-notes',
    'What translators must know beside the English',
    translatorNotesSchema
  ),
  yaml('long-words', 'shared/long-words', 'Long words that advice needs', longWordsSchema),
  yaml('piece', 'shared/pieces/<id>', 'Questions that several trees copy in', pieceSchema),
  yaml('tree', 'trees/<id>/tree', 'One tree', treeSchema),
  yaml('rules', 'trees/<id>/rules', 'The rules of one tree', rulesSchema),
  yaml('rows', 'trees/<id>/rows', 'Rows of the guidance', rowsSchema),
  yaml('review', '<tree>.review', 'What a reviewer decided of a packet', reviewFileSchema),
  {
    stem: 'office',
    describes: 'public/office.json',
    title: 'Numbers, hours and referrals of one office',
    schema: officePackSchema
  },
  ...Object.entries(LOCALE_SCHEMAS).map(([stem, schema]) => words(stem, stem, schema)),
  words('tree', '<id>', treeWordsSchema)
]

/** The schemas of all authored formats, made of those that loading checks with. */
export function jsonSchemas(): readonly JsonSchema[] {
  return FORMATS.map(({ stem, describes, title, schema }) => {
    const json: Group = z.toJSONSchema(schema, { io: 'input', override: withoutNoise })
    const { $schema, ...rest } = describes.endsWith('.json') ? withSchemaKey(json) : json
    const text = JSON.stringify({ $schema, title, description: describes, ...rest }, null, 2)
    return { name: `${stem}.schema.json`, describes, text: `${text}\n` }
  })
}

/** The file that holds the schema for a kind of file; null for what nobody writes by hand. */
export function schemaFileFor(file: FileKind): string | null {
  if (
    file.kind === 'edition' ||
    file.kind === 'reviews' ||
    file.kind === 'withdrawn' ||
    file.kind === 'fault-scores'
  )
    return null
  if (file.kind === 'shared-rules') return 'rules.schema.json'
  if (file.kind === 'shared-rows') return 'rows.schema.json'
  if (file.kind !== 'words') return `${file.kind}.schema.json`
  return `locale-${Object.hasOwn(LOCALE_SCHEMAS, file.stem) ? file.stem : 'tree'}.schema.json`
}

/** That a whole number is one that a computer can count tells an author nothing. */
function withoutNoise({ jsonSchema }: { jsonSchema: { maximum?: number } }): void {
  if (jsonSchema.maximum === Number.MAX_SAFE_INTEGER) delete jsonSchema.maximum
}

/** A file of JSON names its schema in a key, where one of YAML does so in a comment. */
function withSchemaKey(schema: Group): Group {
  const own = { $schema: { type: 'string', description: 'Where this schema stands, for editors.' } }
  const { properties, propertyNames } = schema
  return {
    ...schema,
    properties: { ...own, ...groupOf(properties) },
    ...(propertyNames !== undefined && {
      propertyNames: { anyOf: [{ const: '$schema' }, propertyNames] }
    })
  }
}

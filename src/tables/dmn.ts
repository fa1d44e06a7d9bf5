import { must } from '../tree/must.ts'
import type { Tree } from '../tree/tree.ts'
import { aboutOf, describe } from './describe.ts'
import { quoted, unaryTest } from './feel.ts'
import { decisionName, outputName, variableName } from './names.ts'
import type { Input, Table, TableRow } from './table.ts'
import { element, escaped as text } from './xml.ts'

/** OMG DMN 1.3. */
export const DMN_NAMESPACE = 'https://www.omg.org/spec/DMN/20191111/MODEL/'

/** A source as it is cited in a document. */
export interface Cited {
  readonly title: string
  readonly address: string | null
}

/**
 * Tables as one DMN 1.3 document: a decision with hit policy UNIQUE for each, every answer by its id,
 * the sources of each row as its annotation and as knowledge sources of the document.
 */
export function dmnOf(
  tree: Tree,
  tables: readonly Table[],
  sources: Readonly<Record<string, Cited>>
): string {
  const inputs = new Map(
    tables.flatMap(table => table.inputs.map(input => [variableName(input), input] as const))
  )
  const cited = new Set(tables.flatMap(({ rows }) => rows.flatMap(({ because }) => because)))
  const body = [
    element('description', {}, text(aboutOf(tree))),
    ...[...inputs].map(([name, input]) => inputElement(name, input)),
    ...[...cited].map(id => sourceElement(id, sources[id])),
    ...tables.map((table, i) => decisionElement(table, i + 1))
  ]
  const definitions = element(
    'definitions',
    {
      xmlns: DMN_NAMESPACE,
      id: `tree_${tree.id}`,
      name: `${tree.id} edition ${tree.edition}`,
      namespace: `urn:jarside:tree:${tree.id}:${tree.edition}`,
      exporter: 'jarside'
    },
    ...body.map(part => `\n${part}`),
    '\n'
  )
  return `<?xml version="1.0" encoding="UTF-8"?>\n${definitions}\n`
}

function inputElement(name: string, input: Input): string {
  const variable = element('variable', { id: `variable_${name}`, name, typeRef: typeOf(input) })
  return element('inputData', { id: `input_${name}`, name }, variable)
}

function sourceElement(id: string, source: Cited | undefined): string {
  return element('knowledgeSource', {
    id: `source_${id}`,
    name: source?.title ?? id,
    locationURI: source?.address ?? undefined
  })
}

function decisionElement(table: Table, index: number): string {
  const name = decisionName(table)
  const cited = new Set(table.rows.flatMap(({ because }) => because))
  return element(
    'decision',
    { id: `decision_${name}`, name },
    element('description', {}, text(describe(table))),
    element('variable', { id: `variable_of_${name}`, name, typeRef: 'string' }),
    ...table.inputs.map((input, i) =>
      element(
        'informationRequirement',
        { id: `needs_${name}_${i + 1}` },
        element('requiredInput', { href: `#input_${variableName(input)}` })
      )
    ),
    ...[...cited].map((id, i) =>
      element(
        'authorityRequirement',
        { id: `rests_${name}_${i + 1}` },
        element('requiredAuthority', { href: `#source_${id}` })
      )
    ),
    tableElement(name, table, index)
  )
}

function tableElement(name: string, table: Table, index: number): string {
  const { inputs, outputs, rows, lens } = table
  const values = (tag: string, id: string, all: readonly string[]) =>
    element(tag, { id }, element('text', {}, text(all.map(quoted).join(','))))
  return element(
    'decisionTable',
    { id: `table_${name}`, hitPolicy: 'UNIQUE' },
    ...inputs.map((input, i) =>
      element(
        'input',
        { id: `column_${name}_${i + 1}`, label: labelOf(input) },
        element(
          'inputExpression',
          { id: `expression_${name}_${i + 1}`, typeRef: typeOf(input) },
          element('text', {}, text(variableName(input)))
        ),
        ...(input.kind === 'number'
          ? []
          : [values('inputValues', `answers_${name}_${i + 1}`, input.values)])
      )
    ),
    element(
      'output',
      { id: `output_${name}`, name: outputName(lens), typeRef: 'string' },
      values('outputValues', `outcomes_${name}`, outputs)
    ),
    element('annotation', { name: 'sources' }),
    ...rows.map((row, i) => `\n${ruleElement(`${index}_${i + 1}`, table, row)}`)
  )
}

// Short ids: they stand on every cell.
function ruleElement(id: string, { outputs }: Table, { cells, level, because }: TableRow): string {
  const entry = (tag: string, key: string, said: string) =>
    element(tag, { id: key }, element('text', {}, text(said)))
  return element(
    'rule',
    { id: `r${id}` },
    ...cells.map((cell, i) => entry('inputEntry', `c${id}_${i + 1}`, unaryTest(cell))),
    entry('outputEntry', `o${id}`, quoted(must(outputs[level], 'output'))),
    element('annotationEntry', {}, element('text', {}, text(because.join(', '))))
  )
}

const typeOf = (input: Input): string => (input.kind === 'number' ? 'number' : 'string')

function labelOf(input: Input): string {
  const of = input.kind === 'number' ? input.end : input.sign
  return of === null ? input.observation : `${input.observation}: ${of}`
}

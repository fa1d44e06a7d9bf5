import { Ajv2020 } from 'ajv/dist/2020.js'
import { parse } from 'yaml'
import { SHAPE_FINDINGS } from '../../src/findings/catalogue/shape.ts'
import { jsonSchemas, schemaFileFor } from '../../src/load/json-schema.ts'
import { fileKind } from '../../src/load/kinds-of-file.ts'
import type { AuthoredFile } from '../../src/load/load.ts'
import { readProject } from '../../src/load/project.ts'
import { openReport } from '../../src/load/report.ts'

// Second opinion: Ajv (https://ajv.js.org), which had no part in making the schemas.
// In draft 2020-12 `format` only tells what is meant; what is refused is said by patterns.
const ajv = new Ajv2020({
  strict: true,
  allErrors: true,
  validateFormats: false,
  allowUnionTypes: true
})
// Shown by editors in place of the pattern; it refuses nothing.
ajv.addVocabulary(['patternErrorMessage'])
for (const { name, text } of jsonSchemas()) ajv.addSchema(JSON.parse(text), name)

/** What an outside validator has against a value. */
export function refusals(name: string, value: unknown) {
  const valid = ajv.getSchema(name)
  if (!valid) throw new Error(`there is no schema ${name}`)
  valid(value)
  return (valid.errors ?? []).map(({ instancePath, keyword }) => ({
    instance: instancePath,
    keyword
  }))
}

/** What an outside validator has against a schema itself, by the rules of its draft. */
export function schemaProblems(name: string): readonly string[] {
  const text = jsonSchemas().find(each => each.name === name)?.text ?? 'null'
  ajv.validateSchema(JSON.parse(text))
  return (ajv.errors ?? []).map(error => ajv.errorsText([error]))
}

/** The schema of the file at that place; null for what nobody writes by hand. */
export function schemaOf(path: string): string | null {
  const kind = fileKind(path)
  return kind && schemaFileFor(kind)
}

/** What an outside validator has against an authored file. */
export const refusalsOf = ({ path, text }: AuthoredFile) =>
  refusals(schemaOf(path) ?? '', parse(text))

/** What loading has against the shape of an authored file. */
export function shapeFindings(file: AuthoredFile) {
  const report = openReport()
  const tree = { path: 'trees/jar/tree.yaml', text: '' }
  readProject(file.path.startsWith('trees/') ? [file] : [file, tree], report)
  return report.findings.filter(
    ({ code, place }) => Object.hasOwn(SHAPE_FINDINGS, code) && place?.file === file.path
  )
}

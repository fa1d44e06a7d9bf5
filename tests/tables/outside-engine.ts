import { createRequire } from 'node:module'
import { DMN_NAMESPACE } from '../../src/tables/dmn.ts'

// An engine from the registry that knows nothing of this project: @hbtgmbh/dmn-eval-js, which reads
// DMN 1.1. The namespace is all that is changed for it; it has no word for annotations and skips them.
const DMN_1_1 = 'http://www.omg.org/spec/DMN/20151101/dmn.xsd'

/** What the engine makes of a document: decisions by id. */
type Decisions = Readonly<Record<string, unknown>>
export type Context = Readonly<Record<string, string | number | undefined>>

interface Engine {
  parseDmnXml(xml: string): Promise<Decisions>
  evaluateDecision(
    id: string,
    decisions: Decisions,
    context: Context
  ): Readonly<Record<string, string | undefined>>
}

interface Built {
  build(context: object): (value: unknown) => unknown
}

interface Grammar {
  parse(text: string, options: { readonly startRule: string }): Built
}

const require = createRequire(import.meta.url)
const engine: Engine = require('@hbtgmbh/dmn-eval-js').decisionTable
const grammar: Grammar = require('@hbtgmbh/dmn-eval-js/dist/feel')
const log: { getLogger(name: string): { setLevel(level: string): void } } = createRequire(
  require.resolve('@hbtgmbh/dmn-eval-js')
)('loglevel')

/**
 * Opens a document in the engine. The engine parses each cell anew and builds it anew at each evaluation,
 * two milliseconds a row; here it does so once for each text, and remembers what it said of a value. `remember: false` leaves it as it comes.
 */
export async function openInEngine(
  xml: string,
  { remember }: { readonly remember: boolean }
): Promise<(decision: string, context: Context) => string | undefined> {
  log.getLogger('dmn-eval-js').setLevel('error')
  const { parse } = grammar
  const { warn, error } = console
  if (remember) grammar.parse = remembering(parse)
  // It complains of each annotation, on either.
  console.warn = () => undefined
  console.error = () => undefined
  try {
    const decisions = await engine.parseDmnXml(xml.replaceAll(DMN_NAMESPACE, DMN_1_1))
    return (decision, context) => {
      const given = remember ? Object.create(context) : { ...context }
      const said = engine.evaluateDecision(decision, decisions, given)
      return Object.values(said)[0]
    }
  } finally {
    grammar.parse = parse
    console.warn = warn
    console.error = error
  }
}

function remembering(parse: Grammar['parse']): Grammar['parse'] {
  const known = new Map<string, Built>()
  return (text, options) => {
    const key = `${options.startRule} ${text}`
    const made = known.get(key) ?? once(text, parse(text, options), options.startRule)
    known.set(key, made)
    return made
  }
}

/** A test or an outcome of ours is made of literals, and an input is a name: nothing else counts. */
function once(text: string, parsed: Built, startRule: string): Built {
  if (startRule === 'SimpleUnaryTests') {
    const test = parsed.build({})
    const said = new Map<unknown, unknown>()
    return {
      build: () => value => {
        if (!said.has(value)) said.set(value, test(value))
        return said.get(value)
      }
    }
  }
  if (/^\w+$/.test(text)) {
    return { build: context => [(context as Record<string, unknown>)[text]] as never }
  }
  const outcome = parsed.build({})
  return { build: () => outcome }
}

import { loadProject } from '../src/cli/read-project.ts'
import { diagramsOf, TreeDiagrams } from '../src/diagrams/tree-diagrams.ts'
import { answerSets, prove } from '../src/prove/prove.ts'
import { median, timed } from './figures.mjs'

const RUNS = 5
const SIDES = ['person', 'container', 'batch', 'use']

/** What reading, compiling and proving the trees takes in this Node.js. */
export async function measureEngine() {
  const loads = []
  const projects = []
  for (let run = 0; run < RUNS; run++) {
    const { ms, made } = await timed(() => loadProject())
    loads.push(ms)
    projects.push(made.loaded)
  }
  const trees = {}
  for (const [index, { id }] of projects[0].trees.entries()) {
    // Each run has a tree of its own: what is compiled for one is kept with it.
    trees[id] = await measureTree(
      projects.map(({ trees, places, sources }) => ({ tree: trees[index], places, sources }))
    )
  }
  return { runs: RUNS, loadMs: median(loads), trees }
}

async function measureTree(copies) {
  const compiles = []
  const proofs = []
  for (const { tree, places, sources } of copies) {
    const compile = await timed(() => {
      const compiled = new TreeDiagrams(tree)
      for (const side of SIDES) compiled.of(side)
    })
    compiles.push(compile.ms)
    proofs.push(await timed(() => prove(tree, places[tree.id], sources)))
  }
  const [{ tree }] = copies
  const properties = proofs[0].made
  return {
    compileMs: median(compiles),
    proveMs: median(proofs.map(({ ms }) => ms)),
    properties: properties.length,
    proved: properties.filter(({ standing }) => standing === 'proved').length,
    vertices: diagramsOf(tree).diagrams.count,
    questions: Object.keys(tree.questions).length,
    // A string: too large for a number to hold exactly.
    answerSets: `${answerSets(tree)}`
  }
}

import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { cpus, loadavg } from 'node:os'
import { join } from 'node:path'
import { root } from '../.ci/install.mjs'
import { proofRows } from './proof-rows.mjs'

const FOLDER = join(root, 'bench/measured')
const PAGE = 'docs/measured.md'

/** Each part with its title, in the order of the page; `rows`: its figures as what, measured and goal. */
const PARTS = {
  page: { title: 'The page', rows: pageRows },
  commands: { title: 'The command, with a warm cache', rows: commandRows },
  science: { title: 'The models', rows: scienceRows },
  prove: { title: 'The proofs', rows: proofRows },
  sheets: { title: 'Sheets on paper', rows: sheetRows },
  tally: { title: 'The logs of several desks', rows: tallyRows },
  quarter: { title: 'A report in the browser', rows: quarterRows }
}

/** Keeps what was measured of one part, and writes the page anew; gives the page's path. */
export function record(part, figures) {
  const kept = {
    on: new Date().toISOString().slice(0, 10),
    machine: { node: process.version, cores: cpus().length, load: Math.round(loadavg()[1]) },
    rows: PARTS[part].rows(figures).map(row => row.filter(cell => cell !== undefined))
  }
  writeFileSync(join(FOLDER, `${part}.json`), recordText(kept))
  writeFileSync(join(root, PAGE), measuredPage(recorded()))
  return PAGE
}

/** A row to a line, so that one figure that changes is one line of a difference. */
function recordText({ rows, ...rest }) {
  const head = Object.entries(rest).map(
    ([key, value]) => `  ${JSON.stringify(key)}: ${spaced(value)},\n`
  )
  const lines = rows.map(row => `    [${row.map(cell => JSON.stringify(cell)).join(', ')}]`)
  return `{\n${head.join('')}  "rows": [\n${lines.join(',\n')}\n  ]\n}\n`
}

const spaced = value =>
  typeof value === 'object'
    ? `{ ${Object.entries(value)
        .map(([key, one]) => `${JSON.stringify(key)}: ${JSON.stringify(one)}`)
        .join(', ')} }`
    : JSON.stringify(value)

/** What is kept of each part, from its last recording. */
export function recorded() {
  return Object.fromEntries(
    readdirSync(FOLDER).map(file => [
      file.replace('.json', ''),
      JSON.parse(readFileSync(join(FOLDER, file), 'utf8'))
    ])
  )
}

/** The page of all measured figures, as Markdown. */
export function measuredPage(records) {
  const sections = Object.entries(PARTS).flatMap(([part, { title }]) =>
    records[part] === undefined ? [] : [sectionOf(part, title, records[part])]
  )
  return `# Measured figures

Written by \`npm run -s bench -- <part> --record\` from what is kept in \`bench/measured\`: each part stands as it was last recorded, with its day and its machine. What each figure is: [\`bench/README.md\`](../bench/README.md). Compare only figures of one machine; on a busy one times are longer. What callers have to read is measured by \`npm run -s reading\`: [\`reading.md\`](reading.md).

${sections.join('\n')}`
}

function sectionOf(part, title, { on, machine: { node, cores, load }, note, rows }) {
  const busy = load === undefined ? '' : ` with a load of ${load} by other work`
  const where = `Node.js ${node.replace('v', '')}, ${cores} cores${busy}`
  const lines = [
    ['figure', 'measured', 'goal'],
    ...rows.map(row => ['', '', ''].map((_, i) => row[i] ?? ''))
  ]
  const widths = [0, 1, 2].map(column => Math.max(3, ...lines.map(line => line[column].length)))
  const written = lines.map(
    line => `| ${line.map((cell, column) => cell.padEnd(widths[column])).join(' | ')} |`
  )
  const rule = `| ${widths.map(width => '-'.repeat(width)).join(' | ')} |`
  const [head, ...body] = written
  return `## ${title}

\`npm run -s bench -- ${part}\`, ${on}: ${where}.${note === undefined ? '' : ` ${note}`}

${[head, rule, ...body].join('\n')}
`
}

const kilobytes = bytes => `${(bytes / 1000).toFixed(1)} kB`

function pageRows({ firstQuestion, embedded, answering, engine }) {
  const { bytes } = firstQuestion
  const trees = Object.values(engine.trees)
  const sum = of => trees.reduce((all, tree) => all + of(tree), 0)
  return [
    ['everything for the first question', `${kilobytes(bytes.all)} in ${bytes.requests} requests`],
    ['there before the question stood', kilobytes(bytes.beforeTheQuestion)],
    ['first screen, slow network and CPU', `${firstQuestion.slowNetworkFirstScreenMs} ms`],
    ['first question, slow network and CPU', `${firstQuestion.slowNetworkMs} ms`, '2,000 ms'],
    ['first question, slow CPU alone', `${firstQuestion.cpuOnlyMs} ms`],
    ['embedded: there before the question', kilobytes(embedded.bytes.beforeTheQuestion)],
    ['embedded: first question, slow network and CPU', `${embedded.slowNetworkMs} ms`],
    ['answer to next screen, slow CPU, median', `${answering.medianMs} ms`],
    ['the same, 95th percentile', `${answering.p95Ms} ms`],
    ['the same in times of drawing nothing', `${answering.timesIdle}`, `${answering.goal}`],
    ['load all files', `${engine.loadMs} ms`],
    ['compile the diagrams of all trees', `${Math.round(sum(tree => tree.compileMs))} ms`],
    ['prove all trees', `${Math.round(sum(tree => tree.proveMs))} ms`, '1,000 ms'],
    ['properties proved', `${sum(tree => tree.proved)} of ${sum(tree => tree.properties)}`]
  ]
}

/** What each command may take: in times of a Node.js that does nothing, or in milliseconds. */
const COMMAND_GOALS = {
  list: '4 times',
  cites: '4 times',
  walkFinished: '4 times',
  walkUnfinished: '4 times',
  checkOneTree: '1,500 ms'
}

function commandRows({ nothingMs, commands }) {
  return [
    ['`node -e 0`', `${nothingMs} ms`],
    ...Object.entries(commands).map(([name, { ms, timesNothing }]) => [
      COMMAND_WORDS[name] ?? name,
      `${timesNothing} times, ${ms} ms`,
      COMMAND_GOALS[name]
    ])
  ]
}

const COMMAND_WORDS = {
  version: '`--version`',
  list: '`list`',
  cites: '`cites`',
  walkFinished: '`walk`, finished',
  walkUnfinished: '`walk`, unfinished',
  checkOneTree: '`check` of one tree'
}

function scienceRows({ mixMs, mixChartMs, courseMs }) {
  return [
    ['one interval of a fresh mix, 243 corners', `${mixMs} ms`, '2 ms'],
    ['its chart, when the starter changes', `${mixChartMs} ms`],
    ['a course of acidity', `${courseMs} ms`]
  ]
}

function sheetRows({ oneSeconds, oneSecondsLeastAndMost, allSheets, allSeconds, goal }) {
  return [
    ['one sheet, from the command to its PDF, median', `${oneSeconds} s`, `${goal.one} s`],
    ['the same, least and most', `${oneSecondsLeastAndMost.join(' to ')} s`],
    [`all ${allSheets} sheets of all trees in two languages`, `${allSeconds} s`, `${goal.all} s`]
  ]
}

function tallyRows({ records, seconds, processorSeconds, megabytes, goal }) {
  return [
    ['records added up', records.toLocaleString('en-US')],
    ['on the clock', `${seconds} s`, `${goal.seconds} s`],
    ['of a processor', `${processorSeconds} s`],
    ['memory held at most', `${megabytes} MB`, `${goal.megabytes} MB`]
  ]
}

function quarterRows({ records, inTheQuarter, medianMs, timesMs, goalMs }) {
  return [
    ['records in the store', records.toLocaleString('en-US')],
    ['of them in the quarter', inTheQuarter.toLocaleString('en-US')],
    ['from the press to the painted report, median', `${medianMs} ms`, `${goalMs} ms`],
    ['the same, least and most', `${Math.min(...timesMs)} to ${Math.max(...timesMs)} ms`]
  ]
}

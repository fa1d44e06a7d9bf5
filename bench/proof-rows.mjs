/** What the bench of the prover measured, as rows of the page: what, measured, goal. `docs/proving-speed.md` explains them. */
export function proofRows({ shipped, beside, growth, stops }) {
  return [
    ['the kombucha jar, all properties: cold', milliseconds(shipped.coldMs), '1,000 ms'],
    ['the same, warm', milliseconds(shipped.ms)],
    ['its cases of properties', count(shipped.cases)],
    ['its vertices', count(shipped.vertices)],
    ...beside.flatMap(besideRows),
    ...growth.flatMap(growthRows),
    ...stops.map(stopRow)
  ]
}

function besideRows({ tree, questions, prover, force, generation, withAnswers }) {
  const of = tree === 'shipped' ? 'the kombucha jar' : `${questions} questions of three answers`
  const times = generation.ms === undefined ? null : Math.round(generation.ms / prover.coldMs)
  return [
    [`${of}: ${prover.rules} rules proved, cold`, milliseconds(prover.coldMs)],
    [`${of}: the same, warm`, milliseconds(prover.ms)],
    [`${of}: by brute force`, forceText(force)],
    [`${of}: paths generated, a state being its question`, ended(generation)],
    [`${of}: the same, a state being its answers`, ended(withAnswers)],
    ...(times === null
      ? []
      : [[`${of}: generating, in times of proving cold`, count(times), '10,000 at 12 questions']])
  ]
}

function growthRows({ observations, cases, exponent }) {
  const rows = cases.map(({ questions, ms, peakMB }) => [
    `${count(questions)} questions, ${observations} observations`,
    `${milliseconds(ms)}, ${peakMB} MB`,
    questions === 10_000 ? '5,000 ms, 512 MB' : undefined
  ])
  return [
    ...rows,
    [`growth with the questions, ${observations} observations`, `${exponent}`, '1.2']
  ]
}

function stopRow({ tree, questions, observations, diagrams, search }) {
  const shape = tree === 'shape' ? 'shipped shape' : 'hostile'
  const found = `${ended(diagrams)}, ${count(diagrams.vertices ?? 0)} vertices`
  const searched = search === undefined ? '' : `; by searching ${ended(search)}`
  return [
    `whole diagrams: ${shape}, ${count(questions)} questions, ${observations} observations`,
    `${found}${searched}`
  ]
}

const ended = ({ stopped, ms }) =>
  stopped === undefined ? milliseconds(ms) : `stopped by ${stopped}`

const forceText = ({ stopped, ms, sets, wouldTakeMs }) =>
  stopped === undefined
    ? milliseconds(ms)
    : `stopped; ${sets.toPrecision(2)} sets, at this rate ${years(wouldTakeMs)}`

const years = ms => {
  const all = ms / (365.25 * 86_400_000)
  return all < 1 ? milliseconds(ms) : `${all.toPrecision(2)} years`
}

const milliseconds = ms => `${ms < 10 ? ms.toFixed(1) : count(Math.round(ms))} ms`
const count = number => number.toLocaleString('en-US')

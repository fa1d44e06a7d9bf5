import { HOWEVER_IT_LOOKS } from '../tree/cautions.ts'
import type { LinkedTree } from './link-tree.ts'
import type { AuthoredProject } from './project.ts'
import type { FindingReport } from './report.ts'
import { textsIn, unmatched } from './texts.ts'
import { type Wanted, wantedTexts } from './wanted-texts.ts'

/** The language that authors write first. */
export const SOURCE_TAG = 'en'

/** Holds the English words against what is shown: all of it has words, and nothing else has. */
export function checkWords(
  project: AuthoredProject,
  linked: readonly LinkedTree[],
  paths: ReadonlySet<string>,
  report: FindingReport
): void {
  const all = wantedTexts(project, linked)
  const asked = ownObservations(all, linked)
  for (const [stem, wanted] of all) {
    const file = `locales/${SOURCE_TAG}/${stem}.json`
    if (!paths.has(file) && wanted.size > 0) {
      report.add('missing-file', null, { file, holds: `the English words of \`${stem}\`` })
    }
    const words = project.words.get(SOURCE_TAG)?.get(stem)
    if (!words) continue
    const keys = [...textsIn(words.value).keys()]
    checkMissing(wanted, keys, file, report)
    const optional = optionalTexts(stem, wanted, keys, project, asked.get(stem) ?? [])
    for (const { key, name, beside } of unmatched(keys, [...wanted.keys(), ...optional])) {
      const place = words.doc.place(key.split('.'))
      report.add('orphaned-text', place, { text: key, near: report.near(name, beside) })
    }
  }
}

function checkMissing(
  wanted: Wanted,
  keys: readonly string[],
  file: string,
  report: FindingReport
): void {
  for (const { key, name, beside } of unmatched(wanted.keys(), keys)) {
    const first = [...wanted].find(([text]) => text === key || text.startsWith(`${key}.`))
    const near = report.near(name, beside)
    report.add('missing-text', first?.[1] ?? null, { text: key, file, near })
  }
}

/** The texts that may stand in a file though nothing asks for them. */
function optionalTexts(
  stem: string,
  wanted: Wanted,
  keys: readonly string[],
  { verdicts, trees }: AuthoredProject,
  ofTree: readonly string[]
): readonly string[] {
  // A drawing may be described before any question shows it.
  if (stem === 'pictures') return keys
  if (stem === 'observations') {
    return [...wanted.keys()].flatMap(besideText)
  }
  if (stem === 'verdicts') {
    const ids = new Set([...wanted.keys()].map(key => key.split('.')[0]))
    return keys.filter(key => ids.has(key.split('.')[0]))
  }
  if (!trees.has(stem) || !verdicts) return []
  const { person, container, batch } = verdicts.value
  const names = new Set(Object.keys({ ...person, ...container, ...batch }))
  const own = keys.filter(key => {
    const [first, second = ''] = key.split('.')
    // What a sheet says where no jar was looked at.
    const general = first === 'use' && second.endsWith('-in-general')
    const optional =
      ['rules-of-thumb', 'card'].includes(String(first)) || key === `cautions.${HOWEVER_IT_LOOKS}`
    return general || optional || (first === 'verdicts' && names.has(second))
  })
  return [...own, ...ofTree]
}

/** By tree, what it may say of its own observations in place of the common words. */
function ownObservations(
  wanted: ReadonlyMap<string, Wanted>,
  linked: readonly LinkedTree[]
): ReadonlyMap<string, readonly string[]> {
  const common = [...(wanted.get('observations')?.keys() ?? [])]
  return new Map(
    linked.map(({ tree }) => [
      tree.id,
      common
        .filter(key => Object.hasOwn(tree.observations, key.split('.')[0] ?? ''))
        .flatMap(key => [key, ...besideText(key)])
        .map(key => `observations.${key}`)
    ])
  )
}

/** What may be said beside a text: a hint to an answer, and one line on all signs of a screen. */
function besideText(key: string): readonly string[] {
  const beside = key.replace(/\.label$/, '.hint').replace(/\.none$/, '.sweep')
  return beside === key ? [] : [beside]
}

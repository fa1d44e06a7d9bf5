import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Diagrams } from '../../src/diagrams/diagram.ts'
import { spaceOf } from '../../src/diagrams/space.ts'
import { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import type { LedgerSource } from '../../src/prove/property.ts'
import { PROPERTIES, prove, proveWith } from '../../src/prove/prove.ts'
import type { Review, Rule, Tree } from '../../src/tree/tree.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { rule, sketch } from '../helpers/sketch.ts'

const of = (tree: Tree, property: string, ledger = {}) => {
  const all = proveWith(new TreeDiagrams(tree), {}, ledger, PROPERTIES)
  const found = all.find(one => one.property === property)
  if (found === undefined) throw new Error(`there is no property ${property}`)
  return found
}
const choice = (observation: string, ...among: string[]) => ({
  kind: 'choice' as const,
  observation,
  among
})
const codes = ({ findings }: ReturnType<typeof of>) => findings.map(({ code }) => code)

describe('every shipped tree keeps every property', async () => {
  const { trees, places, sources } = await loadShipped()

  test.each(trees)('$id', tree => {
    const proved = prove(tree, places[tree.id], sources)
    expect(proved.filter(({ standing }) => standing !== 'proved')).toEqual([])
    expect(proved.map(({ property }) => property)).toEqual(PROPERTIES.map(({ id }) => id))
    // A property that speaks of nothing in the tree says nothing about it: no second look, nothing to say.
    const settles = Object.values(tree.observations).some(
      one => one.kind === 'choice' && one.settles !== undefined
    )
    const measures = Object.values(tree.questions).some(({ kind }) => kind === 'measure')
    const ordered = Object.values(tree.observations).some(
      one => one.kind === 'choice' && one.settles === undefined && one.unordered !== true
    )
    const silent = proved.flatMap(({ property, counts }) => (counts.proved === 0 ? [property] : []))
    const presumes = Object.values(tree.advice.does).some(
      ({ presumes = [] }) => presumes.length > 0
    )
    expect(silent).toEqual([
      ...(measures ? [] : ['ranges-leave-no-gap']),
      ...(ordered ? [] : ['answers-are-listed-by-caution']),
      ...(settles ? [] : ['a-second-answer-never-reassures']),
      ...(presumes ? [] : ['nothing-ruled-out-is-presumed'])
    ])
  })
})

describe('a walk that does not end is found before anything is walked', () => {
  test('an answer without a branch is a dead end, and the rest is not decided', () => {
    const tree = sketch({ growth: { wet: '= normal-growth', unsure: '→ nowhere' } })
    expect(codes(of(tree, 'no-dead-end'))).toEqual(['leads-nowhere'])
    expect(of(tree, 'rules-hold')).toMatchObject({
      standing: 'not-decided',
      because: 'a walk does not come to an end'
    })
  })

  test('so is an end that says nothing about the batch', () => {
    const tree = sketch({ growth: { wet: '= normal-growth', unsure: '= pressure-caution' } })
    expect(of(tree, 'no-dead-end').counts).toEqual({ proved: 1, refuted: 1 })
  })

  test('the shortest circle is shown', () => {
    const tree = sketch({
      growth: { wet: '→ smell', unsure: '→ color' },
      color: { pink: '→ smell', unsure: '→ smell' },
      smell: { sharp: '→ growth', unsure: '= wait-and-recheck' }
    })
    const { findings } = of(tree, 'no-circle')
    expect(findings[0]?.facts.questions).toEqual(['growth', 'smell', 'growth'])
  })

  test('diagrams beyond bounds leave a property undecided, with the bound', () => {
    const tree = sketch({
      growth: { wet: '→ smell', dry: '+likely-mold → smell', unsure: '→ smell' },
      smell: { sharp: '= normal-growth', rotten: '= likely-mold', unsure: '= wait-and-recheck' }
    })
    const variables = spaceOf(tree)
    const small = new Diagrams(
      variables.map(({ values }) => values.length),
      33
    )
    const proved = proveWith(new TreeDiagrams(tree, variables, small))
    const open = proved.find(({ property }) => property === 'not-knowing-never-reassures')
    expect(open).toMatchObject({
      standing: 'not-decided',
      because: 'more than 33 diagram vertices'
    })
  })
})

describe('what nobody can reach is found', () => {
  const twice = sketch({
    growth: { fuzzy: '= likely-mold', wet: '→ again', unsure: '→ again' },
    again: {
      asks: 'growth',
      fuzzy: '→ hairs',
      wet: '+ask-specialist = quality-only',
      unsure: '= wait-and-recheck'
    },
    hairs: { long: '= likely-mold', short: '= normal-growth', unsure: '= wait-and-recheck' }
  })

  test('a question to which only contradictory answers lead', () => {
    const { findings, counts } = of(twice, 'questions-are-reached')
    expect(findings.map(({ facts }) => facts.question)).toEqual(['hairs'])
    expect(counts).toEqual({ proved: 2, refuted: 1 })
  })

  test('a verdict that a more cautious one always covers', () => {
    const { findings } = of(twice, 'verdicts-are-given')
    expect(findings.map(({ facts }) => facts.verdict)).toEqual(['normal-growth', 'quality-only'])
  })

  test('an emergency is given though it lies outside the answer space', () => {
    const tree = sketch(
      { people: { '?!severe': '+emergency ~never', else: '= normal-growth' } },
      { about: { people: 'person' } }
    )
    expect(of(tree, 'verdicts-are-given').standing).toBe('proved')
  })
})

describe('a question is there for something', () => {
  test('one whose answers all do the same is idle', () => {
    const tree = sketch({
      color: { pink: '*note → smell', plain: '*note → smell', unsure: '*note → smell' },
      smell: { sharp: '= normal-growth', rotten: '= likely-mold', unsure: '= wait-and-recheck' }
    })
    expect(of(tree, 'no-idle-question').findings.map(({ facts }) => facts.question)).toEqual([
      'color'
    ])
  })

  test('so is one that is always outdone by what was raised before', () => {
    const tree = sketch({
      growth: { fuzzy: '+likely-mold → smell', wet: '= normal-growth', unsure: '= normal-growth' },
      smell: { sharp: '= normal-growth', rotten: '= likely-mold', unsure: '= wait-and-recheck' }
    })
    expect(of(tree, 'no-idle-question').findings.map(({ facts }) => facts.question)).toEqual([
      'smell'
    ])
  })

  test('a note alone is something', () => {
    const tree = sketch({
      color: {
        pink: '*warm-room = normal-growth',
        plain: '= normal-growth',
        unsure: '= normal-growth'
      }
    })
    expect(of(tree, 'no-idle-question').standing).toBe('proved')
  })

  test('a second look matters where it settles what the first left open', () => {
    const looks = (hairs: string) =>
      sketch(
        {
          growth: { fuzzy: '= likely-mold', wet: '= normal-growth', unsure: '→ light' },
          light: { unsure: hairs }
        },
        { settles: { light: { of: 'growth', as: { hairy: 'fuzzy', flat: 'wet' } } } }
      )
    expect(codes(of(looks('= wait-and-recheck'), 'no-idle-question'))).toEqual([])
    const same = sketch(
      {
        growth: { fuzzy: '= likely-mold', wet: '= likely-mold', unsure: '→ light' },
        light: { unsure: '= likely-mold' }
      },
      { settles: { light: { of: 'growth', as: { hairy: 'fuzzy', flat: 'wet' } } } }
    )
    expect(of(same, 'no-idle-question').findings.map(({ facts }) => facts.question)).toEqual([
      'growth',
      'light'
    ])
  })

  test('a sign without consequence is idle beside one that has some', () => {
    const tree = sketch({
      insects: { '?inside': '+discard-and-sanitize', '?outside': '', else: '= normal-growth' }
    })
    expect(of(tree, 'no-idle-sign').findings.map(({ facts }) => facts.sign)).toEqual(['outside'])
    expect(of(tree, 'no-idle-question').standing).toBe('proved')
  })

  test('a question after the outcome that adds no note is idle', () => {
    const { questions } = sketch({ cover: { lid: '= normal-growth', unsure: '= normal-growth' } })
    const tree = sketch({ growth: { wet: '= normal-growth', unsure: '= wait-and-recheck' } })
    const after = Object.values(questions)
    expect(codes(of({ ...tree, after }, 'no-idle-question'))).toEqual(['idle-question'])
  })
})

describe('a danger sign is covered by what forbids a gentle end', () => {
  const tree = (...rules: Rule[]) =>
    sketch(
      {
        growth: { '!fuzzy': '+likely-mold → smell', wet: '→ smell', unsure: '→ smell' },
        smell: { sharp: '= normal-growth', rotten: '= likely-mold', unsure: '= wait-and-recheck' }
      },
      { rules }
    )
  const mold = { kind: 'at-least', verdict: 'likely-mold' } as const
  const standing = (...rules: Rule[]) => of(tree(...rules), 'danger-signs-are-covered').standing

  test('by one rule that speaks of nothing else', () => {
    expect(standing(rule('fuzz', [choice('growth', 'fuzzy')], mold))).toBe('proved')
  })

  test('by several that together leave no answers out', () => {
    const some = rule('some', [choice('growth', 'fuzzy'), choice('smell', 'sharp')], mold)
    const rest = rule(
      'rest',
      [choice('growth', 'fuzzy'), choice('smell', 'rotten', 'unsure')],
      mold
    )
    expect(standing(some)).toBe('refuted')
    expect(standing(some, rest)).toBe('proved')
  })

  test.each<[string, Rule['claim']]>([
    ['an upper bound', { kind: 'at-most', verdict: 'likely-mold' }],
    ['a verdict that says all is well', { kind: 'at-least', verdict: 'quality-only' }],
    ['a verdict on another track', { kind: 'at-least', verdict: 'doctor-today' }],
    ['a note', { kind: 'note', note: 'a-note' }],
    ['a use that allows all', { kind: 'use-at-most', use: 'as-directed' }]
  ])('%s covers nothing', (_, claim) => {
    expect(standing(rule('fuzz', [choice('growth', 'fuzzy')], claim))).toBe('refuted')
  })

  test('a rule about every other answer does not name it', () => {
    expect(standing(rule('others', [choice('growth', 'wet', 'unsure')], mold))).toBe('refuted')
  })
})

describe('a second answer counts as one to what it settles', () => {
  const looks = { light: { of: 'growth', as: { hairy: 'fuzzy', flat: 'wet' } } }

  test('a danger answer of the second look is a danger of the first', () => {
    const tree = sketch(
      {
        growth: { fuzzy: '= likely-mold', wet: '= normal-growth', unsure: '→ light' },
        light: { unsure: '~not-yet = normal-growth' }
      },
      { settles: looks }
    )
    const { light } = tree.observations
    if (light?.kind !== 'choice') throw new Error('light is a choice')
    const answers = light.answers.map(answer => ({ ...answer, danger: answer.id === 'hairy' }))
    const marked = { ...tree, observations: { ...tree.observations, light: { ...light, answers } } }

    expect(codes(of(tree, 'an-unsure-danger-sign-is-not-gentle'))).toEqual([])
    expect(codes(of(marked, 'an-unsure-danger-sign-is-not-gentle'))).toEqual([
      'unsure-danger-too-gentle'
    ])
    expect(codes(of(marked, 'danger-signs-are-covered'))).toEqual(['danger-uncovered'])
    const rules = [
      rule('hairs', [choice('growth', 'fuzzy')], { kind: 'at-least', verdict: 'likely-mold' })
    ]
    expect(codes(of({ ...marked, rules }, 'danger-signs-are-covered'))).toEqual([])
  })

  test('a gentle one listed before a stricter known one would reassure', () => {
    const listed = (growth: Record<string, string>) =>
      sketch({ growth, light: { unsure: '= wait-and-recheck' } }, { settles: looks })
    const wrong = listed({
      fuzzy: '= likely-mold',
      wet: '= normal-growth',
      wrinkled: '= wait-and-recheck',
      unsure: '→ light'
    })
    const right = listed({
      fuzzy: '= likely-mold',
      wrinkled: '= wait-and-recheck',
      wet: '= normal-growth',
      unsure: '→ light'
    })
    expect(of(wrong, 'a-second-answer-never-reassures').findings).toMatchObject([
      {
        facts: { answer: 'wrinkled', second: 'flat' },
        answers: { growth: 'wrinkled', light: 'flat' }
      }
    ])
    expect(of(right, 'a-second-answer-never-reassures').standing).toBe('proved')
  })

  test('a gentle one listed before a stricter one is found, unless they are kinds', () => {
    const tree = sketch({
      kind: { kraut: '= normal-growth', mash: '= wait-and-recheck', unsure: '= wait-and-recheck' }
    })
    const { kind } = tree.observations
    if (kind?.kind !== 'choice') throw new Error('kind is a choice')
    const kinds = { ...tree, observations: { kind: { ...kind, unordered: true } } }

    expect(of(tree, 'answers-are-listed-by-caution').findings).toMatchObject([
      {
        code: 'listed-too-early',
        facts: { answer: 'kraut', next: 'mash' },
        answers: { kind: 'kraut' }
      }
    ])
    expect(of(kinds, 'answers-are-listed-by-caution').counts.proved).toBe(0)
  })
})

describe('the law on unsure danger signs is not kept for want of words', () => {
  const tree = sketch(
    {
      people: { '?!ill': '+doctor-today ~never', '?!ill unsure': '~never', else: '= normal-growth' }
    },
    { about: { people: 'person' } }
  )

  test('without a note that asks after a person nothing is decided', () => {
    expect(of(tree, 'an-unsure-danger-sign-is-not-gentle').because).toContain('unsure-note')
  })

  test('without a verdict that waits nothing is decided', () => {
    const tree = sketch({ growth: { '!fuzzy': '= quality-only', unsure: '= normal-growth' } })
    const verdicts = tree.verdicts.filter(({ ceiling }) => ceiling === 'as-directed')
    expect(of({ ...tree, verdicts }, 'an-unsure-danger-sign-is-not-gentle')).toMatchObject({
      standing: 'not-decided',
      because: 'no verdict on the batch is a wait'
    })
    expect(of(tree, 'an-unsure-danger-sign-is-not-gentle').standing).toBe('refuted')
  })
})

describe('ranges, bounds, sources and review are held to the file', () => {
  const measured = sketch({
    ph: {
      '<= 4.2': '= normal-growth',
      '> 4.3': '= likely-mold',
      between: '= wait-and-recheck',
      unsure: '= wait-and-recheck'
    }
  })

  test('a gap between two ranges is named', () => {
    expect(of(measured, 'ranges-leave-no-gap').findings[0]?.facts.gap).toContain('4.2')
  })

  test('a quarter of the rules are upper bounds, and one at any rate', () => {
    const lower = rule('low', [], { kind: 'at-least', verdict: 'normal-growth' })
    const upper = rule('up', [], { kind: 'at-most', verdict: 'likely-mold' })
    const standing = (...rules: Rule[]) =>
      of({ ...measured, rules }, 'upper-bounds-are-a-quarter').standing
    expect(standing()).toBe('refuted')
    expect(standing(lower, lower, lower, upper)).toBe('proved')
    expect(standing(lower, lower, lower, lower, upper)).toBe('refuted')
  })

  describe('the same thing is said once', () => {
    const high = { kind: 'measure', observation: 'ph', is: { within: { over: 4.3 } } } as const
    const unsure = { kind: 'measure', observation: 'ph', is: 'unsure' } as const
    const low = { kind: 'measure', observation: 'ph', is: { within: { atMost: 4.2 } } } as const
    const never = { kind: 'use-is', use: 'never' } as const
    const twice = (...rules: Rule[]) =>
      of({ ...measured, rules }, 'rules-are-said-once').findings.map(({ code, facts }) => [
        code,
        facts.rule,
        facts.first
      ])

    test('whatever the two rest on, and however the claim is written', () => {
      const same = [['rule-said-twice', 'again', 'once']]
      const once = rule('once', [high], never)
      expect(twice(once, rule('again', [high], never, { basis: 'published' }))).toEqual(same)
      const atMost = { kind: 'use-at-most', use: 'never' } as const
      expect(twice(once, rule('again', [high], atMost))).toEqual(same)
    })

    test('of the same sets of answers, however they are named', () => {
      const claim = { kind: 'at-least', verdict: 'wait-and-recheck' } as const
      const all = rule('once', [], claim, { unless: [[low]] })
      const parts = rule('again', [], claim, { unless: [[low], [low, high]] })
      expect(twice(all, parts)).toEqual([['rule-said-twice', 'again', 'once']])
    })

    test('but neither another claim nor fewer answers are the same', () => {
      const once = rule('once', [high], never)
      const notYet = { kind: 'use-at-most', use: 'not-yet' } as const
      expect(twice(once, rule('other-claim', [high], notYet))).toEqual([])
      expect(twice(once, rule('other-answers', [unsure], never))).toEqual([])
      expect(twice(rule('wider', [], never), once)).toEqual([])
    })
  })

  test('a statement without a source, or with one that nobody described, is found', () => {
    const rules = [
      rule('none', [], { kind: 'at-most', verdict: 'likely-mold' }),
      rule('unknown', [], { kind: 'at-most', verdict: 'likely-mold' }, { because: ['a-guide'] })
    ]
    const ledger = { 'another-guide': source({}) }
    const found = of({ ...measured, rules }, 'sources-are-present', ledger).findings
    expect(found.map(({ code, facts }) => [code, facts.name])).toEqual(
      expect.arrayContaining([
        ['source-missing', 'none'],
        ['unknown-source', 'a-guide']
      ])
    )
  })

  test('without the sources nothing is decided about them', () => {
    const open = prove(measured).filter(({ because }) => because === 'the sources were not given')
    expect(open.map(({ property }) => property)).toEqual([
      'sources-are-present',
      'danger-rules-say-what-they-rest-on'
    ])
  })

  test.each<[string, Partial<LedgerSource>[], Rule['basis'], boolean]>([
    ['a copy is not published', [{ copy: 'copy' }], 'published', false],
    ['a copy is relayed', [{ copy: 'copy' }], 'relayed', true],
    ['an original beside the copy is enough', [{ copy: 'copy' }, {}], 'published', true],
    ['hearsay is no caution of ours', [{ checked: { how: 'relayed' } }], 'own-caution', false],
    ['memory is not relayed', [{ kind: 'from-memory' }], 'relayed', false],
    ['memory is memory', [{ kind: 'from-memory' }], 'memory', true],
    ['our caution is ours', [{ kind: 'own-caution', copy: 'none' }], 'own-caution', true],
    ['nor does it publish a copy', [{ kind: 'own-caution' }, { copy: 'copy' }], 'published', false]
  ])('%s', (_, sources, basis, right) => {
    const because = sources.map((_, index) => `source-${index}`)
    const ledger = Object.fromEntries(
      sources.map((more, index) => [`source-${index}`, source(more)])
    )
    const claim = { kind: 'at-least', verdict: 'likely-mold' } as const
    const rules = [rule('one', [], claim, { basis, because })]
    const { standing } = of({ ...measured, rules }, 'danger-rules-say-what-they-rest-on', ledger)
    expect(standing).toBe(right ? 'proved' : 'refuted')
  })

  test.each<[string, Partial<Review>, boolean]>([
    ['a draft has a day on which it is due', { due: '2027-11-01' }, true],
    ['a due day that is no day', { due: '' }, false],
    ['a signed tree without a day of review', { state: 'signed' }, false],
    ['due before the review', { reviewed: '2027-11-01', due: '2027-11-01' }, false],
    ['due 24 months later to the day', { reviewed: '2026-01-31', due: '2028-01-31' }, true],
    ['due a day beyond', { reviewed: '2026-01-31', due: '2028-02-01' }, false],
    [
      'from a leap day to the end of its month',
      { reviewed: '2028-02-29', due: '2030-02-28' },
      true
    ],
    ['and not a day beyond', { reviewed: '2028-02-29', due: '2030-03-01' }, false]
  ])('%s', (_, more, right) => {
    const review = { ...measured.review, ...more }
    const { standing } = of({ ...measured, review }, 'advice-is-due-for-review')
    expect(standing).toBe(right ? 'proved' : 'refuted')
  })
})

describe('the authors’ guide has a page for every property', () => {
  const [, section = ''] = readFileSync('trees/README.md', 'utf8').split(
    /\n## (?:Properties|Findings)\n/
  )
  const pages = section.split(/^### /m).slice(1)

  test('in the order in which they are proved', () => {
    const ids = pages.map(page => page.split('\n')[0])
    expect(ids).toEqual(PROPERTIES.map(({ id }) => id))
  })

  test.each(pages.map(page => [page.split('\n')[0], page]))('%s', (_, page) => {
    expect(page).toMatch(/\n_Says:_ .+ _Why:_ .+\n\n```yaml\n[\s\S]+\n```\n\n_How to fix:_ .+\n/)
  })
})

const source = (more: Partial<LedgerSource>): LedgerSource => ({
  kind: 'publication',
  copy: 'original',
  checked: { how: 'read' },
  ...more
})

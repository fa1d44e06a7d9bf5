import { describe, expect, test } from 'vitest'
import { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { formatFinding } from '../../src/findings/format-finding.ts'
import { prove } from '../../src/prove/prove.ts'
import { proveRule } from '../../src/prove/prove-rule.ts'
import type { Rule } from '../../src/tree/tree.ts'
import { rule, sketch } from '../helpers/sketch.ts'

const reassured = sketch(
  {
    growth: {
      '!fuzzy': '+likely-mold → smell',
      wet: '→ smell',
      unsure: '+wait-and-recheck → smell'
    },
    smell: {
      rotten: '= discard-and-sanitize',
      sharp: '= normal-growth',
      unsure: '~not-yet = normal-growth'
    }
  },
  { usual: { growth: 'wet', smell: 'sharp' } }
)
const standing = (tree: typeof reassured, one: Rule) =>
  proveRule(new TreeDiagrams({ ...tree, rules: [one] }), one, {})
const choice = (observation: string, ...among: string[]) => ({
  kind: 'choice' as const,
  observation,
  among
})

describe('a rule speaks of every set of answers', () => {
  test('it is proved when no set breaks it', () => {
    const fuzz = rule('fuzz-is-mold', [choice('growth', 'fuzzy')], {
      kind: 'at-least',
      verdict: 'likely-mold'
    })
    expect(standing(reassured, fuzz)).toEqual({
      property: 'fuzz-is-mold',
      kind: 'rule',
      standing: 'proved',
      counts: { proved: 1, refuted: 0 },
      findings: []
    })
  })

  test('it is refuted by one set, shown as the walk with the fewest unusual answers', () => {
    const gentle = rule('rotten-is-mold', [choice('smell', 'rotten')], {
      kind: 'at-least',
      verdict: 'likely-mold'
    })
    expect(standing(reassured, gentle)).toMatchObject({
      standing: 'refuted',
      findings: [
        {
          code: 'rule-refuted',
          facts: {
            rule: 'rotten-is-mold',
            claim: 'at-least: likely-mold',
            gets: 'discard-and-sanitize'
          },
          witness: [
            { observation: 'growth', answer: 'wet' },
            { observation: 'smell', answer: 'rotten' }
          ]
        }
      ]
    })
  })

  test('an upper bound is refuted by a tree that always alarms', () => {
    const alarming = sketch(
      { growth: { wet: '= discard-and-sanitize', unsure: '= discard-and-sanitize' } },
      { usual: { growth: 'wet' } }
    )
    const bound = rule('wet-is-normal', [choice('growth', 'wet')], {
      kind: 'at-most',
      verdict: 'normal-growth'
    })
    expect(standing(alarming, bound).standing).toBe('refuted')
  })

  test('an exception takes its sets out, and nothing else', () => {
    const bound = rule(
      'never-mold',
      [],
      { kind: 'at-most', verdict: 'discard-and-sanitize' },
      { unless: [[choice('growth', 'fuzzy')]] }
    )
    expect(standing(reassured, bound).standing).toBe('proved')
    expect(
      standing(reassured, {
        ...bound,
        unless: [[choice('growth', 'fuzzy'), choice('smell', 'sharp')]]
      }).standing
    ).toBe('refuted')
  })

  test('the rest is usual only where the rule says so', () => {
    const bound = rule('wet-is-normal', [choice('growth', 'wet')], {
      kind: 'use-is',
      use: 'as-directed'
    })
    expect(standing(reassured, bound).standing).toBe('refuted')
    expect(standing(reassured, { ...bound, restUsual: true }).standing).toBe('proved')
  })

  test('one whose conditions exclude each other is a finding, not a proof', () => {
    const never = rule('never', [choice('growth', 'fuzzy'), choice('growth', 'wet')], {
      kind: 'at-least',
      verdict: 'likely-mold'
    })
    expect(standing(reassured, never).findings[0]?.code).toBe('rule-never-applies')
  })
})

describe('a condition on a measure is met by a whole interval', () => {
  const tree = sketch({
    ph: {
      '<= 4.2': '= normal-growth',
      '> 4.2': '= discard-and-sanitize',
      between: '= wait-and-recheck',
      unsure: '= wait-and-recheck'
    }
  })
  const over = { kind: 'measure' as const, observation: 'ph', is: { within: { over: 4.2 } } }

  test('above the limit for sure is a discard', () => {
    expect(
      standing(tree, rule('over', [over], { kind: 'at-least', verdict: 'discard-and-sanitize' }))
        .standing
    ).toBe('proved')
  })

  test('a limit that only the rule knows cuts the line as well', () => {
    const low = { ...over, is: { within: { over: 4.1 } } }
    expect(
      standing(tree, rule('low', [low], { kind: 'at-least', verdict: 'wait-and-recheck' })).standing
    ).toBe('refuted')
  })

  test('an interval that reaches across is neither', () => {
    const across = { ...over, is: { straddles: 4.2 } }
    expect(
      standing(tree, rule('across', [across], { kind: 'at-most', verdict: 'wait-and-recheck' }))
        .standing
    ).toBe('proved')
    expect(
      standing(tree, rule('across', [across], { kind: 'at-least', verdict: 'wait-and-recheck' }))
        .standing
    ).toBe('proved')
  })
})

describe('an emergency stands apart', () => {
  const tree = sketch(
    {
      people: { '?!severe': '+emergency ~never', else: '→ growth' },
      growth: { wet: '= normal-growth', unsure: '= wait-and-recheck' }
    },
    { about: { people: 'person' } }
  )
  const severe = {
    kind: 'sign' as const,
    observation: 'people',
    sign: 'severe',
    among: ['yes'] as const
  }

  test('a rule that it is one is proved', () => {
    expect(
      standing(tree, rule('severe', [severe], { kind: 'at-least', verdict: 'emergency' })).standing
    ).toBe('proved')
    expect(
      standing(tree, rule('severe', [severe], { kind: 'at-most', verdict: 'doctor-today' }))
        .standing
    ).toBe('refuted')
  })

  test('a rule about its jar never applies', () => {
    expect(
      standing(tree, rule('jar', [severe], { kind: 'at-least', verdict: 'likely-mold' }))
        .findings[0]?.code
    ).toBe('rule-never-applies')
  })
})

describe('not knowing never reassures', () => {
  const law = (tree: typeof reassured, name: string) =>
    prove(tree).find(({ property }) => property === name)

  test('an unsure answer may not free what a known one withholds', () => {
    const tree = sketch(
      {
        color: {
          pink: '= discard-and-sanitize',
          plain: '= normal-growth',
          unsure: '= normal-growth'
        }
      },
      { usual: { color: 'plain' } }
    )
    expect(law(tree, 'not-knowing-never-reassures')?.findings).toMatchObject([
      {
        code: 'unsure-reassures',
        facts: { observation: 'color', answer: 'unsure' },
        witness: [{ observation: 'color', answer: 'unsure' }]
      }
    ])
  })

  test('nor may a borderline measurement', () => {
    const tree = sketch({
      ph: {
        '<= 4.2': '= normal-growth',
        '> 4.2': '= discard-and-sanitize',
        between: '= normal-growth',
        unsure: '= wait-and-recheck'
      }
    })
    expect(law(tree, 'not-knowing-never-reassures')?.standing).toBe('refuted')
  })

  test('an unsure danger sign of the batch waits, and of the container lowers the pressure', () => {
    const tree = sketch(
      {
        lid: {
          '?!bulging': '+pressure-hazard',
          '?!bulging unsure': '+wait-and-recheck',
          else: '= normal-growth'
        }
      },
      { about: { lid: 'container' } }
    )
    expect(law(tree, 'an-unsure-danger-sign-is-not-gentle')?.findings).toMatchObject([
      {
        code: 'unsure-danger-too-gentle',
        facts: {
          sign: 'bulging',
          wants: 'pressure-caution',
          gets: 'nothing on the container track'
        }
      }
    ])
  })

  test('an unsure danger sign about a person asks after them', () => {
    const tree = sketch(
      {
        people: {
          '?!ill': '+doctor-today ~never',
          '?!ill unsure': '~not-yet',
          else: '= normal-growth'
        }
      },
      { about: { people: 'person' }, unsureNote: 'ask-about-people' }
    )
    expect(law(tree, 'an-unsure-danger-sign-is-not-gentle')?.findings[0]?.code).toBe(
      'unsure-person-note-missing'
    )
  })
})

describe('a refuted rule reads like a report', () => {
  test('with its place, its walk and its remedy', () => {
    const gentle = rule('rotten-is-mold', [choice('smell', 'rotten')], {
      kind: 'at-least',
      verdict: 'likely-mold'
    })
    const places = {
      'rules/rotten-is-mold': { file: 'trees/sketch/tree.yaml', line: 3, column: 9, length: 14 }
    }
    const text = 'rules:\n  # from the sheet\n  - id: rotten-is-mold\n'
    const [finding] = proveRule(new TreeDiagrams(reassured), gentle, places).findings

    const report = finding && formatFinding(finding, () => text)

    expect(report).toMatchInlineSnapshot(`
      "trees/sketch/tree.yaml:3:9  rule-refuted

        The rule \`rotten-is-mold\` claims \`at-least: likely-mold\`, but a walk gets \`discard-and-sanitize\`.

        3 |   - id: rotten-is-mold
          |         ^^^^^^^^^^^^^^

        Walk: growth=wet → smell=rotten

        Fix: Follow the walk: fix the answer that strays, or, if the walk is right, the rule.
        See: trees/README.md#rule-refuted
      "
    `)
  })
})

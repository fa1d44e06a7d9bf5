import { beforeAll, describe, expect, test } from 'vitest'
import { packetParts, stateOf } from '../../src/cli/review-packet.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { load } from '../../src/load/load.ts'
import { type Packet, packetOf } from '../../src/paper/packet/packet.ts'
import { packetHtml } from '../../src/paper/packet/packet-page.tsx'
import { randomNumbers } from '../../src/science/random-numbers.ts'
import { tablesOf } from '../../src/tables/tables.ts'
import { emergenciesTold } from '../../src/tree/emergency.ts'
import { observationOf } from '../../src/tree/must.ts'
import { measured } from '../../src/tree/reading.ts'
import { authoredFiles } from '../helpers/shipped.ts'
import { outputBy } from '../tables/pattern-facts.ts'
import { randomAnswers } from '../tables/table-answers.ts'
import { contextOf, inputsOf, rowsMet } from '../tables/table-facts.ts'

const TREES = ['kombucha-jar', 'sourdough-starter']
const packets = new Map<string, { packet: Packet; html: string }>()
const of = (tree: string) => packets.get(tree) as { packet: Packet; html: string }

beforeAll(async () => {
  // These two alone, without what other trees need them for: all of them take three times as long.
  const files = authoredFiles().filter(
    ({ path }) =>
      !/^shared\/(?:practice|know-how|reviews|glossary)\//.test(path) &&
      (!path.startsWith('trees/') || TREES.some(id => path.startsWith(`trees/${id}/`))) &&
      (!path.startsWith('locales/') || path.startsWith('locales/en/'))
  )
  const project = { files, loaded: await load(files), office: null }
  for (const id of TREES) {
    const tree = project.loaded.trees.find(each => each.id === id)
    if (tree === undefined) throw new Error(`no tree ${id}`)
    const packet = packetOf(await packetParts(project, tree))
    const html = packetHtml({
      packet,
      paper: 'a4',
      fonts: '',
      itemsFingerprint: stateOf(tree, packet.items).items,
      reviewFile: `${id}.review.yaml`,
      roles: ['food-safety specialist', 'native reader of es'],
      mustSign: ['food-safety specialist'],
      today: new Date('2026-11-25T12:00:00Z')
    })
    packets.set(id, { packet, html })
  }
}, 120_000)

const escaped = (text: string) =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')

describe.each(TREES)('the packet of %s', id => {
  test('is a page in English with a title, headings in order and links that lead somewhere', () => {
    const { html } = of(id)
    expect(html).toMatch(/^<!doctype html>\n<html lang="en">/)
    expect(html).toMatch(/<title>Review packet: [^<]+<\/title>/)
    expect(html).not.toMatch(/<script|src=|href="http|url\(/)
    const depths = [...html.matchAll(/<h([1-6])[ >]/g)].map(([, depth]) => Number(depth))
    expect(depths.filter(depth => depth === 1)).toHaveLength(1)
    depths.slice(1).forEach((depth, index) => {
      expect(depth - (depths[index] ?? 0)).toBeLessThanOrEqual(1)
    })
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, name]) => name)
    expect(new Set(ids).size).toBe(ids.length)
    const links = [...html.matchAll(/href="#([^"]+)"/g)].map(([, name]) => name)
    expect(links.length).toBeGreaterThan(300)
    expect(links.filter(link => !ids.includes(link))).toEqual([])
  })

  test('has its seven parts in order, each in the contents', () => {
    const { html } = of(id)
    const parts = [...html.matchAll(/<h2 id="([a-z-]+)">(\d)\. /g)].map(([, name]) => name)
    expect(parts).toEqual([
      ...['first-look', 'rules', 'patterns', 'limits', 'words', 'changes', 'signatures']
    ])
    const contents = html.slice(html.indexOf('<nav'), html.indexOf('</nav>'))
    for (const part of parts) expect(contents).toContain(`href="#${part}"`)
  })

  test('has every rule once, with its sources by their full titles', () => {
    const { html, packet } = of(id)
    const { tree, sources } = packet
    const rules = [...tree.rules, ...tree.spokenRules]
    const entries = html.split('<li id="rule-').slice(1)
    expect(entries.map(entry => entry.slice(0, entry.indexOf('"')))).toEqual(
      rules.map(rule => rule.id)
    )
    for (const [index, { because }] of rules.entries()) {
      const entry = entries[index]?.slice(0, entries[index]?.indexOf('</li>'))
      for (const source of because) {
        expect(entry).toContain(`<cite>${escaped(sources[source]?.title ?? '?')}</cite>`)
      }
    }
  })

  test('lists first whatever rests on own caution, memory or common practice, each once', () => {
    const { html, packet } = of(id)
    const { tree, sources, items } = packet
    const kinds = ['own-caution', 'common-practice', 'from-memory']
    const isWeak = (because: readonly string[]) =>
      because.some(source => kinds.includes(String(sources[source]?.kind)))
    const rules = [...tree.rules, ...tree.spokenRules].filter(
      ({ basis, because }) =>
        ['own-caution', 'memory', 'common-practice'].includes(basis) || isWeak(because)
    )
    const listed = items.flatMap(item => item.rules)
    expect(new Set(listed).size).toBe(listed.length)
    expect(rules.map(rule => rule.id).filter(rule => !listed.includes(rule))).toEqual([])
    const names = items.map(item => item.id)
    expect(new Set(names).size).toBe(names.length)
    const { notes, verdicts, followUps } = tree.advice
    const wanted = [
      ...Object.entries(notes).flatMap(([note, { because }]) =>
        isWeak(because) ? [`notes/${note}`] : []
      ),
      ...Object.entries(verdicts).flatMap(([verdict, { because }]) =>
        isWeak(because) ? [`verdicts/${verdict}`] : []
      ),
      ...followUps.flatMap(({ id: name, because }) =>
        isWeak(because) ? [`follow-ups/${name}`] : []
      )
    ]
    expect(wanted.length).toBeGreaterThan(50)
    expect(wanted.filter(name => !names.includes(name))).toEqual([])
    const inPartOne = html.slice(
      html.indexOf('<h2 id="first-look"'),
      html.indexOf('<h2 id="rules"')
    )
    expect([...inPartOne.matchAll(/data-item="([^"]+)"/g)].map(([, name]) => name)).toEqual(names)
  })

  test('puts first what sources differ over, then what lets food be kept or used', () => {
    const { packet } = of(id)
    const groups = packet.items.map(({ group }) => group)
    expect([...new Set(groups)]).toEqual(['dissent', 'frees', 'limit', 'holds', 'said'])
    const dissent = packet.items.filter(({ group }) => group === 'dissent')
    expect(
      dissent.every(({ says }) => says.some(text => /guides|differ|recipes/i.test(text)))
    ).toBe(true)
  })

  test('at each limit has what the walk gives for the very reading, by each instrument', () => {
    const { packet } = of(id)
    const { tree, limits } = packet
    const all = limits.flatMap(({ cases }) => cases)
    expect(all.length).toBeGreaterThan(2)
    for (const { measure: name, instrument, cases } of all) {
      const measure = observationOf(tree.observations, name, 'measure')
      for (const { interval, answers, outcome } of cases) {
        const again = measured(measure, interval.reading, instrument ?? undefined)
        expect(walk(tree, { ...answers, [name]: again }).outcome).toEqual(outcome)
      }
    }
  })

  test('says with its patterns what the walk says, on 400 random sets of answers', () => {
    const { packet } = of(id)
    const next = randomNumbers(31)
    for (let i = 0; i < 400; i++) {
      const answers = randomAnswers(packet.tree, next)
      if (emergenciesTold(packet.tree, answers).length > 0) continue
      const { outcome } = walk(packet.tree, answers)
      const [person, container, batch, use] = packet.sides.map(side =>
        outputBy(packet.tree, side, answers)
      )
      expect({ person, container, batch, use }).toEqual({
        person: outcome.person ?? 'none',
        container: outcome.container ?? 'none',
        batch: outcome.batch ?? 'none',
        use: outcome.use
      })
    }
  })

  test('has the emergencies that the walk ends at', () => {
    const { packet } = of(id)
    expect(packet.alarms.length).toBeGreaterThan(2)
    for (const { observation, answers, outcome } of packet.alarms) {
      const isSigns = packet.tree.observations[observation]?.kind === 'signs'
      for (const answer of answers) {
        const told = { [observation]: isSigns ? { [answer]: 'yes' as const } : answer }
        expect(walk(packet.tree, told).finished).toBe(true)
        expect(walk(packet.tree, told).outcome).toEqual(outcome)
      }
    }
  })

  test('prints nobody’s name, and a place to sign for each role', () => {
    const { html } = of(id)
    const signing = html.slice(html.indexOf('<h2 id="signatures"'))
    expect(signing).toContain('Food-safety specialist (must sign)')
    expect(signing).toContain('Native reader of Spanish (es)')
    expect(signing.match(/Signature _+ Date _+/g)).toHaveLength(2)
  })
})

test('the patterns equal the decision tables, row by row, on sides of a shipped tree', () => {
  const { packet } = of('sourdough-starter')
  const next = randomNumbers(32)
  for (const lens of ['container', 'use'] as const) {
    const side = packet.sides.find(each => each.lens === lens)
    if (side === undefined) throw new Error('no such side')
    const tables = tablesOf(packet.tree, lens)
    const inputs = inputsOf(tables)
    for (let i = 0; i < 150; i++) {
      const answers = randomAnswers(packet.tree, next)
      if (emergenciesTold(packet.tree, answers).length > 0) continue
      const rows = rowsMet(tables, contextOf(packet.tree, inputs, answers))
      expect(rows.map(({ level }) => tables[0]?.outputs[level])).toEqual([
        outputBy(packet.tree, side, answers)
      ])
    }
  }
})

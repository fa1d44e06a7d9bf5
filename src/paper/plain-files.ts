import type { OfficePack } from '../office/office-pack.ts'
import type { Stop } from '../plain/stop.ts'
import { at, must } from '../tree/must.ts'
import type { Language } from '../words/languages.ts'
import type { Words } from '../words/words.ts'
import { endHtml, endTitle } from './plain-end.ts'
import { escaped, type PlainTree, plainPage } from './plain-html.ts'
import { type Addresses, stopsHtml } from './plain-stop.ts'
import { PLAIN_STYLE } from './plain-style.ts'

/** One file of the plain pages, by its path from their folder. */
export interface PlainFile {
  readonly name: string
  readonly text: string
}

/** Stops in one file: the words of a question are sent once for all of them. */
const MOST_STOPS = 60

/** A tree as it is listed: its folder and its title. */
export interface PlainEntry {
  readonly id: string
  readonly title: string
  readonly about: string
}

/** What every page needs beside its tree. */
export interface PlainIndex {
  readonly languages: readonly Language[]
  readonly office: OfficePack | null
  readonly today: Date
}

/** The pages of one tree in one language, one by one as they are written. */
export function* treeFiles(plain: PlainTree, languages: readonly Language[]): Generator<PlainFile> {
  const { tree, walk, words, office, today } = plain
  const folder = `${words.tag}/${tree.id}`
  const files = inFiles(walk.stops)
  const stops = new Map(
    files.flatMap(({ name, stops: own }) => own.map(([id]) => [id, `${name}#s${id}`] as const))
  )
  const addresses: Addresses = {
    stops: walk.stops.map((_, id) => must(stops.get(id), 'address')),
    ends: walk.ends.map((_, end) => `end-${end + 1}.html`)
  }
  const title = words.t(`${tree.id}:title`)
  const page = (name: string, heading: string, main: string, indexed: boolean): PlainFile => ({
    name: `${folder}/${name}`,
    text: plainPage({
      words,
      office,
      today,
      title: heading,
      main,
      up: '../../',
      nav: navOf(name),
      indexed
    })
  })
  const others = languages.filter(({ tag }) => tag !== words.tag)
  function navOf(name: string): string {
    const links = others.map(
      ({ tag, name: own }) =>
        `<a href="../../${tag}/${tree.id}/${name}" lang="${tag}" hreflang="${tag}">${escaped(own)}</a>`
    )
    const start = `<a href="index.html">${escaped(title)}</a>`
    const all = `<a href="../index.html">${escaped(words.t('ui:plain.all'))}</a>`
    return [start, all, ...links].join(' · ')
  }
  yield page('index.html', title, startHtml(plain, at(addresses.stops, 0)), true)
  for (const { name, stops: own } of files) {
    const { asks } = must(tree.questions[at(own, 0)[1].question], 'question')
    const heading = `${words.t(`observations:${asks}.ask`)} · ${title}`
    yield page(name, heading, stopsHtml(plain, own, addresses), name.endsWith('-1.html'))
  }
  for (const [end, one] of walk.ends.entries()) {
    const heading = `${endTitle(plain, one)} · ${title}`
    yield page(at(addresses.ends, end), heading, endHtml(plain, one), true)
  }
}

function startHtml({ tree, words, english }: PlainTree, first: string): string {
  const draft = english === null ? [] : [words.t('ui:draft-translation')]
  const review = tree.review.state === 'draft' ? [words.t('ui:draft')] : []
  return [
    `<h1>${escaped(words.t(`${tree.id}:title`))}</h1>`,
    ...[...review, ...draft, words.t('ui:plain.how')].map(line => `<p>${escaped(line)}</p>`),
    `<ul class="ways"><li><a href="${first}">${escaped(words.t('ui:plain.begin'))}</a></li></ul>`
  ].join('\n')
}

function inFiles(stops: readonly Stop[]) {
  const byQuestion = new Map<string, (readonly [number, Stop])[]>()
  for (const [id, stop] of stops.entries()) {
    byQuestion.set(stop.question, [...(byQuestion.get(stop.question) ?? []), [id, stop]])
  }
  return [...byQuestion].flatMap(([question, own]) =>
    Array.from({ length: Math.ceil(own.length / MOST_STOPS) }, (_, part) => ({
      name: `${question}-${part + 1}.html`,
      stops: own.slice(part * MOST_STOPS, (part + 1) * MOST_STOPS)
    }))
  )
}

/** The page of one language, which lists its trees. */
export function languageFile(
  words: Words,
  trees: readonly PlainEntry[],
  { languages, office, today }: PlainIndex
): PlainFile {
  const entries = trees.map(
    ({ id, title, about }) =>
      `<li><a href="${id}/index.html">${escaped(title)}<br><span>${escaped(about)}</span></a></li>`
  )
  const main = [
    `<h1>${escaped(words.t('ui:plain.choose'))}</h1>`,
    `<p>${escaped(words.t('ui:plain.intro'))}</p>`,
    `<ul class="ways">${entries.join('')}</ul>`
  ].join('\n')
  const nav = languages
    .filter(({ tag }) => tag !== words.tag)
    .map(
      ({ tag, name }) =>
        `<a href="../${tag}/index.html" lang="${tag}" hreflang="${tag}">${escaped(name)}</a>`
    )
    .join(' · ')
  const title = words.t('ui:plain.title')
  return {
    name: `${words.tag}/index.html`,
    text: plainPage({ words, office, today, title, main, up: '../', nav, indexed: true })
  }
}

/** What stands above the languages: a choice of them, and the style sheet. */
export function sharedFiles(
  words: Words,
  { languages, office, today }: PlainIndex
): readonly PlainFile[] {
  const items = languages.map(
    ({ tag, name }) =>
      `<li><a href="${tag}/index.html" lang="${tag}" hreflang="${tag}">${escaped(name)}</a></li>`
  )
  const main = `<h1>Jarside</h1>\n<ul class="ways">${items.join('')}</ul>`
  const title = words.t('ui:plain.title')
  const text = plainPage({ words, office, today, title, main, up: '', nav: '', indexed: true })
  return [
    { name: 'index.html', text },
    { name: 'plain.css', text: PLAIN_STYLE }
  ]
}

import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { lastResort } from '../../shell.config.ts'
import { PAGES_FOLDER } from '../../src/office/plain-text.ts'

const LINK = /<a href="([^"]*)" class="last-resort-link">(.*?)<\/a>/g
const linksOf = (html: string) =>
  [...html.matchAll(LINK)].map(([, href, text = '']) => ({
    href,
    tags: [...text.matchAll(/lang="(.*?)"/g)].map(([, tag]) => tag).toSorted()
  }))
const page = { dials: true, again: true }
const kiosk = { dials: false, again: true }

describe('the layer under every page', () => {
  test.each([
    ['plain', 'plain/index.html'],
    ['../plain/', '../plain/index.html'],
    ['https://larkspur.example/ferments/', 'https://larkspur.example/ferments/index.html']
  ])('links to the plain pages in %s, in every language, whatever scripts do', (folder, href) => {
    const layer = lastResort({ ...page, plainPages: folder })
    expect(linksOf(layer)).toEqual([{ href, tags: readdirSync('locales').toSorted() }])
    expect(layer).not.toContain('<noscript>')
  })

  test('leads away from a kiosk only where no script runs that could wipe it', () => {
    const [, unscripted = ''] = lastResort({ ...kiosk, plainPages: 'plain/' }).split('<noscript>')
    const [inside = '', after = ''] = unscripted.split('</noscript>')
    expect(linksOf(inside)).toHaveLength(1)
    expect(linksOf(after)).toEqual([])
  })

  test('links nowhere where the office names no folder', () => {
    expect(linksOf(lastResort({ ...page, plainPages: null }))).toEqual([])
  })

  test.each(['', 'javascript:alert(1)', '//elsewhere.example/', 'plain?x', 'a b', '"><b>', 'x:y'])(
    'and %j is no folder',
    folder => expect(PAGES_FOLDER.test(folder)).toBe(false)
  )
})

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, inject, test } from 'vitest'
import { PAGES } from './pages.ts'
import { address } from './visit.ts'

const read = (file: string) => readFileSync(join(inject('built'), file), 'utf8')

describe('whose work is served stands beside it', () => {
  test('of every typeface its license', () => {
    const faces = readdirSync(join(inject('built'), 'assets')).filter(name =>
      name.endsWith('.woff2')
    )
    expect(faces.length).toBeGreaterThan(1)
    for (const face of faces) {
      const name = face.replace(/(?:-(?:more|vietnamese|regular|bold|name))*-[\w-]{8}\.woff2$/, '')
      expect(read(`licenses/OFL-${name}.txt`)).toContain('SIL OPEN FONT LICENSE')
    }
  })

  test('of every package in the scripts its name and its license', () => {
    const pages = read('licenses/packages.md')
    for (const name of ['preact', 'i18next', 'xstate', 'uqr', 'workbox-window']) {
      expect(pages).toMatch(new RegExp(`^## ${name} - [\\d.]+ \\(MIT\\)$`, 'm'))
    }
    expect(read('embed/licenses.md')).toMatch(/^## preact - [\d.]+ \(MIT\)$/m)
    const sections = `${pages}\n${read('embed/licenses.md')}`
      .split(/^## (?=\S+ - [\d.]+ )/m)
      .slice(1)
    expect(sections.length).toBeGreaterThan(8)
    for (const section of sections) expect(section).toMatch(/Permission|Redistribution/)
  })

  test('of the worker too, and each page names where', async () => {
    expect(read('licenses/workbox.txt')).toContain('Permission is hereby granted')
    for (const page of PAGES) {
      const [, named = ''] = /rel="license" href="\.\/([^"]+)"/.exec(read(`${page}.html`)) ?? []
      expect((await fetch(address() + named)).status).toBe(200)
    }
  })

  test('a bill of materials names every package that was at hand, in CycloneDX', () => {
    const { bomFormat, components } = JSON.parse(read('licenses/sbom.cdx.json'))
    expect(bomFormat).toBe('CycloneDX')
    const { dependencies, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8'))
    for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies })) {
      expect(components).toContainEqual(expect.objectContaining({ name, version }))
    }
  })
})

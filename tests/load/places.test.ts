import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { wholeProject } from './project-files.ts'

describe('every part of a tree knows where it was written', async () => {
  const files = wholeProject()
  const { places } = await load(files)
  const written = (key: string): string | undefined => {
    const place = places.jar?.[key]
    const line = files.find(({ path }) => path === place?.file)?.text.split('\n')[
      (place?.line ?? 0) - 1
    ]
    return line?.slice((place?.column ?? 1) - 1, (place?.column ?? 1) - 1 + (place?.length ?? 0))
  }

  test.each([
    ['questions/growth', 'growth'],
    ['questions/growth/fuzzy', 'fuzzy'],
    ['questions/growth/unsure', 'unsure'],
    ['questions/start-vessel', 'vessel'],
    ['questions/start-vessel/insects', 'insects'],
    ['questions/acidity/1', '{ over: 4.2, end: discard }'],
    ['questions/acidity/borderline', 'borderline'],
    ['after/cover', 'cover'],
    ['rules/fuzz-is-discarded', 'fuzz-is-discarded'],
    ['notes/cloudy', 'cloudy'],
    ['observations/age', 'age'],
    ['verdicts/wait', 'wait']
  ])('%s', (key, text) => {
    expect(written(key)).toBe(text)
  })

  test('what a piece brings along stands in the piece', () => {
    expect(places.jar?.['questions/start-vessel']?.file).toBe('shared/pieces/start.yaml')
  })
})

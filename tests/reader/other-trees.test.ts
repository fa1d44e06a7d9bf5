import { describe, expect, test } from 'vitest'
import { shippedReader } from './shipped-reader.ts'

const named = (tree: string, line: string) => {
  const { reader } = shippedReader(tree)
  return reader.elsewhere(reader.read(line))
}

describe('a line that names another ferment', () => {
  test.each([
    ['kombucha-jar', 'white film on my sauerkraut, day 9', ['brined-vegetables']],
    ['kombucha-jar', 'my pickles are cloudy', ['brined-vegetables']],
    ['kombucha-jar', 'one of my kombucha bottles hisses', ['kombucha-bottle']],
    ['kombucha-jar', 'home canned green beans', ['outside-this-tool']],
    ['kombucha-jar', 'mi chucrut tiene nata', ['brined-vegetables']],
    ['sourdough-starter', 'pelusa en los búlgaros', ['milk-and-water-kefir']]
  ])('at %s, %j, is that of %j', (tree, line, other) => {
    expect(named(tree, line)).toEqual(other)
  })

  test('offers each that a name can mean', () => {
    expect(named('sourdough-starter', 'my kombucha is hairy')).toEqual([
      'kombucha-jar',
      'kombucha-bottle',
      'kombucha-culture'
    ])
  })
})

describe('no other ferment is named', () => {
  test.each([
    ['kombucha-jar', 'my kombucha stood next to the sauerkraut'],
    ['kombucha-jar', 'the scoby is hairy, smells like vinegar, day 9'],
    ['kombucha-jar', 'how much salt for sauerkraut'],
    ['kombucha-jar', 'is hairy'],
    ['kombucha-jar', '']
  ])('at %s by %j', (tree, line) => {
    expect(named(tree, line)).toEqual([])
  })
})

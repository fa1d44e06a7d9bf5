import fc from 'fast-check'
import { expect, test } from 'vitest'
import { isolated } from '../../src/translation/isolated.ts'

const shown = (text: string) =>
  isolated(text)
    .replace(/[\u2066\u2068]/g, '<')
    .replaceAll('\u2069', '>')

// What needs its own order by rule W1 to N2 of Unicode Standard Annex 9: letters and signs of the other
// direction between numbers turn round.
test.each([
  ['احفظه عند 40 °F (4 °C) أو أقل.', 'احفظه عند <40 °F (4 °C)> أو أقل.'],
  ['اتصل على 1-800-222-1222.', 'اتصل على <1-800-222-1222>.'],
  ['خط المساعدة (Poison Help) الآن', 'خط المساعدة (<Poison Help>) الآن'],
  ['عند 70–75 °F، لا أكثر', 'عند <70–75 °F>، لا أكثر'],
  ['الرقم الهيدروجيني pH 4.2 أو أقل', 'الرقم الهيدروجيني <pH 4.2> أو أقل'],
  ['انتظر 3–4 أيام', 'انتظر 3–4 أيام'],
  ['911', '911'],
  ['Call 1-800-222-1222.', 'Call 1-800-222-1222.'],
  ['اتصل على {{phone}}، أي وقت', 'اتصل على <{{phone}}>، أي وقت'],
  ['اتصل بالرقم 911. ثم انتظر', 'اتصل بالرقم 911. ثم انتظر'],
  ['خلال {{count}} أيام عند 40 °F', 'خلال <{{count}}> أيام عند <40 °F>'],
  ['قل: possible botulism. Then wait', 'قل: <possible botulism>. <Then wait>']
])('%s', (text, wanted) => {
  expect(shown(text)).toBe(wanted)
})

test('nothing of a text is lost or moved', () => {
  const piece = fc.constantFrom(
    'لا',
    ' ',
    'pH',
    '4.2',
    '(',
    ')',
    '°F',
    '1-800',
    '.',
    '،',
    '“',
    ', '
  )
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 14 }), pieces => {
      const text = pieces.join('')
      const out = isolated(text)
      expect(out.replace(/[\u2066\u2068\u2069]/g, '')).toBe(text)
      expect(out.split(/[\u2066\u2068]/).length).toBe(out.split('\u2069').length)
    })
  )
})

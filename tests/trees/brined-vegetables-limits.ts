import type { Answers } from '../../src/tree/answers.ts'
import {
  acid,
  caution,
  coldKimchi,
  discard,
  fine,
  growing,
  kind,
  noReading,
  salt,
  wait,
  warmth
} from './brined-vegetables-told.ts'
import { narrowStrip, type Row, sharing, wideStrip } from './kombucha-jar-rows.ts'

const strip = (reading: Answers[string], told: Answers = {}): Answers => ({
  'brine-ph': reading,
  ...told
})
const kimchi = kind('kimchi')
const pickles = kind('cucumber-pickles')
const weak: Answers = { ...pickles, 'pickle-brine': 'weaker-or-own' }
const cool = warmth('sixty-five-to-seventy')
const cold = warmth('under-sixty-five')

/** Every limit, on both sides. */
export const VEGETABLE_LIMITS: readonly Row[] = [
  ...sharing(fine, 'unh-2025, snyder-2020', [
    ['S10', 'kraut, meter, at 4.6', acid(4.55, 28)],
    ['S10', 'kraut, narrow strip, at 4.6', strip(narrowStrip(4.3))],
    ['S10', 'kraut, wide strip, at 4.6', strip(wideStrip(4.1))],
    ['S10', 'pickles on day 28', { ...pickles, ...acid(3.5, 28) }],
    ['S10', 'a cool room on day 42', { ...cool, ...acid(3.5, 42) }],
    ['S10', 'a cold room on day 42', { ...cold, ...acid(3.5, 42) }],
    ['S10', 'warmth unknown on day 42', { ...warmth('unsure'), ...acid(3.5, 42) }]
  ]),
  ...sharing(growing, 'unh-2025, niksic-2005', [
    ['S10', 'kraut on day 27', acid(3.5, 27)],
    ['S10', 'pickles on day 27', { ...pickles, ...acid(3.5, 27) }],
    ['S10', 'a cool room on day 41', { ...cool, ...acid(3.5, 41) }],
    ['S10', 'a cold room on day 41', { ...cold, ...acid(3.5, 41) }],
    ['S10', 'warmth unknown on day 41', { ...warmth('unsure'), ...acid(3.5, 41) }]
  ]),
  ...sharing(wait, caution, [
    ['S7', 'kraut, meter, just past 4.6', acid(4.56, 28)],
    ['S7', 'kraut, narrow strip, just past 4.6', strip(narrowStrip(4.31))],
    ['S7', 'kraut, wide strip, just past 4.6', strip(wideStrip(4.11))],
    ['S7', 'kraut, meter, last doubt', acid(4.65, 28)]
  ]),
  ...sharing(discard, caution, [
    ['1.3', 'kraut, meter, surely past 4.6', acid(4.66, 28)],
    // After the first doubt kraut is given two more waits, by the second reading of the guidance.
    ['S7', 'in doubt a third time', { ...acid(4.6, 28), 'acid-before': 'twice-or-more' }]
  ]),
  ...sharing(growing, caution, [['1.3', 'not sour on day 2', acid(4.8, 2)]]),
  ...sharing(wait, caution, [
    ['1.3', 'not sour on day 3', acid(4.8, 3)],
    ['1.3', 'not sour on day 6', acid(4.8, 6)],
    ['2.4', 'cold kimchi, not sour on day 27', { ...coldKimchi, ...acid(5, 27) }]
  ]),
  ...sharing({ use: 'not-yet' }, caution, [
    ['1.3', 'a cold room, not sour on day 13', { ...cold, ...acid(4.8, 13) }],
    ['1.3', 'nobody has measured', noReading],
    ['1.3', 'nobody knows how old it is', { 'days-in-brine': 'unsure' }]
  ]),
  ...sharing(discard, caution, [
    ['1.3', 'not sour on day 7', acid(4.8, 7)],
    ['1.3', 'a cold room, not sour on day 14', { ...cold, ...acid(4.8, 14) }],
    ['1.3', 'a cool room, not sour on day 7', { ...cool, ...acid(4.8, 7) }],
    ['2.4', 'cold kimchi, not sour on day 28', { ...coldKimchi, ...acid(5, 28) }],
    ['2.4', 'warm kimchi, not sour on day 7', { ...kimchi, ...acid(5, 7) }]
  ]),
  ...sharing(fine, caution, [
    ['S10', 'kimchi at 4.2 on day 7', { ...kimchi, ...acid(4.15, 7) }],
    ['S10', 'kimchi, narrow strip, at 4.2', strip(narrowStrip(3.9), kimchi)],
    ['S10', 'kimchi, wide strip, at 4.2', strip(wideStrip(3.7), kimchi)]
  ]),
  ...sharing(growing, caution, [['S10', 'kimchi on day 6', { ...kimchi, ...acid(4, 6) }]]),
  ...sharing(wait, caution, [
    ['S10', 'kimchi just past 4.2', { ...kimchi, ...acid(4.16, 7) }],
    ['S10', 'kimchi, narrow strip, just past 4.2', strip(narrowStrip(3.91), kimchi)],
    ['S10', 'kimchi, wide strip, just past 4.2', strip(wideStrip(3.71), kimchi)]
  ]),
  ...sharing({ use: 'as-directed' }, `osu-kraut, ${caution}`, [
    ['2.1', 'salt at 1.7, sour to 4.4', { ...salt(1.7), ...acid(4.4, 30) }],
    ['2.1', 'pickles by a tested recipe, sour to 4.4', { ...pickles, ...acid(4.4, 30) }]
  ]),
  ...sharing({ use: 'not-yet' }, `osu-kraut, missouri-salt, ${caution}`, [
    ['2.1', 'salt under 1.7, sour to 4.4', { ...salt(1.69), ...acid(4.4, 30) }],
    ['2.1', 'salt unknown, sour to 4.4', { 'salt-share': 'unsure', ...acid(4.4, 30) }],
    ['2.1', 'a weak brine, sour to 4.4', { ...weak, ...acid(4.4, 30) }]
  ])
]

import { days, type Row, sharing } from './kombucha-jar-rows.ts'
import {
  again,
  caution,
  choice,
  discard,
  fine,
  growing,
  memory,
  practice,
  sign,
  wait
} from './told.ts'

const rise = choice('starter-rise')
const smell = sign('dough-smell')
const age = (count: number) => ({ 'starter-age': days(count) })

const mixes = 'NC State, food safety FAQ 631, starter mix'

/** Ages on both sides of each limit. */
export const STARTER_LIMITS: readonly Row[] = [
  ...sharing(fine, `${practice}; ${memory}`, [
    ['3.0', 'rises predictably on day 7', age(7)],
    ['3.0', 'rises predictably on day 8', age(8)]
  ]),
  ...sharing(growing, `${practice}; ${memory}`, [
    ['3.0', 'rises predictably on day 6', age(6)],
    ['3.0', 'mixed today', age(0)]
  ]),
  ...sharing(wait, `${memory}; ${caution}`, [
    ['3.12', 'no activity on day 9', { ...rise('never-active'), ...age(9) }],
    ['3.12', 'flat again on day 9', { ...rise('went-flat'), ...age(9) }],
    ['3.12', 'no activity, its age unknown', { ...rise('never-active'), 'starter-age': 'unsure' }]
  ]),
  ...sharing(discard, `${memory}; ${caution}`, [
    ['3.12', 'no activity on day 10', { ...rise('never-active'), ...age(10) }],
    ['3.12', 'no activity on day 14', { ...rise('never-active'), ...age(14) }],
    ['3.12', 'flat since the first days on day 10', { ...rise('went-flat'), ...age(10) }],
    ['3.16', 'still flat after three feeds', { ...rise('flat-after-rest'), ...again }]
  ]),
  ...sharing(wait, practice, [
    [
      '3.8',
      'smells of cheese twice by day 9',
      { ...smell('cheese-or-vomit'), ...age(9), ...again }
    ],
    ['3.9', 'smells of cheese first on day 10', { ...smell('cheese-or-vomit'), ...age(10) }]
  ]),
  ...sharing(discard, mixes, [
    [
      '3.9',
      'smells of cheese twice by day 10',
      { ...smell('cheese-or-vomit'), ...age(10), ...again }
    ],
    [
      '3.9',
      'smells of cheese twice, its age unknown',
      { ...smell('cheese-or-vomit'), 'starter-age': 'unsure', ...again }
    ]
  ])
]

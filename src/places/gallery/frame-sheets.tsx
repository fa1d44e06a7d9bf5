import { Choose } from '../../parts/choose.tsx'
import { Foot } from '../../parts/foot.tsx'
import { Masthead } from '../../parts/masthead.tsx'
import type { Setting } from '../../parts/setting.tsx'
import { StringOfMouths } from '../../parts/string-of-mouths.tsx'
import { SwitchTree } from '../../parts/switch-tree.tsx'
import { WalkScreen } from '../../parts/walk-screen.tsx'
import { played, playedUntil } from './played.ts'
import { alone, type Sheet, type State, together } from './sheet.ts'

const nothing = () => undefined

/** What frames a screen: top, string of mouths, foot and notices. */
export function frameSheets(setting: Setting): readonly Sheet[] {
  const { tree, words, office } = setting
  const title = words.t(`${tree.id}:title`)
  const masthead = (name: string, shown: Partial<Parameters<typeof Masthead>[0]>): State => ({
    name,
    show: <Masthead title={null} draft={false} onBack={null} onStartOver={null} {...shown} />
  })
  const foot = (name: string, moment: string, of = office): State => ({
    name,
    show: <Foot office={of} today={new Date(moment)} />
  })
  return [
    ...together(
      ['masthead', 'language-switch'],
      [
        masthead('choosing', {}),
        masthead('walking a draft', { title, draft: true, onBack: nothing, onStartOver: nothing }),
        masthead('walking a signed tree', { title, onBack: nothing, onStartOver: nothing })
      ]
    ),
    ...alone(['string-of-mouths', 'mouth-string'], mouths(setting)),
    ...together(
      ['foot', 'phone', 'switch-tree'],
      [
        foot('open with a notice', '2026-11-24T16:00:00Z'),
        foot('closed', '2026-11-15T16:00:00Z'),
        foot('numbers not checked lately', '2028-03-01T16:00:00Z'),
        foot('no office', '2026-11-24T16:00:00Z', null),
        { name: 'another ferment', show: <SwitchTree onSwitch={nothing} /> }
      ]
    ),
    ...alone(
      ['notice'],
      [
        {
          name: 'no such tree',
          show: (
            <Choose
              trees={[{ id: tree.id, drawing: setting.drawings['wet-film'] ?? '' }]}
              notice={words.t('ui:no-such-tree')}
              quiet={true}
              onChoose={nothing}
            />
          )
        }
      ]
    ),
    ...linked(setting)
  ]
}

/** A walk that a link began, with each thing that can be said of the link. */
function linked({ tree, words }: Setting): readonly Sheet[] {
  const brought = playedUntil(tree, {}, 'jar-ph')
  return (['whole', 'other-edition', 'damaged'] as const).map(standing => ({
    id: `notice/link-${standing}`,
    parts: ['notice'],
    whole: true,
    states: [
      {
        name: `link ${standing}`,
        show: (
          <WalkScreen
            start={brought}
            notice={words.t(`ui:link-${standing}`)}
            quiet={true}
            onLeave={nothing}
          />
        )
      }
    ]
  }))
}

function mouths({ tree }: Setting): readonly State[] {
  const all = played(tree, {
    'jar-signs': { 'continuous-vessel': 'yes', 'flies-outside': 'unsure' },
    'surface-texture': 'unsure',
    'spots-and-color': 'even-tint',
    'colored-ingredient': 'added'
  })
  const ids = Object.keys(all)
  const string = (name: string, count: number, current: string | null): State => ({
    name,
    show: (
      <StringOfMouths
        asked={ids.slice(0, count)}
        answers={all}
        current={current}
        onChange={nothing}
      />
    )
  })
  return [
    string('no answer yet', 0, ids[0] ?? null),
    string('three answers and a question', 3, ids[3] ?? null),
    string('nine answers at the outcome', 9, null),
    string('an earlier answer being changed', 9, ids[4] ?? null)
  ]
}

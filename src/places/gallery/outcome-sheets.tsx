import { evaluate } from '../../evaluate/evaluate.ts'
import { walk } from '../../evaluate/walk.ts'
import type { OfficePack } from '../../office/office-pack.ts'
import { Alarms } from '../../parts/alarms.tsx'
import { Calls } from '../../parts/calls.tsx'
import { Emergency } from '../../parts/emergency.tsx'
import { FollowUps } from '../../parts/follow-ups.tsx'
import { LookAlike, LookAlikesNever } from '../../parts/look-alike.tsx'
import { LookAlikesHere } from '../../parts/look-alikes-here.tsx'
import { Outcome } from '../../parts/outcome.tsx'
import { type ToldOutcome, tellOf } from '../../parts/said-twice.ts'
import { SeenCompared, SeenOnPaper, SeenPicture } from '../../parts/seen-picture.tsx'
import type { Setting } from '../../parts/setting.tsx'
import { VerdictCard } from '../../parts/verdict-card.tsx'
import { reportOf, reportOn } from '../../report/report.ts'
import type { Answers } from '../../tree/answers.ts'
import { NOTHING_YET, type Outcome as TreeOutcome } from '../../tree/caution.ts'
import type { Verdict } from '../../tree/tree.ts'
import { alarmsOf } from '../../words/alarms.ts'
import { type Said, say } from '../../words/say.ts'
import { played, playedUntil } from './played.ts'
import { alone, type Sheet, type State, together } from './sheet.ts'

const MOLDY: Answers = { 'surface-texture': 'dry-fuzzy' }
const ILL: Answers = {
  'people-signs': { 'illness-signs': 'yes' },
  drinkers: { 'someone-drank': 'yes' }
}
const BULGING: Answers = { 'container-signs': { 'burst-or-out-of-reach': 'yes' } }
const EMERGENCY_TOLD: Answers = { 'people-signs': { 'severe-symptoms': 'yes' } }
const LATER = new Date('2028-03-01T16:00:00Z')

/** What is said at the end, and what cannot wait for it. */
export function outcomeSheets(setting: Setting): readonly Sheet[] {
  const { tree, words, office, today } = setting
  const outcome = (name: string, answers: Answers): State => ({
    name,
    show: <Outcome {...toldOf(setting, answers)} quiet={true} />
  })
  const calls = (name: string, on: Date, pack: OfficePack | null): State => {
    const said = saidOf({ ...setting, office: pack, today: on }, ILL)
    return { name, show: <Calls calls={said.calls} doubt={said.officeDoubt} /> }
  }
  const alarms = (name: string, answers: Answers): State => ({
    name,
    show: (
      <Alarms
        alarms={alarmsOf(
          tree,
          walk(tree, playedUntil(tree, answers, 'surface-texture')).outcome,
          words
        )}
      />
    )
  })
  return [
    ...together(
      ['verdict-card', 'edge'],
      tree.verdicts.map(verdict => card(setting, verdict))
    ),
    ...alone(
      ['outcome'],
      [
        outcome('an ordinary jar', {}),
        outcome('a moldy jar', MOLDY),
        outcome('wait and look again', { 'surface-texture': 'unsure', 'side-light': 'unsure' }),
        outcome('a person who is ill', ILL),
        outcome('a jar under pressure', BULGING),
        outcome('a person and a moldy jar', { ...ILL, ...MOLDY }),
        {
          ...outcome('review overdue', {}),
          show: <Outcome {...toldOf({ ...setting, today: LATER }, {})} quiet={true} />
        }
      ]
    ),
    ...together(
      ['seen-picture'],
      [
        ...seenStates('of the jar of an ordinary caller', setting, {}),
        ...seenStates('of a moldy jar', setting, MOLDY),
        ...seenStates('of a moldy jar, seen from the side', setting, {
          'surface-texture': 'unsure',
          'side-light': 'hairs-or-powder'
        })
      ]
    ),
    ...together(
      ['follow-ups'],
      [
        { name: 'after mold', show: <FollowUps said={saidOf(setting, MOLDY)} beside={null} /> },
        {
          name: 'after an ordinary jar',
          show: <FollowUps said={saidOf(setting, {})} beside={null} />
        }
      ]
    ),
    ...together(
      ['look-alike'],
      setting.lookAlikes.map(pair => ({
        name: pair.id,
        show: (
          <>
            <LookAlike pair={pair} drawings={setting.drawings} />
            <LookAlikesNever />
          </>
        )
      }))
    ),
    ...together(
      ['look-alikes-here'],
      [{ name: 'at the surface', show: <LookAlikesHere observation="surface-texture" /> }]
    ),
    ...together(
      ['calls', 'phone'],
      [
        calls('numbers checked lately', today, office),
        calls('numbers not checked lately', LATER, office),
        calls('no office', today, null)
      ]
    ),
    ...together(
      ['alarms'],
      [
        alarms('a person who is ill', ILL),
        alarms('a jar under pressure', BULGING),
        alarms('both', { ...ILL, ...BULGING })
      ]
    ),
    ...alone(
      ['emergency', 'step-heading'],
      [
        {
          name: 'alone on the screen',
          show: (
            <Emergency
              said={saidOf(setting, EMERGENCY_TOLD)}
              beside={null}
              understood={[{ observation: 'people-signs', sign: 'severe-symptoms' }]}
              onTakeBack={() => undefined}
            />
          )
        }
      ]
    )
  ]
}

function toldOf(setting: Setting, answers: Answers): ToldOutcome {
  const { tree, office, today } = setting
  return tellOf(setting, reportOn(evaluate(tree, played(tree, answers)), office, today))
}

function saidOf({ tree, words, sources, office, today }: Setting, answers: Answers): Said {
  return say(reportOn(evaluate(tree, played(tree, answers)), office, today), words, sources)
}

/** What was seen, on a screen, on paper, and beside what it is mixed up with. */
function seenStates(name: string, setting: Setting, answers: Answers): readonly State[] {
  const { seen } = toldOf(setting, answers)
  if (seen === null) return []
  return [
    { name: `the drawing ${name}`, show: <SeenPicture seen={seen} /> },
    { name: `on paper ${name}`, show: <SeenOnPaper seen={seen} /> },
    { name: `compared ${name}`, show: <SeenCompared seen={seen} /> }
  ]
}

/** A verdict by itself, worded as if it alone had come out: no jar of this tree leads to all of them. */
function card({ tree, words, sources, office, today }: Setting, verdict: Verdict): State {
  const { id, track, ceiling } = verdict
  const outcome: TreeOutcome = { ...NOTHING_YET, [track]: id, use: ceiling }
  const said = say(reportOf(tree, outcome, office, today), words, sources)
  return {
    name: `${track}: ${id}`,
    show: said.verdicts.map(one => (
      <VerdictCard key={one.id} verdict={one} heading={text => <h3>{text}</h3>} />
    ))
  }
}

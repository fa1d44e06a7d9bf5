import { useEffect, useMemo, useState } from 'preact/hooks'
import { localTime } from '../../../office/hours.ts'
import type { Catalogue, Openers, Texts } from '../../../opening/bundle.ts'
import { joined, speechIn } from '../../../opening/speech.ts'
import { useTree } from '../../../opening/use-tree.ts'
import { SpeechProvider } from '../../../parts/setting.tsx'
import { type Attempt, isNumber, judgedOf } from '../../../practice/attempt.ts'
import { outcomeFor } from '../../../practice/caller-facts.ts'
import type { PracticeCaller } from '../../../tree/practice-caller.ts'
import type { Verdict } from '../../../tree/tree.ts'
import { createWords, SOURCE_TAG } from '../../../words/words.ts'
import { Desk } from '../desk.tsx'
import type { SheetSeen } from '../watched.ts'
import { CallerPane } from './caller-pane.tsx'
import { Comparison } from './comparison.tsx'
import { eraseAttempts, keepAttempt, keptAttempts } from './kept-attempts.ts'
import { PickCaller } from './pick-caller.tsx'
import { Results } from './results.tsx'

/** What became of a result: kept, for nobody to keep, or refused by the browser. */
type Kept = 'kept' | 'no-number' | 'not-kept'

/** Practice calls: an invented caller on the left, the ordinary call sheet on the right. */
export function PracticePage({
  catalogue,
  openers,
  tellings,
  callers,
  verdicts,
  drawings
}: {
  catalogue: Catalogue
  openers: Openers
  /** By language tag: what callers tell, and what is said here. */
  tellings: Readonly<Record<string, Texts>>
  callers: readonly PracticeCaller[]
  /** Gentlest first on each track. */
  verdicts: readonly Verdict[]
  drawings: Readonly<Record<string, string>>
}) {
  const speech = useMemo(() => speechIn({ [SOURCE_TAG]: catalogue.texts }, SOURCE_TAG), [])
  const { words } = speech
  const [caller, setCaller] = useState(() => drawn(callers, null))
  const [round, setRound] = useState(0)
  const [volunteer, setVolunteer] = useState('')
  const [seen, setSeen] = useState<SheetSeen | null>(null)
  const [compared, setCompared] = useState<{
    readonly attempt: Attempt
    readonly seen: SheetSeen
  } | null>(null)
  const [kept, setKept] = useState<Kept>('kept')
  const [attempts, setAttempts] = useState(() => keptAttempts(verdicts))
  const [shows, setShows] = useState<'call' | 'results'>('call')
  const opened = useTree(openers.trees[caller.tree], [SOURCE_TAG])
  const home = opened === null || opened === 'failed' ? null : opened.bundle
  const homeWords = useMemo(
    () =>
      home === null
        ? null
        : createWords(
            joined({ [SOURCE_TAG]: catalogue.texts }, { [SOURCE_TAG]: home.texts }),
            SOURCE_TAG
          ),
    [home]
  )
  const title = words.t('ui:practice.title')
  useEffect(() => {
    document.title = `${title} · Jarside`
  }, [title, shows, seen])

  const play = (next: PracticeCaller) => {
    setCaller(next)
    setRound(round + 1)
    setSeen(null)
    setCompared(null)
  }
  const compare = () => {
    if (home === null || seen?.outcome == null) return
    const attempt: Attempt = {
      id: crypto.randomUUID(),
      caller: caller.id,
      tree: caller.tree,
      took: seen.tree.id,
      fingerprint: home.tree.fingerprint,
      volunteer: Number(volunteer),
      day: localTime(new Date(), undefined).date,
      given: judgedOf(seen.outcome),
      expected: judgedOf(outcomeFor(home.tree, caller.answers))
    }
    setCompared({ attempt, seen })
    if (!/^\d{1,4}$/.test(volunteer) || !isNumber(attempt.volunteer)) {
      setKept('no-number')
      return
    }
    setKept(keepAttempt(attempt) ? 'kept' : 'not-kept')
    // What the browser did not keep is in memory still: it can be taken out as a file.
    setAttempts([...attempts, attempt])
  }

  if (shows === 'results') {
    return (
      <SpeechProvider value={speech}>
        <Results
          attempts={attempts}
          verdicts={verdicts}
          onBack={() => setShows('call')}
          onErase={() => {
            eraseAttempts()
            setAttempts([])
          }}
        />
      </SpeechProvider>
    )
  }
  const tag = caller.speaks
  return (
    <div class="practice">
      <SpeechProvider value={speech}>
        <aside class="practice-side" aria-label={title}>
          <p class="practice-title">
            <strong>{title}</strong> <a href="./desk.html">{words.t('ui:practice.to-desk')}</a>{' '}
            <button
              type="button"
              class="quiet"
              data-action="results"
              onClick={() => setShows('results')}
            >
              {words.t('ui:practice.results')}
            </button>
          </p>
          <p class="practice-intro">{words.t('ui:practice.intro')}</p>
          <PickCaller
            callers={callers}
            caller={caller}
            onCaller={play}
            onDraw={among => play(drawn(among, caller))}
            volunteer={volunteer}
            onVolunteer={setVolunteer}
          />
          <CallerPane
            // Another call begins with nothing asked.
            key={round}
            caller={caller}
            telling={tellingOf(tellings[tag], caller) ?? words.t(`practice:${caller.id}`)}
            english={tag === SOURCE_TAG ? null : words.t(`practice:${caller.id}`)}
            language={catalogue.languages.find(each => each.tag === tag)?.name ?? tag}
            drawings={drawings}
            home={home?.tree ?? null}
            seen={seen}
          />
          {compared === null ? (
            <div class="practice-compare">
              <button
                type="button"
                class="primary"
                data-action="compare"
                disabled={seen?.outcome == null || home === null}
                onClick={compare}
              >
                {words.t('ui:practice.compare')}
              </button>
              {seen?.outcome == null && <p>{words.t('ui:practice.compare-how')}</p>}
            </div>
          ) : (
            home !== null &&
            homeWords !== null && (
              <Comparison
                {...compared}
                tree={home.tree}
                caller={caller}
                names={homeWords}
                verdicts={verdicts}
                kept={words.t(`ui:practice.${kept}`, { number: volunteer })}
                onNext={() => play(drawn(callers, caller))}
              />
            )
          )}
        </aside>
      </SpeechProvider>
      <div class="practice-desk">
        <Desk key={round} catalogue={catalogue} openers={openers} watch={setSeen} />
      </div>
    </div>
  )
}

/** One by lot, another than the one before. */
function drawn(callers: readonly PracticeCaller[], before: PracticeCaller | null): PracticeCaller {
  const others = callers.filter(each => each !== before)
  const among = others.length > 0 ? others : callers
  const one = among[Math.floor(Math.random() * among.length)] ?? before
  if (one === null) throw new RangeError('There is no practice caller.')
  return one
}

function tellingOf(texts: Texts | undefined, { id }: PracticeCaller): string | null {
  const telling = Object.entries(texts?.practice ?? {}).find(([caller]) => caller === id)?.[1]
  return typeof telling === 'string' ? telling : null
}

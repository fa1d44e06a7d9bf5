import { useEffect, useState } from 'preact/hooks'
import { outcomeToShare } from '../../addresses/outcome-address.ts'
import { homeOf, sheetAddress } from '../../addresses/sheet-address.ts'
import {
  NOTHING_TOLD,
  recheckInDays,
  subjectOf,
  toldOfCall
} from '../../contacts/what-to-record.ts'
import type { Calls } from '../../machine/calls.ts'
import { Emergency } from '../../parts/emergency.tsx'
import { emergencyTold } from '../../parts/emergency-told.ts'
import { Foot } from '../../parts/foot.tsx'
import { PrintedSheet } from '../../parts/printed-sheet.tsx'
import { QuestionInHand } from '../../parts/question-in-hand.tsx'
import { type Setting, useSetting } from '../../parts/setting.tsx'
import { Text } from '../../parts/text.tsx'
import type { Told } from '../../reader/fact.ts'
import type { FactReader } from '../../reader/fact-reader.ts'
import type { Answer, Answers } from '../../tree/answers.ts'
import type { Language } from '../../words/languages.ts'
import { cautionText } from '../../words/tree-texts.ts'
import { Asked } from './asked.tsx'
import { AtOnce } from './at-once.tsx'
import { CallHead } from './call-head.tsx'
import { standingOf } from './call-standing.ts'
import { Decided } from './decided.tsx'
import { Elsewhere, type NamedElsewhere } from './elsewhere.tsx'
import { FactField } from './fact-field.tsx'
import { FactStrip } from './fact-strip.tsx'
import { dropCall } from './kept-call.ts'
import { KeptOffer, type Unfinished } from './kept-offer.tsx'
import { KeysLine } from './keys-line.tsx'
import { RecordPanel } from './record-panel.tsx'
import { SayThis } from './say-this.tsx'
import { DueToday } from './slips.tsx'
import { useAnswerKeys } from './use-answer-keys.ts'
import { useCall } from './use-call.ts'
import type { Recording } from './use-recording.ts'
import { type SheetSeen, useWatched } from './watched.ts'

/** One call on one sheet, top to bottom: what is said, what to read aloud, the facts, what is decided. */
export function CallSheet({
  handed,
  reader,
  languages,
  caller,
  languageLost,
  trees,
  start,
  begins,
  typing,
  onCall,
  byKeys,
  onByKeys,
  recording,
  unfinished,
  watch
}: {
  /** The setting in which the caller gets text and paper. */
  handed: Setting
  reader: FactReader | null
  languages: readonly Language[]
  /** The language that the caller speaks. */
  caller: string
  languageLost: boolean
  /** The trees that can be changed to. */
  trees: readonly string[]
  /** The facts told before this tree was chosen. */
  start: readonly Told[]
  /** The line with which it was chosen, which is read in its words. */
  begins: string
  /** While facts are typed the focus stays in the field, whatever question they lead to. */
  typing: boolean
  onCall: Calls['send']
  /** Whether letters and digits answer. */
  byKeys: boolean
  onByKeys: (on: boolean) => void
  /** How this call is recorded. */
  recording: Recording
  unfinished: Unfinished
  /** A practice call: it is watched, and nothing of it is kept or recorded. */
  watch: ((seen: SheetSeen) => void) | null
}) {
  const setting = useSetting()
  const { tree, words, office, today } = setting
  const call = useCall(start)
  const [asked, setAsked] = useState<string | null>(null)
  const [elsewhere, setElsewhere] = useState<NamedElsewhere | null>(null)
  const { walk } = call
  const standing = standingOf(setting, walk)
  const { told, emergency, urgent, left, fromMemory, moldy } = standing
  const { report } = walk
  const asking = {
    ...walk,
    recalled:
      walk.recalled ||
      (fromMemory && walk.question?.about !== 'person') ||
      (moldy && walk.question?.about === 'batch'),
    answer: (observation: string, answer: Answer) => {
      onCall({ type: 'answer' })
      walk.answer(observation, answer)
    },
    answerTogether: (answers: Answers) => {
      onCall({ type: 'answer' })
      walk.answerTogether(answers)
    }
  }
  useWatched(watch, walk, told !== null || emergency !== null)
  const keysDo = useAnswerKeys(byKeys)
  useEffect(() => {
    document.title = `${words.t('ui:desk.title')} · Jarside`
  }, [])
  const nextCall = () => {
    if (unfinished.kept === null && watch === null) dropCall()
    onCall({ type: 'next-call' })
  }
  const head = (
    <CallHead
      languages={languages}
      caller={caller}
      onCaller={language => onCall({ type: 'speak', language })}
      languageLost={languageLost}
      onNewCall={nextCall}
      trees={trees}
      due={watch ? 0 : recording.slips.due.length}
      onTree={to => onCall({ type: 'choose', tree: to, facts: call.facts })}
    />
  )
  const addressOfSheet = () => {
    const shared = outcomeToShare(tree, walk)
    return (language: string) => sheetAddress(tree, shared, language, homeOf(office))
  }
  const record = watch === null && (
    <RecordPanel
      onNextCall={nextCall}
      log={recording.log}
      slips={recording.slips}
      volunteer={recording.volunteer}
      onVolunteer={recording.onVolunteer}
      call={{
        subject: subjectOf(tree),
        // What a call comes to is worked out when it has an outcome, not with every key.
        told: told !== null || emergency ? toldOfCall(walk.evaluation) : NOTHING_TOLD,
        decided: told !== null || emergency !== null,
        today: recording.today,
        minutes: recording.minutes,
        language: caller,
        counties: office?.log?.counties ?? [],
        recheckInDays: told === null || emergency ? null : recheckInDays(walk.evaluation),
        practice: false
      }}
    />
  )
  if (emergency) {
    return (
      <div class="screen desk desk-emergency">
        {head}
        <main class="main">
          <Emergency
            {...emergency}
            understood={emergencyTold(tree, walk.answers, walk.walked)}
            onTakeBack={walk.takeBack}
          />
          {record}
        </main>
      </div>
    )
  }
  return (
    <>
      <div
        class="screen desk"
        data-keys={byKeys ? keysDo : 'off'}
        // Over the answers of a choice: nobody reads them out, the caller describes.
        style={{ '--listen-for': JSON.stringify(words.t('ui:desk.listen-for')) }}
      >
        {head}
        <main class="main desk-main">
          {watch === null && <KeptOffer unfinished={unfinished} call={call} caller={caller} />}
          <AtOnce verdicts={urgent} />
          <FactField
            reader={reader}
            takesFocus={typing}
            begins={begins}
            before={call.facts}
            onFacts={(facts, takenBack) => {
              onCall({ type: 'tell' })
              call.tell(facts, takenBack)
            }}
            onAsked={setAsked}
            onElsewhere={setElsewhere}
          />
          <Elsewhere
            named={elsewhere}
            trees={trees}
            onTree={(tree, line) => onCall({ type: 'choose', tree, facts: call.facts, line })}
            onStay={() => setElsewhere(null)}
          />
          <Asked line={asked} onClose={() => setAsked(null)} />
          <FactStrip call={call} current={walk.question?.id ?? null} />
          {told === null && (
            <Decided
              {...standing}
              onStop={() => {
                onCall({ type: 'answer' })
                walk.stop()
              }}
            />
          )}
          <div class="desk-aloud">
            {told === null ? (
              <>
                <div class="desk-cues">
                  <p class="desk-cue">
                    {words.t(urgent.length > 0 ? 'ui:desk.if-you-wish' : 'ui:desk.read-aloud')}
                  </p>
                  <KeysLine on={byKeys} onChange={onByKeys} keysDo={keysDo} />
                </div>
                {urgent.length > 0 && (
                  <p class="desk-meanwhile">
                    <Text k={left ? 'ui:from-memory' : 'ui:people-first'} />
                  </p>
                )}
                <QuestionInHand walk={asking} quiet={typing} alarmed={false} left={left} />
              </>
            ) : (
              <SayThis
                told={told}
                handed={handed}
                report={report}
                early={walk.early}
                quiet={typing}
                onGoOn={() => walk.change(null)}
                answers={walk.answers}
                facts={call.facts}
                address={() => addressOfSheet()(handed.words.tag).typed}
                onAnswer={walk.replace}
                onInputs={walk.workOut}
              />
            )}
          </div>
          {told === null && <Always />}
          {record}
          {watch === null && <DueToday slips={recording.slips} />}
        </main>
        <Foot office={office} today={today} />
      </div>
      {told !== null && report !== null && (
        <PrintedSheet report={report} handed={handed} address={addressOfSheet} />
      )}
    </>
  )
}

/** What is said on every call, whatever comes out of it. */
function Always() {
  const { words, tree } = useSetting()
  return (
    <section class="always">
      <h2>{words.t('ui:desk.always')}</h2>
      {(['who-must-not', 'call-poison-help', 'not-proof'] as const).map(caution => (
        <p key={caution} data-caution={cautionText(words, tree.id, caution) && caution}>
          <Text k={`${tree.id}:cautions.${caution}`} />
        </p>
      ))}
    </section>
  )
}

import { useEffect, useRef } from 'preact/hooks'
import { useSpeech } from '../../../parts/setting.tsx'
import type { Attempt } from '../../../practice/attempt.ts'
import { callerFacts, type Mistaken, mistakenIn } from '../../../practice/caller-facts.ts'
import { apartOn, practiceScore, SIDES } from '../../../practice/score.ts'
import type { PracticeCaller } from '../../../tree/practice-caller.ts'
import type { Tree, Verdict } from '../../../tree/tree.ts'
import { apartText, sideText } from '../../../words/practice-lines.ts'
import type { Words } from '../../../words/words.ts'
import { factText } from '../fact-text.ts'
import type { SheetSeen } from '../watched.ts'

/** The volunteer's outcome beside the tree's, what decided it, and what is missing on the sheet. */
export function Comparison({
  attempt,
  seen,
  tree,
  caller,
  names,
  verdicts,
  kept,
  onNext
}: {
  attempt: Attempt
  /** The sheet as it stood when it was compared. */
  seen: SheetSeen
  /** The caller's. */
  tree: Tree
  caller: PracticeCaller
  /** The words of the caller's tree. */
  names: Words
  verdicts: readonly Verdict[]
  /** What became of the result. */
  kept: string
  onNext: () => void
}) {
  const { words } = useSpeech()
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    heading.current?.scrollIntoView({ block: 'start' })
    heading.current?.focus({ preventScroll: true })
  }, [])
  const facts = callerFacts(tree, caller.answers, seen.entered)
  const mistaken = mistakenIn(tree, caller.answers, seen.entered)
  const apart = SIDES.map(side => [side, apartOn(side, attempt, verdicts)] as const)
  const isSame = apart.every(([, levels]) => levels === 0 || levels === null)
  const { missed } = practiceScore([attempt], verdicts)
  const text = (fact: Mistaken) => {
    const { name, answer } = factText(names, tree, fact)
    return `${name}: ${answer}`
  }
  return (
    <section class="practice-comparison">
      <h2 ref={heading} tabIndex={-1}>
        {words.t('ui:practice.compared')}
      </h2>
      {missed.length > 0 && <p class="practice-unseen">{words.t('ui:practice.unseen')}</p>}
      {isSame && <p>{words.t('ui:practice.same')}</p>}
      {attempt.took !== attempt.tree && (
        <p>{words.t('ui:practice.other-tree', { tree: words.t(`${attempt.tree}:title`) })}</p>
      )}
      <table class="practice-table">
        <thead>
          <tr>
            <th scope="col">{words.t('ui:practice.side')}</th>
            <th scope="col">{words.t('ui:practice.yours')}</th>
            <th scope="col">{words.t('ui:practice.trees')}</th>
          </tr>
        </thead>
        <tbody>
          {apart.map(([side, levels]) => (
            <tr key={side} data-side={side} data-apart={levels ?? 'none'}>
              <th scope="row">{words.t(`ui:desk.track.${side}`)}</th>
              <td>
                {sideText(words, side, attempt.given)}
                <span class="practice-apart">{apartText(words, levels)}</span>
              </td>
              <td>{sideText(words, side, attempt.expected)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {([true, false] as const).map(decides => {
        const part = facts.filter(fact => fact.decides === decides)
        return part.length === 0 ? null : (
          <div key={`${decides}`} data-part={decides ? 'decided' : 'besides'}>
            <h3>{words.t(decides ? 'ui:practice.decided' : 'ui:practice.besides')}</h3>
            <ul>
              {part.map(fact => (
                <li key={text(fact)} data-entered={fact.entered}>
                  {text(fact)} <em>{words.t(`ui:practice.entered.${fact.entered}`)}</em>
                </li>
              ))}
            </ul>
          </div>
        )
      })}
      {mistaken.length > 0 && (
        <div data-part="mistaken">
          <h3>{words.t('ui:practice.mistaken')}</h3>
          <ul>
            {mistaken.map(fact => (
              <li key={text(fact)}>{text(fact)}</li>
            ))}
          </ul>
        </div>
      )}
      <p role="status" class="practice-intro">
        {kept}
      </p>
      <button type="button" class="primary" data-action="next" onClick={onNext}>
        {words.t('ui:practice.next')}
      </button>
    </section>
  )
}

import { couldBeTogether } from '../evaluate/could-be.ts'
import { keyOf, type Lead } from '../key/key.ts'
import { useSetting } from '../parts/setting.tsx'
import { TRACKS } from '../tree/observation.ts'
import { USES } from '../tree/tree.ts'
import { askKey } from '../words/ask-key.ts'
import { verdictText } from '../words/verdict-text.ts'
import { remarksOf, sheetCode, useCode } from './key-codes.ts'
import { goesText, type Line, linesOf } from './key-lines.ts'

/** The key of a tree as pages of numbered leads, for a power cut: a finger walks it. */
export function KeyLeads() {
  const { words, tree } = useSetting()
  const { leads } = keyOf(tree)
  const remarks = remarksOf(leads)
  return (
    <>
      <ol class="leads-how">
        {(['begin', 'take', 'end'] as const).map(line => (
          <li key={line}>{words.t(`ui:key.how.${line}`)}</li>
        ))}
      </ol>
      <Sheets />
      <ol class="leads">
        {leads.map(lead => (
          <LeadPart key={lead.number} lead={lead} remarks={remarks} />
        ))}
      </ol>
      <Remarks remarks={remarks} />
    </>
  )
}

/** Every sheet that the key can name, by track, the most cautious last. */
function Sheets() {
  const { words, tree } = useSetting()
  return (
    <section class="leads-sheets">
      {TRACKS.map(track => {
        const sheets = tree.verdicts.filter(
          each => each.track === track && couldBeTogether(tree, [each.id])
        )
        return (
          sheets.length > 0 && (
            <div key={track}>
              <h2>{words.t(`ui:key.${track}`)}</h2>
              <ul>
                {sheets.map(({ id }) => (
                  <li key={id}>
                    <b>{sheetCode(tree.verdicts, id)}</b> {verdictText(words, tree.id, id, 'name')}
                  </li>
                ))}
              </ul>
            </div>
          )
        )
      })}
      <div>
        <h2>{words.t('ui:key.use')}</h2>
        <ul>
          {USES.filter(use => use !== 'as-directed').map(use => (
            <li key={use}>
              <b>{useCode(use)}</b> {words.t(`${tree.id}:use.${use}`)}
            </li>
          ))}
        </ul>
      </div>
    </section>
  )
}

function LeadPart({ lead, remarks }: { lead: Lead; remarks: readonly string[] }) {
  const { words } = useSetting()
  const { number, from, observation, lookBack, onlyIfSo } = lead
  const ask = words.t(askKey(words, observation, false))
  return (
    <li class="lead" id={`lead-${number}`} value={number}>
      <h3>
        <b class="lead-number">{number}</b>{' '}
        {from.length > 0 && (
          <span class="lead-from">({words.t('ui:key.from', { leads: from.join(', ') })})</span>
        )}{' '}
        {lookBack === null ? ask : words.t('ui:key.look-back', { lead: lookBack, ask })}
        {onlyIfSo && <span class="lead-only"> {words.t('ui:key.only-if-so')}</span>}
      </h3>
      <ul>
        {linesOf(words, lead).map((line, index) => (
          <LinePart key={index} observation={observation} line={line} remarks={remarks} />
        ))}
      </ul>
    </li>
  )
}

function LinePart({
  observation,
  line,
  remarks
}: {
  observation: string
  line: Line
  remarks: readonly string[]
}) {
  const { words, tree, pictures, drawings } = useSetting()
  const { label, hint, answer, sheets, use, notes, goes } = line
  const picture = answer === null ? undefined : pictures[observation]?.answers[answer]
  const codes = [
    ...sheets.map(id => sheetCode(tree.verdicts, id)),
    ...(use === 'as-directed' ? [] : [useCode(use)])
  ]
  const noted = notes.map(note => remarks.indexOf(note) + 1)
  return (
    <li class="lead-line">
      {picture !== undefined && (
        <span
          class="lead-drawing"
          aria-hidden="true"
          // The project's own file, checked at build; its name stands beside it.
          dangerouslySetInnerHTML={{ __html: drawings[picture] ?? '' }}
        />
      )}
      <span class="lead-when">
        {label !== null && <span class="lead-label">{label}</span>}
        {hint !== null && <span class="lead-hint"> {hint}</span>}
      </span>
      <span class="lead-then">
        {codes.length > 0 && <b>{words.t('ui:key.takes', { sheets: codes.join(' ') })} </b>}
        {noted.length > 0 && (
          <span class="lead-noted">{words.t('ui:key.noted', { remarks: noted.join(', ') })} </span>
        )}
        {goes !== null && <b class="lead-goes">{goesText(words, goes)}</b>}
      </span>
    </li>
  )
}

/** What the leads have to say besides, once each. */
function Remarks({ remarks }: { remarks: readonly string[] }) {
  const { words } = useSetting()
  return (
    <section class="leads-remarks">
      <h2>{words.t('ui:key.remarks')}</h2>
      <ol>
        {remarks.map(note => (
          <li key={note}>{words.t(`notes:${note}`)}</li>
        ))}
      </ol>
    </section>
  )
}

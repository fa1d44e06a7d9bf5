import { useEffect, useId, useRef, useState } from 'preact/hooks'
import type { Fact } from '../../evaluate/facts.ts'
import { useSetting } from '../../parts/setting.tsx'
import { type Candidate, type Fragment, factKey, type Told } from '../../reader/fact.ts'
import type { FactReader } from '../../reader/fact-reader.ts'
import { isDangerFact } from '../../reader/worry.ts'
import type { Tree } from '../../tree/tree.ts'
import type { NamedElsewhere } from './elsewhere.tsx'
import { factText } from './fact-text.ts'

/** How many candidates are shown at once: more would have to be read while somebody waits. */
const SHOWN = 6

/**
 * The field that takes facts as callers say them. What is clear is taken at once; what may mean several
 * things is offered; what is not understood stays in the field and is said.
 */
export function FactField({
  reader,
  takesFocus,
  begins,
  before,
  onFacts,
  onAsked,
  onElsewhere
}: {
  reader: FactReader | null
  /** Whether the cursor is put here when the field appears. */
  takesFocus: boolean
  /** What stands in the field when it appears, and is taken at once; empty: nothing. */
  begins: string
  /** What was told before, which a line may correct. */
  before: readonly Told[]
  onFacts: (facts: readonly Told[], takenBack: readonly Fact[]) => void
  /** A part that asks and tells nothing, in the caller's words. */
  onAsked: (line: string) => void
  /** A line names what other trees are about. */
  onElsewhere: (named: NamedElsewhere) => void
}) {
  const { words, tree } = useSetting()
  const [typed, setTyped] = useState(begins)
  const [active, setActive] = useState(-1)
  const [closed, setClosed] = useState(false)
  const [message, setMessage] = useState<readonly string[]>([])
  /** Enter was pressed before anything could be read: the line is taken as soon as it can. */
  const [waiting, setWaiting] = useState(begins !== '')
  const field = useRef<HTMLInputElement>(null)
  const id = useId()
  useEffect(() => {
    if (takesFocus) field.current?.focus()
  }, [])
  const last = closed || typed.trim() === '' ? null : (reader?.begun(typed) ?? null)
  const candidates = last?.candidates.slice(0, SHOWN) ?? []
  const textOf = (fact: Told) => {
    const { name, answer } = factText(words, tree, fact)
    return `${name}: ${answer}`
  }

  /** An offer says what it would tell, not what was said. */
  const offerText = ({ observation, answer }: Candidate) => textOf({ observation, answer })

  const take = (parts: readonly Fragment[]) => {
    const { told, takenBack } = reader?.hear(before, parts) ?? { told: [], takenBack: [] }
    if (told.length + takenBack.length > 0) onFacts(told, takenBack)
    const trees = reader?.elsewhere(parts) ?? []
    if (trees.length > 0) onElsewhere({ trees, line: parts.map(({ text }) => text).join(', ') })
    const left = parts.filter(part => isOpen(tree, part, takenBack))
    const listed = (key: 'took' | 'took-back', facts: readonly Fact[]) =>
      facts.length === 0
        ? []
        : [words.t(`ui:desk.${key}`, { facts: facts.map(textOf).join(' · ') })]
    setMessage([
      ...listed('took-back', takenBack),
      ...listed('took', told),
      ...left.map(problemText)
    ])
    const asks = left.filter(({ problem }) => problem === 'asked')
    if (asks.length > 0) onAsked(asks.map(({ text }) => text).join(', '))
    setTyped(left.map(({ text }) => text).join(', '))
    setActive(-1)
    setClosed(false)
    field.current?.focus()
  }
  /** A candidate stands for the part of the line being typed; the parts before it are read as they are. */
  const pick = (candidate: Candidate) => {
    if (last === null) return
    const parts = (reader?.read(typed) ?? []).slice(0, -1)
    const { problem: _, ...part } = last
    take([...parts, { ...part, candidates: [{ ...candidate, sure: true }] }])
  }
  const takeLine = () => {
    setWaiting(reader === null)
    if (reader !== null && typed.trim() !== '') take(reader.read(typed))
  }
  useEffect(() => {
    if (waiting && reader !== null) takeLine()
  }, [reader])
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      if (candidates.length === 0) return
      event.preventDefault()
      const step = event.key === 'ArrowDown' ? 1 : -1
      // Through the candidates and the field itself, round and round.
      setActive(((active + 1 + step + candidates.length + 1) % (candidates.length + 1)) - 1)
    }
    // One Escape is enough: it closes the offers, and the call sheet moves the focus to the question.
    if (event.key === 'Escape') {
      setActive(-1)
      setClosed(true)
    }
  }

  return (
    <form
      class="fact-field"
      onSubmit={event => {
        event.preventDefault()
        const candidate = candidates[active]
        if (candidate !== undefined) pick(candidate)
        else takeLine()
      }}
    >
      <label for={id}>{words.t('ui:desk.what-said')}</label>
      <input
        id={id}
        ref={field}
        class="fact-input"
        role="combobox"
        autocomplete="off"
        spellcheck={false}
        aria-autocomplete="list"
        aria-expanded={candidates.length > 0}
        aria-controls={`${id}-list`}
        aria-activedescendant={active >= 0 ? `${id}-${active}` : undefined}
        aria-describedby={`${id}-how`}
        value={typed}
        onInput={event => {
          setTyped(event.currentTarget.value)
          setWaiting(false)
          setActive(-1)
          setClosed(false)
        }}
        onKeyDown={onKeyDown}
      />
      <p class="fact-how" id={`${id}-how`}>
        {words.t('ui:desk.how', { examples: words.t(`${tree.id}:examples`) })}
      </p>
      <div class="fact-message" role="status">
        {message.map(line => (
          <p key={line}>{line}</p>
        ))}
      </div>
      <div
        class="fact-candidates"
        id={`${id}-list`}
        role="listbox"
        aria-label={words.t('ui:desk.candidates')}
      >
        {candidates.map((candidate, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the focus stays in the field, whose keys choose (ARIA combobox pattern).
          <div
            key={offerText(candidate)}
            id={`${id}-${index}`}
            role="option"
            tabIndex={-1}
            class="fact-candidate"
            data-fact={factKey(candidate)}
            aria-selected={index === active}
            onClick={() => pick(candidate)}
          >
            {offerText(candidate)}
          </div>
        ))}
      </div>
    </form>
  )

  function problemText({ text, problem, span, candidates: found }: Fragment): string {
    if (problem === 'out-of-span' && span) {
      return words.t('ui:desk.out-of-span', { text, from: span.from, to: span.to })
    }
    if (problem === 'asked') return words.t('ui:desk.asked', { text })
    if (problem === 'said-not-seen') return words.t('ui:desk.said-not-seen', { text })
    return words.t(found.length > 0 ? 'ui:desk.pick-one' : 'ui:desk.not-understood', { text })
  }
}

const sureOf = ({ candidates }: Fragment): readonly Candidate[] =>
  candidates.filter(({ sure }) => sure)

/** Whether a part says something that is not taken yet: nothing in it is clear, or not all of it. */
function isOpen(tree: Tree, part: Fragment, takenBack: readonly Fact[]): boolean {
  if (part.problem === 'taken-back') return false
  const gone = new Set(takenBack.map(factKey))
  if (part.problem === 'said-not-seen' && part.denies?.some(each => gone.has(factKey(each)))) {
    return false
  }
  const sure = sureOf(part)
  const taken = new Set(sure.map(({ observation }) => observation))
  return (
    sure.length === 0 ||
    part.candidates.some(
      one => !taken.has(one.observation) || (!one.sure && isDangerFact(tree, one))
    )
  )
}

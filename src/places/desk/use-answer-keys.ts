import { useEffect, useState } from 'preact/hooks'

/** What a letter or digit does where the focus is: writes, answers the question, or nothing. */
export type KeysDo = 'write' | 'answer' | 'rest'

/**
 * Keys of the call sheet. Letters and digits answer only while the focus is on the question, where
 * somebody put it: a call begins in the field, and what is typed with the focus on nothing is text.
 * A slash goes to the field and Escape to the question. Switched off (WCAG 2.1.4) only Escape is left.
 */
export function useAnswerKeys(on: boolean): KeysDo {
  const [keysDo, setKeysDo] = useState<KeysDo>('write')
  useEffect(() => {
    const look = () => setKeysDo(whatKeysDo(document.activeElement))
    // Where the focus leaves for nothing, no focusin follows.
    const left = () => queueMicrotask(look)
    look()
    addEventListener('focusin', look)
    addEventListener('focusout', left)
    return () => {
      removeEventListener('focusin', look)
      removeEventListener('focusout', left)
    }
  }, [])
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      // A key that is held down answers once.
      if (event.repeat || event.defaultPrevented) return
      if (event.ctrlKey || event.altKey || event.metaKey) return
      if (event.key === 'Escape') {
        document.querySelector<HTMLElement>('.desk-main .step-heading')?.focus()
        return
      }
      if (!on) return
      const focus = document.activeElement
      const does = whatKeysDo(focus)
      if (does === 'answer') {
        if (event.key === '/') toField(event)
        else answerBy(event)
        return
      }
      if (does === 'rest' && event.key === '/') toField(event)
      // Nothing has the focus: what is typed goes where a call begins, letter by letter.
      if (focus === document.body && event.key.length === 1) fieldOf()?.focus()
    }
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  }, [on])
  return keysDo
}

const fieldOf = () => document.querySelector<HTMLElement>('.fact-input')

function toField(event: KeyboardEvent): void {
  event.preventDefault()
  fieldOf()?.focus()
}

function answerBy(event: KeyboardEvent): void {
  const key = CSS.escape(event.key.toLowerCase())
  const answer = document.querySelector<HTMLElement>(`:is(.question, .decided) [data-key="${key}"]`)
  // What is folded away is answered by no key.
  if (answer?.checkVisibility()) {
    event.preventDefault()
    answer.click()
    return
  }
  // A number that is asked for is typed straight into its field.
  if (/^\d$/.test(event.key)) {
    document.querySelector<HTMLElement>('.question .measure-field input')?.focus()
  }
}

function whatKeysDo(focus: Element | null): KeysDo {
  if (focus === null) return 'rest'
  if (writesIn(focus)) return 'write'
  return focus.closest('.question') === null ? 'rest' : 'answer'
}

/** Whether keys are text where they are pressed; a box to tick takes only the space bar. */
const writesIn = (target: Element): boolean =>
  target.matches('input:not([type="checkbox"], [type="radio"]), textarea, select')

import { useEffect } from 'preact/hooks'

/** Keys of the call sheet: those beside the answers, a slash for the field, Escape back to the question. */
export function useAnswerKeys(): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      // A key that is held down answers once.
      if (event.repeat) return
      if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return
      const inField = event.target instanceof HTMLElement && writesIn(event.target)
      if (event.key === 'Escape' && inField) {
        document.querySelector<HTMLElement>('.step-heading')?.focus()
        return
      }
      if (inField) return
      if (event.key === '/') {
        event.preventDefault()
        document.querySelector<HTMLElement>('.fact-input')?.focus()
        return
      }
      const key = CSS.escape(event.key.toLowerCase())
      const answer = document.querySelector<HTMLElement>(`.question [data-key="${key}"]`)
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
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  }, [])
}

/** Whether keys are text where they are pressed; a box to tick takes only the space bar. */
const writesIn = (target: HTMLElement): boolean =>
  target.matches('input:not([type="checkbox"], [type="radio"]), textarea, select')

import type { Progress } from '../evaluate/progress.ts'
import type { Words } from '../words/words.ts'

/** How far a walk has come, in words. */
export function progressText(t: Words['t'], { question, atMostMore }: Progress): string {
  const more = atMostMore === 0 ? t('ui:the-last') : t('ui:at-most-more', { count: atMostMore })
  return `${t('ui:question', { number: question })}, ${more}`
}

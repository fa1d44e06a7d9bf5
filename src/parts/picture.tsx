import { useSetting } from './setting.tsx'

/** A drawing by its id; an empty frame of the same size until it has arrived. Words always stand beside it. */
export function Picture({ id, className = 'picture' }: { id: string; className?: string }) {
  const drawing = useSetting().drawings[id]
  return (
    <span
      class={className}
      aria-hidden="true"
      // The drawings are the project's own files, checked at build; nothing from outside is put here.
      dangerouslySetInnerHTML={{ __html: drawing ?? '' }}
    />
  )
}

/** The picture of an answer: its own, or its observation's mark, or none. */
export function usePictureOf(observation: string, answer?: string): string | null {
  const { pictures } = useSetting()
  const entry = pictures[observation]
  if (answer === 'unsure') return 'mark-unsure'
  return (answer === undefined ? undefined : entry?.answers[answer]) ?? entry?.own ?? null
}

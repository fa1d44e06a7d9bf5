import { useSetting } from '../../parts/setting.tsx'

/** Other trees that a line names, and the line in the words typed. */
export interface NamedElsewhere {
  readonly trees: readonly string[]
  readonly line: string
}

/** Offers the questions of the ferment that the caller named; the line is read again in their words. */
export function Elsewhere({
  named,
  trees,
  onTree,
  onStay
}: {
  named: NamedElsewhere | null
  /** The trees that can be changed to. */
  trees: readonly string[]
  onTree: (tree: string, line: string) => void
  onStay: () => void
}) {
  const { words } = useSetting()
  const offered = trees.filter(tree => named?.trees.includes(tree))
  return (
    <div class="desk-elsewhere" role="status">
      {named !== null && offered.length > 0 && (
        <div class="notice">
          <p>{words.t('ui:desk.elsewhere')}</p>
          {offered.map(tree => (
            <button
              key={tree}
              type="button"
              class="secondary"
              data-to={tree}
              onClick={() => onTree(tree, named.line)}
            >
              {words.t(`${tree}:title`)}
            </button>
          ))}
          <button type="button" class="quiet" data-action="stay" onClick={onStay}>
            {words.t('ui:desk.stay')}
          </button>
        </div>
      )}
    </div>
  )
}

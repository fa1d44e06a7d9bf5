import { useSetting } from '../parts/setting.tsx'
import type { LookAlike } from '../tree/look-alikes.ts'
import type { Tree } from '../tree/tree.ts'

/** Of all pairs those that are mixed up at a tree's own questions. */
export const pairsAsked = (lookAlikes: readonly LookAlike[], tree: Tree): readonly LookAlike[] =>
  lookAlikes.filter(
    ({ trees, asked }) =>
      trees.includes(tree.id) && asked.some(id => Object.hasOwn(tree.observations, id))
  )

const SIDES = ['one', 'other'] as const

/** So few have room for large drawings, and for how to make sure, on any paper. */
const FEW = 4

/** What is mixed up, large, for a wall or a table. */
export function LookAlikePairs({ pairs }: { pairs: readonly LookAlike[] }) {
  const { words, drawings } = useSetting()
  return (
    <ol class="chart-pairs" data-few={pairs.length <= FEW}>
      {pairs.map(pair => {
        const text = (key: string) => words.t(`look-alikes:${pair.id}.${key}`)
        const [surest] = pair.differs
        return (
          <li key={pair.id} class="chart-pair">
            {SIDES.map(side => (
              <figure key={side}>
                <span
                  class="chart-drawing"
                  role="img"
                  aria-label={words.t(`pictures:${pair[side].above}.short`)}
                  // The project's own file, checked at build.
                  dangerouslySetInnerHTML={{ __html: drawings[pair[side].above] ?? '' }}
                />
                <figcaption>
                  <strong>{text(side)}</strong>
                  {surest !== undefined && <span>{text(`differences.${surest}.${side}`)}</span>}
                </figcaption>
              </figure>
            ))}
            <p class="chart-sure">
              <strong>{words.t('ui:look-alikes.sure')}</strong> {text('sure')}
            </p>
          </li>
        )
      })}
    </ol>
  )
}

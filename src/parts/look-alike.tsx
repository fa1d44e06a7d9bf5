import { useId } from 'preact/hooks'
import type { LookAlike as Pair, Seen } from '../tree/look-alikes.ts'
import { useSpeech } from './setting.tsx'
import { Text } from './text.tsx'

const SIDES = ['one', 'other'] as const
type Drawings = Readonly<Record<string, string>>

/** Two look-alikes side by side at one scale: what is the same, what differs, how to make sure. */
export function LookAlike({ pair, drawings }: { pair: Pair; drawings: Drawings }) {
  const { words } = useSpeech()
  const text = (key: string) => words.t(`look-alikes:${pair.id}.${key}`)
  return (
    <div class="look-alike" data-pair={pair.id}>
      <div class="look-alike-both">
        {SIDES.map(side => (
          <figure key={side} class="look-alike-one">
            <figcaption>{text(side)}</figcaption>
            <Drawings seen={pair[side]} drawings={drawings} />
          </figure>
        ))}
      </div>
      <p class="look-alike-same">
        <strong>{words.t('ui:look-alikes.same')}</strong> {text('same')}
      </p>
      <Differences pair={pair} />
      <p class="look-alike-sure">
        <strong>{words.t('ui:look-alikes.sure')}</strong> <Text k={`look-alikes:${pair.id}.sure`} />
      </p>
    </div>
  )
}

function Drawings({ seen, drawings }: { seen: Seen; drawings: Drawings }) {
  const ways = [
    { id: seen.above, way: 'from-above' },
    { id: seen.side, way: 'from-the-side' }
  ] as const
  return (
    <>
      {ways.map(({ id, way }) => id && <Drawing key={way} id={id} way={way} drawings={drawings} />)}
    </>
  )
}

function Drawing({
  id,
  way,
  drawings
}: {
  id: string
  way: 'from-above' | 'from-the-side'
  drawings: Drawings
}) {
  const { words } = useSpeech()
  const long = useId()
  return (
    <span class={`look-alike-drawing ${way}`}>
      <span
        role="img"
        aria-label={words.t(`pictures:${id}.short`)}
        aria-describedby={long}
        // The project's own file, checked at build.
        dangerouslySetInnerHTML={{ __html: drawings[id] ?? '' }}
      />
      <span class="look-alike-way">{words.t(`ui:look-alikes.${way}`)}</span>
      <span id={long} class="visually-hidden">
        {words.t(`pictures:${id}.long`)}
      </span>
    </span>
  )
}

/** How the two differ, a feature a row, the surest first. */
function Differences({ pair }: { pair: Pair }) {
  const { words } = useSpeech()
  const text = (key: string) => words.t(`look-alikes:${pair.id}.${key}`)
  return (
    <table class="look-alike-differences">
      <caption>{words.t('ui:look-alikes.differ')}</caption>
      <thead>
        <tr>
          <th scope="col">{words.t('ui:look-alikes.sign')}</th>
          {SIDES.map(side => (
            <th key={side} scope="col">
              {text(side)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {pair.differs.map(feature => (
          <tr key={feature}>
            <th scope="row">{words.t(`ui:look-alikes.feature.${feature}`)}</th>
            {SIDES.map(side => (
              <td key={side}>{text(`differences.${feature}.${side}`)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** What nobody does to make sure, whatever the pair. */
export function LookAlikesNever() {
  const { words } = useSpeech()
  return (
    <div class="look-alikes-never">
      <strong>{words.t('ui:look-alikes.never')}</strong>
      <ul>
        {(['mouth', 'sniff', 'scoop'] as const).map(what => (
          <li key={what}>
            <Text k={`ui:look-alikes.never-${what}`} />
          </li>
        ))}
      </ul>
    </div>
  )
}

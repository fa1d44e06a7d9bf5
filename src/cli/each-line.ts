import type { Readable } from 'node:stream'

const LINE_END = 0x0a

/**
 * Goes through the lines of a stream of UTF-8, each with its number from 1, however the stream's parts
 * are cut. The last line needs no end (JSON Lines). Readline takes twice as long, which a million lines
 * notice.
 */
export async function eachLine(
  stream: Readable,
  visit: (text: string, line: number) => void
): Promise<void> {
  let line = 0
  let rest: Buffer = Buffer.alloc(0)
  const say = (bytes: Buffer) => {
    line += 1
    visit(bytes.toString('utf8'), line)
  }
  for await (const part of stream) {
    const bytes: Buffer = Buffer.isBuffer(part) ? part : Buffer.from(String(part))
    let from = 0
    for (let end = bytes.indexOf(LINE_END); end >= 0; end = bytes.indexOf(LINE_END, from)) {
      const own = bytes.subarray(from, end)
      say(rest.length === 0 ? own : Buffer.concat([rest, own]))
      rest = Buffer.alloc(0)
      from = end + 1
    }
    rest = Buffer.concat([rest, bytes.subarray(from)])
  }
  if (rest.length > 0) say(rest)
}

import { deserialize, serialize } from 'node:v8'

/** How deep parts are written apart: a tree stands in a list of the whole, and has parts itself. */
const LEVELS = 3
/** A smaller part is read sooner than it is put off. */
const LEAST_BYTES = 8192

/**
 * Writes plain data so that its larger parts can be read one by one.
 *
 * @throws Error where something in it is no data (a function).
 */
export function writeDeferred(value: unknown): Uint8Array {
  return serialize(apart(value, LEVELS))
}

/**
 * Reads what `writeDeferred` wrote: deeply equal, and each larger part is read when it is first
 * looked at. A walk looks at one tree, and at none of its rules.
 */
export function readDeferred(bytes: Uint8Array): unknown {
  return together(deserialize(bytes))
}

/** In place of each larger part its bytes: what is authored holds no bytes of its own. */
function apart(value: unknown, levels: number): unknown {
  if (levels === 0 || typeof value !== 'object' || value === null) return value
  const parts = Object.entries(value).map(([key, part]) => {
    const bytes = serialize(apart(part, levels - 1))
    return [key, bytes.length < LEAST_BYTES ? part : bytes] as const
  })
  return Array.isArray(value) ? parts.map(([, part]) => part) : Object.fromEntries(parts)
}

function together(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value
  for (const [key, part] of Object.entries(value)) {
    if (part instanceof Uint8Array) defer(value, key, part)
  }
  return value
}

function defer(owner: object, key: string, bytes: Uint8Array): void {
  const common = { configurable: true, enumerable: true }
  Object.defineProperty(owner, key, {
    ...common,
    get() {
      const value = readDeferred(bytes)
      Object.defineProperty(owner, key, { ...common, writable: true, value })
      return value
    }
  })
}

import {
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type Pair,
  type YAMLMap,
  type YAMLSeq
} from 'yaml'
import type { Place } from '../findings/place.ts'
import type { AuthoredPart, Offsets } from './authored.ts'
import type { FindingReport } from './report.ts'

const FORBIDDEN = ['__proto__', 'constructor', 'prototype']

interface Read {
  readonly value: unknown
  readonly spot: AuthoredPart
}

/** A parsed document as plain values, with the spot of each; what must not be there is reported. */
export function plainValue(
  contents: unknown,
  placeOf: (span: Offsets) => Place,
  report: FindingReport
): Read {
  return readPart(contents, null)

  function readPart(part: unknown, key: Offsets | null): Read {
    const value = spanOf(part) ?? key ?? [0, 1]
    if (isAlias(part)) {
      report.add('alias-used', placeOf(value), { mark: `*${part.source}` })
      return { value: null, spot: { key, value, plain: true, inside: new Map() } }
    }
    if ((isMap(part) || isSeq(part) || isScalar(part)) && part.anchor) {
      report.add('alias-used', placeOf(value), { mark: `&${part.anchor}` })
    }
    if (isMap(part)) return readGroup(part, key, value)
    if (isSeq(part)) return readList(part, key, value)
    const plain = isScalar(part) ? part.value : null
    return { value: plain, spot: { key, value, plain: true, inside: new Map() } }
  }

  function readList(part: YAMLSeq, key: Offsets | null, value: Offsets): Read {
    const inside = new Map<number, AuthoredPart>()
    const list = part.items.map((item, index) => {
      const read = readPart(item, null)
      inside.set(index, read.spot)
      return read.value
    })
    return { value: list, spot: { key, value, plain: false, inside } }
  }

  function readGroup(part: YAMLMap, key: Offsets | null, value: Offsets): Read {
    const inside = new Map<string, AuthoredPart>()
    const group: Record<string, unknown> = {}
    for (const pair of part.items) {
      if (!isPair(pair)) continue
      const name = nameOf(pair)
      const span = spanOf(pair.key) ?? value
      const before = name === null ? undefined : inside.get(name)
      if (name === null) report.add('key-not-a-name', placeOf(span), {})
      else if (FORBIDDEN.includes(name)) report.add('forbidden-key', placeOf(span), { key: name })
      else if (before) {
        const first = placeOf(before.key ?? before.value)
        report.add('duplicate-key', placeOf(span), { key: name }, [
          { label: 'First given here', place: first }
        ])
      } else {
        const read = readPart(pair.value, span)
        inside.set(name, read.spot)
        group[name] = read.value
      }
    }
    return { value: group, spot: { key, value, plain: false, inside } }
  }
}

function nameOf(pair: Pair): string | null {
  if (!isScalar(pair.key) || pair.key.value === null) return null
  // Numbers and words alike are names as they were written: `1.0` is not `1`.
  return typeof pair.key.value === 'string' ? pair.key.value : (pair.key.source ?? null)
}

function spanOf(part: unknown): Offsets | null {
  const range = isScalar(part) || isMap(part) || isSeq(part) || isAlias(part) ? part.range : null
  return range ? [range[0], range[1]] : null
}

import { nearestNames } from '../findings/nearest-name.ts'
import { BadUse, didYouMean } from './bad-use.ts'

/** The one of some names that was given. @throws BadUse, with the nearest and all of them, for another. */
export function namedOne<N extends string>(what: string, names: readonly N[], given: string): N {
  const one = names.find(name => name === given)
  if (one !== undefined) return one
  const near = didYouMean(nearestNames(given, names))
  throw new BadUse(`There is no ${what} \`${given}\`.${near} It can be: ${names.join(', ')}.`)
}

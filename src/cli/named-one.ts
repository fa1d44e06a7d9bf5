import { nearestNames } from '../findings/nearest-name.ts'
import { BadUse, didYouMean } from './bad-use.ts'

/**
 * The one of some names that was given.
 *
 * @throws BadUse for another: `isNone` says so, then come the nearest and, after `every`, all of them.
 */
export function namedOne<N extends string>(
  given: string,
  names: readonly N[],
  isNone: string,
  every: string
): N {
  const one = names.find(name => name === given)
  if (one !== undefined) return one
  const near = didYouMean(nearestNames(given, names))
  throw new BadUse(`${isNone}${near} ${every}: ${names.join(', ')}.`)
}

/** A language that there are words of. @throws BadUse for another. */
export const languageNamed = (given: string, languages: readonly string[]): string =>
  namedOne(given, languages, `There are no words in \`${given}\`.`, 'Languages')

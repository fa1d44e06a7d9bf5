import { openKnowHow } from '../../src/know-how/search.ts'
import { searchedIn } from '../../src/know-how/searched.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { knowHow, words } = await loadShipped()

/** The shipped answers, and their English words. */
export const { answers } = knowHow

/** The search over everything that is shipped. */
export const ask = openKnowHow(searchedIn(knowHow, words))

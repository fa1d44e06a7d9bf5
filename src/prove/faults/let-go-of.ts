import { must } from '../../tree/must.ts'
/**
 * Goes through a list and holds nothing of what it is done with: diagrams live as long as the tree that
 * they are of. `make`: the list is not held by whoever asks for it either.
 */
export function letGoOf<T>(make: () => readonly T[], each: (one: T, index: number) => void): void {
  const left = [...make()].reverse()
  for (let index = 0; left.length > 0; index++) each(must(left.pop(), 'entry'), index)
}

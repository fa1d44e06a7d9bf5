/** The folder that the script came from: everything else is taken from there, and from nowhere else. */
const FOLDER = new URL(/* @vite-ignore */ '.', import.meta.url)

/** The address of one of the embed's own files. */
export const addressIn = (file: string): string => new URL(file, FOLDER).href

const taken = new Map<string, Promise<unknown>>()

/** Takes a JSON file from the script's own folder, once for all elements. @throws Error when it is not there. */
export function take<T>(file: string): Promise<T> {
  const before = taken.get(file)
  if (before !== undefined) return before as Promise<T>
  const coming = fetched<T>(file)
  taken.set(file, coming)
  // What failed may be had the next time.
  coming.catch(() => taken.delete(file))
  return coming
}

async function fetched<T>(file: string): Promise<T> {
  const answer = await fetch(addressIn(file))
  if (!answer.ok) throw new Error(`${file}: ${answer.status}`)
  return answer.json()
}

import type { Page } from 'playwright-core'

/** Everything that this site's databases hold, read past our own code: by database and store. */
export const databasesOf = (page: Page): Promise<Record<string, Record<string, unknown[]>>> =>
  page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result)
        request.onerror = () => reject(request.error)
      })
    const all: Record<string, Record<string, unknown[]>> = {}
    for (const { name = '' } of await indexedDB.databases()) {
      const db = await done(indexedDB.open(name))
      const stores: Record<string, unknown[]> = {}
      for (const store of db.objectStoreNames) {
        stores[store] = await done(db.transaction(store).objectStore(store).getAll())
      }
      all[name] = stores
      db.close()
    }
    return all
  })

/** The entries of the contact log. */
export async function entriesOf(page: Page): Promise<readonly Record<string, unknown>[]> {
  const { entries = [] } = (await databasesOf(page))['jarside-contacts'] ?? {}
  return entries as Record<string, unknown>[]
}

/** Whatever else a page can keep something in. */
export const otherStorageOf = (page: Page): Promise<unknown> =>
  page.evaluate(async () => ({
    local: { ...localStorage },
    session: { ...sessionStorage },
    caches: await caches.keys(),
    state: history.state,
    hash: location.hash
  }))

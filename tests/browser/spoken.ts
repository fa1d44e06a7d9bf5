import type { Page } from 'playwright-core'

/** One thing as a screen reader would tell of it. */
export interface Spoken {
  readonly role: string
  readonly name: string
  readonly description: string
  readonly states: Readonly<Record<string, unknown>>
}

/** Everything on the page that a screen reader tells of, from the browser's own accessibility tree. */
export async function spokenOn(page: Page): Promise<readonly Spoken[]> {
  const client = await page.context().newCDPSession(page)
  const { nodes } = await client.send('Accessibility.getFullAXTree')
  await client.detach()
  return nodes
    .filter(({ ignored }) => !ignored)
    .map(({ role, name, description, properties = [] }) => ({
      role: String(role?.value ?? ''),
      name: String(name?.value ?? ''),
      description: String(description?.value ?? ''),
      states: Object.fromEntries(properties.map(({ name, value }) => [name, value.value]))
    }))
}

/** Those of one role. */
export const ofRole = (spoken: readonly Spoken[], role: string) =>
  spoken.filter(one => one.role === role)

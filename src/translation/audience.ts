/** Groups of the screens' words that an office's own people read, never a caller. */
const STAFF_GROUPS: ReadonlySet<string> = new Set([
  ...['desk', 'contacts', 'practice', 'workbench', 'reckon', 'table', 'self-test']
])

/**
 * Whether only an office's own people read a text. A language whose callers are served may do without it:
 * its volunteers read the English.
 */
export const isForStaff = (namespace: string, key: string): boolean =>
  namespace === 'practice' || (namespace === 'ui' && STAFF_GROUPS.has(key.split('.')[0] ?? ''))

/*
 * A PIN of four to eight digits keeps hands off the staff menu. Whoever can read a tablet's storage could
 * try out all of them: it is hashed slowly, with a salt of its own, so that nobody reads a PIN that is
 * used elsewhere too.
 */
const ROUNDS = 210_000
const BITS = 256

export const PIN_SHAPE = /^\d{4,8}$/

/** What `hashPin` gives: anything else would lock everybody out. */
export const KEPT_SHAPE = /^\d+\.[0-9a-f]+\.[0-9a-f]+$/

/** Whether this browser can hash: pages from a plain `http` address cannot, but on this machine itself. */
export const canHash = (): boolean => globalThis.crypto?.subtle !== undefined

/** A PIN as it is kept: rounds, salt and hash. */
export async function hashPin(pin: string): Promise<string> {
  const salt = hexOf(crypto.getRandomValues(new Uint8Array(16)))
  return `${ROUNDS}.${salt}.${await derived(pin, salt, ROUNDS)}`
}

/** Whether a PIN is the one kept. */
export async function isPin(pin: string, kept: string): Promise<boolean> {
  const [rounds = '', salt = '', hash] = kept.split('.')
  return hash !== undefined && (await derived(pin, salt, Number(rounds))) === hash
}

async function derived(pin: string, salt: string, iterations: number): Promise<string> {
  const bytes = new TextEncoder()
  const key = await crypto.subtle.importKey('raw', bytes.encode(pin), 'PBKDF2', false, [
    'deriveBits'
  ])
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt: bytes.encode(salt), iterations }
  return hexOf(new Uint8Array(await crypto.subtle.deriveBits(how, key, BITS)))
}

const hexOf = (bytes: Uint8Array): string =>
  [...bytes].map(byte => byte.toString(16).padStart(2, '0')).join('')

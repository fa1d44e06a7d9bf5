import { spawnSync } from 'node:child_process'
import { chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** A server of its own, on a socket in a folder of its own. */
export interface PostgresServer {
  /** Runs statements as a role; gives the rows, their fields parted by tabs. */
  run(sql: string, role?: string): readonly (readonly string[])[]
  /** The same where it must be refused: gives what the server says. */
  refused(sql: string, role?: string, input?: string): string
  /** Copies lines into the log as a desk does. */
  copy(lines: string): void
  stop(): void
}

const PLACES = '/usr/lib/postgresql'

/** The folder of the server's programs; null where there are none. */
export function postgresPrograms(): string | null {
  const versions = existsSync(PLACES) ? readdirSync(PLACES) : []
  const newest = versions.sort((a, b) => Number(b) - Number(a))
  const found = [
    ...newest.map(version => join(PLACES, version, 'bin')),
    '/usr/local/bin',
    '/usr/bin'
  ]
  return found.find(folder => existsSync(join(folder, 'initdb'))) ?? null
}

/** A user who is not root: the server runs as no other. */
function plainUser(): { uid: number; gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined
  const [, uid, gid] = /^nobody:[^:]*:(\d+):(\d+):/m.exec(readFileSync('/etc/passwd', 'utf8')) ?? []
  return uid === undefined ? undefined : { uid: Number(uid), gid: Number(gid) }
}

/** The way in: a line is one field, whatever is in it. */
const COPY =
  "copy contacts.intake (line) from stdin with (format csv, delimiter E'\\x02', quote E'\\x01')"

/** Makes a server with the schema of the log, which listens on no network. */
export function startPostgres(programs: string): PostgresServer {
  const user = plainUser()
  const folder = mkdtempSync(join(tmpdir(), 'jarside-pg-'))
  if (user !== undefined) chownSync(folder, user.uid, user.gid)
  const data = join(folder, 'data')
  const program = (name: string, args: readonly string[]) => {
    // A server that stays would keep a pipe open.
    const { status } = spawnSync(join(programs, name), args, {
      ...user,
      cwd: folder,
      stdio: 'ignore'
    })
    if (status !== 0) throw new Error(`${name} ended with ${status}`)
  }
  const log = join(folder, 'log')
  program('initdb', ['-D', data, '-U', 'owner', '-A', 'trust', '-E', 'UTF8', '--locale=C'])
  const settings = `-k ${folder} -c listen_addresses='' -c fsync=off`
  program('pg_ctl', ['-D', data, '-w', '-l', log, '-o', settings, 'start'])

  const psql = (args: readonly string[], input = '') =>
    spawnSync(
      join(programs, 'psql'),
      ['-X', '-q', '-A', '-t', '-F', '\t', '-v', 'ON_ERROR_STOP=1', '-h', folder, '-d', 'postgres']
        .concat('-U', 'owner')
        .concat(args),
      { encoding: 'utf8', input, ...user, cwd: folder }
    )
  const as = (role: string | undefined, sql: string) => [
    ...(role === undefined ? [] : ['-c', `set role ${role}`]),
    ...['-c', sql]
  ]
  const done = ({ status, stdout, stderr }: ReturnType<typeof psql>) => {
    if (status !== 0) throw new Error(stderr)
    return stdout
  }
  for (const file of ['schema', 'reports', 'roles']) {
    done(psql(['-c', readFileSync(`shared/contacts/${file}.sql`, 'utf8')]))
  }
  return {
    run: (sql, role) =>
      done(psql(as(role, sql)))
        .split('\n')
        .filter(line => line !== '')
        .map(line => line.split('\t')),
    refused: (sql, role, input) => {
      const { status, stderr } = psql(as(role, sql), input)
      if (status === 0) throw new Error(`the server did it: ${sql}`)
      return stderr
    },
    copy: lines => {
      done(psql(as('jarside_desk', COPY), lines))
    },
    stop: () => {
      program('pg_ctl', ['-D', data, '-m', 'immediate', 'stop'])
      rmSync(folder, { recursive: true, force: true })
    }
  }
}

export { COPY }

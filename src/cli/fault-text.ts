const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'this user may not read or write it',
  EPERM: 'this user may not read or write it',
  EROFS: 'its disk takes no changes',
  ENOSPC: 'no room is left on the disk',
  EDQUOT: 'no room is left for this user on the disk',
  EFBIG: 'the file would be larger than is allowed here',
  EISDIR: 'it is a folder, and a file is wanted',
  ENOTDIR: 'a part of its path is no folder',
  EEXIST: 'something else of that name is there',
  ENOENT: 'there is no such file or folder',
  ENAMETOOLONG: 'its name is too long',
  ELOOP: 'its links lead in a circle',
  EMFILE: 'too many files are open',
  EIO: 'the disk cannot be read or written'
}

/** A sentence for whatever ended a command: nobody at a command line is to read a stack of calls. */
export function faultText(error: unknown): string {
  if (isOfSystem(error)) {
    const why = REASONS[error.code] ?? 'the system refuses it'
    const unnamed =
      error.syscall === 'read' ? 'A file cannot be read' : 'The output cannot be written'
    const what = error.path === undefined ? unnamed : `\`${error.path}\` cannot be used`
    return `${what}: ${why} (${error.code}).`
  }
  if (error instanceof RangeError && /call stack/i.test(error.message)) {
    return 'Something here is nested too deeply to be read. See: jarside check'
  }
  const message = error instanceof Error ? error.message : String(error)
  return `This is a mistake of jarside itself: ${message}. Set JARSIDE_TRACE=1 to see where.`
}

interface OfSystem {
  readonly code: string
  readonly syscall: string
  readonly path?: string
}

const isOfSystem = (error: unknown): error is OfSystem =>
  error instanceof Error && 'code' in error && 'syscall' in error && typeof error.code === 'string'

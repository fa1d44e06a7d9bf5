/** The file that a build writes last: where it stands the build is whole. */
export const LAST_WRITTEN: string

/** Named values of any kind: texts, or what a file holds before its shape is known. */
export type Group = Readonly<Record<string, unknown>>

export const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null

/** The value where it is a group; of anything else an empty one. */
export const groupOf = (value: unknown): Group => (isGroup(value) ? value : {})

/** Whether a name is one of a table's own. */
export const hasKey = <T extends object>(table: T, name: PropertyKey): name is keyof T =>
  Object.hasOwn(table, name)

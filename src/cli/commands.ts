import type { Command } from './command.ts'

/**
 * Every command by its name, in the order of the manual. Its module is imported only when it is
 * wanted: a walk waits for no browser, no prover and no paper.
 */
export const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  walk: async () => (await import('./walk.ts')).walkCommand,
  list: async () => (await import('./list.ts')).list,
  check: async () => (await import('./check.ts')).check,
  new: async () => (await import('./new.ts')).newTree,
  compare: async () => (await import('./compare.ts')).compareCommand,
  packet: async () => (await import('./packet.ts')).packet,
  publish: async () => (await import('./publish.ts')).publish,
  withdraw: async () => (await import('./withdraw.ts')).withdraw,
  translate: async () => (await import('./translate.ts')).translate,
  ask: async () => (await import('./ask.ts')).ask,
  cites: async () => (await import('./cites.ts')).cites,
  practice: async () => (await import('./practice.ts')).practice,
  reckon: async () => (await import('./reckon.ts')).reckon,
  handout: async () => (await import('./handout.ts')).handout,
  plain: async () => (await import('./plain.ts')).plain,
  pack: async () => (await import('./pack.ts')).pack,
  table: async () => (await import('./table.ts')).table,
  figures: async () => (await import('./figures.ts')).figures,
  tally: async () => (await import('./tally.ts')).tally,
  schema: async () => (await import('./schema.ts')).schema
}

/** The command of that name, if there is one. */
export async function commandNamed(name: string): Promise<Command | undefined> {
  return Object.hasOwn(COMMANDS, name) ? COMMANDS[name]?.() : undefined
}

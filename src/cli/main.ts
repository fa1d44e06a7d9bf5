import { run } from './run.ts'
import { processTerminal } from './terminal.ts'

// A reader that stops early (`jarside list | head`) is no mistake of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})

// Not process.exit: what is still being written would be cut off.
process.exitCode = await run(process.argv.slice(2), processTerminal())

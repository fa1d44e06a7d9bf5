import { faultText } from './fault-text.ts'
import { openProject } from './open-project.ts'
import { run } from './run.ts'
import { processTerminal } from './terminal.ts'

let lost = false
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // A reader that stops early (`jarside list | head`) is no mistake of ours.
  if (error.code === 'EPIPE' || lost) return
  lost = true
  process.exitCode = 2
  process.stderr.write(`${faultText(error)}\n`)
})
// Where nobody can be told anything the exit code alone tells.
process.stderr.on('error', () => undefined)

// Not process.exit: what is still being written would be cut off.
const code = await run(process.argv.slice(2), processTerminal(), openProject)
process.exitCode = lost ? 2 : code

// Opens the page to this machine alone: npm start
import { serve } from './serve.mjs'

process.exitCode = await serve({ name: 'Jarside' })

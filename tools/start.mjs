// Opens the pages to this machine alone: npm start
import { serve } from './serve.mjs'

process.exitCode = await serve({
  name: 'Jarside',
  places: { Desk: 'desk', Kiosk: 'kiosk', Embed: 'frame?tree=kombucha-jar&lang=es' }
})

// Shows every part of the page in all its states, for those who change them: npm run gallery
import { serve } from './serve.mjs'

process.exitCode = await serve({ mode: 'gallery', at: 'gallery.html', name: 'Jarside gallery' })

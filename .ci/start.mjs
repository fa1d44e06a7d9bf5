// Starts the kombucha jar's walk in a terminal: npm start
import { jarside } from './jarside.mjs'

if (process.stdin.isTTY && process.stdout.isTTY) {
  process.exitCode = jarside(['walk', 'kombucha-jar'])
} else {
  process.stderr.write(
    [
      'This asks questions, and needs a terminal on both ends. Without one, give the answers:',
      '  npm run -s jarside -- walk kombucha-jar --given surface-texture=dry-fuzzy',
      '  npm run -s jarside -- walk --help',
      ''
    ].join('\n')
  )
  process.exitCode = 2
}

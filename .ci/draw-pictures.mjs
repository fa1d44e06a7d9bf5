// Draws shared/pictures from their parameters: node --import tsx .ci/draw-pictures.mjs
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { drawPicture, PICTURES } from '../src/ui/pictures/pictures.ts'
import { root } from './install.mjs'

for (const [id, layer] of Object.entries(PICTURES)) {
  writeFileSync(join(root, `shared/pictures/${id}.svg`), drawPicture(id, layer))
}
console.log(`${Object.keys(PICTURES).length} pictures drawn`)

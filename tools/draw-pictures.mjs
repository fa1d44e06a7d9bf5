// Draws shared/pictures from their parameters: node --import tsx tools/draw-pictures.mjs
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { root } from '../.ci/install.mjs'
import { drawPicture, PICTURES } from './pictures/pictures.ts'

for (const [id, layer] of Object.entries(PICTURES)) {
  writeFileSync(join(root, `shared/pictures/${id}.svg`), drawPicture(id, layer))
}
console.log(`${Object.keys(PICTURES).length} pictures drawn`)

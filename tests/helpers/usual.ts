export { usualExcept } from '../../src/tree/usual-answers.ts'

import type { Statement } from './published.ts'
import { BOTTLE_STATEMENTS, CULTURE_STATEMENTS } from './published-bottle-culture.ts'
import { JAR_STATEMENTS } from './published-jar.ts'
import {
  DOUGH_STATEMENTS,
  KEFIR_STATEMENTS,
  OUTSIDE_STATEMENTS,
  VINEGAR_STATEMENTS
} from './published-others.ts'
import { SODA_STATEMENTS } from './published-sodas.ts'
import { VEGETABLE_STATEMENTS } from './published-vegetables.ts'

/** Everything published that the shipped trees are held against. */
export const STATEMENTS: readonly Statement[] = [
  ...JAR_STATEMENTS,
  ...BOTTLE_STATEMENTS,
  ...CULTURE_STATEMENTS,
  ...VEGETABLE_STATEMENTS,
  ...DOUGH_STATEMENTS,
  ...KEFIR_STATEMENTS,
  ...VINEGAR_STATEMENTS,
  ...SODA_STATEMENTS,
  ...OUTSIDE_STATEMENTS
]

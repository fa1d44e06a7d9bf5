import type { ComponentChildren } from 'preact'
import {
  type CalculatorId,
  courseOf,
  sealedOf,
  starterOf,
  starterShareOf
} from '../../../words/reckoned/calculators.ts'
import type { GivenInputs } from '../../../words/reckoned/inputs.ts'
import { CourseChart } from './course-chart.tsx'
import { MixChart } from './mix-chart.tsx'
import { PressureChart } from './pressure-chart.tsx'

/** The picture of a calculator's result, with its first sentence; null where it has none. */
export function chartOf(
  calculator: CalculatorId,
  given: GivenInputs,
  says: string
): ComponentChildren {
  switch (calculator) {
    case 'mix':
      return <MixChart starter={starterOf(given)} share={starterShareOf(given)} says={says} />
    case 'course':
      return <CourseChart {...courseOf(given)} says={says} />
    case 'gas':
      return <PressureChart sealed={sealedOf(given)} says={says} />
    default:
      return null
  }
}

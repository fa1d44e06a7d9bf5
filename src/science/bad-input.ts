/** The numbers that a model takes for one of its inputs, both ends included. */
export interface Allowed {
  readonly from: number
  readonly to: number
  /** As written beside a number: `pH`, `mL`, `°C`. Empty for a plain number. */
  readonly unit: string
}

/** A number that no model can take, with the numbers that it could. Places word it from its parts. */
export class BadInput extends RangeError {
  /** What the number was given for: `starter-ph`, `label-strength`. */
  readonly input: string
  readonly value: number
  readonly allowed: Allowed

  constructor(input: string, value: number, allowed: Allowed) {
    const unit = allowed.unit === '' ? '' : ` ${allowed.unit}`
    const short = (x: number): number => Number(x.toPrecision(4))
    const given = Number.isFinite(value) ? `${short(value)}${unit}` : `${value}`
    super(
      `${input} is ${given}; it has to be from ${short(allowed.from)} to ${short(allowed.to)}${unit}.`
    )
    this.name = 'BadInput'
    this.input = input
    this.value = value
    this.allowed = allowed
  }
}

/**
 * The value itself when it is one of the allowed.
 * @throws BadInput when it is not finite or lies outside.
 */
export function checked(input: string, value: number, allowed: Allowed): number {
  if (Number.isFinite(value) && value >= allowed.from && value <= allowed.to) return value
  throw new BadInput(input, value, allowed)
}

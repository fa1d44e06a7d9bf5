/** A day in milliseconds: apart from the other units, which no first screen needs. */
export const DAY_MS = 86_400_000

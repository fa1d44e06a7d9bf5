export function proofRows(figures: object): readonly (readonly (string | undefined)[])[]

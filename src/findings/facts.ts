/** What a finding's sentence and remedy are made of. */
export type Facts = Readonly<Record<string, string | number | readonly string[]>>

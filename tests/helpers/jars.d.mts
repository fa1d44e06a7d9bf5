/** What a caller answers, by observation; `look` names the screens worth a picture. */
export type Jar = Readonly<Record<string, string | readonly string[]>>
export const JARS: Readonly<Record<string, Jar>>

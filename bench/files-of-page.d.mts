export function filesOfPage(folder: string, page: string): readonly string[]

const FORM = /_(?:zero|one|two|few|many|other)$/

/** The keys that a language must have, each with the English key that it translates. */
export function translatedKeys(
  tag: string,
  english: Iterable<string>
): ReadonlyMap<string, string> {
  const names = new Set(english)
  const keys = new Map<string, string>()
  for (const key of names) {
    const stem = key.replace(FORM, '')
    const other = `${stem}_other`
    if (stem === key || !names.has(other)) keys.set(key, key)
    else {
      for (const form of formsOf(tag)) {
        const same = `${stem}_${form}`
        keys.set(same, names.has(same) ? same : other)
      }
    }
  }
  return keys
}

/** The plural forms of a language; those of English where nothing is known of it. */
function formsOf(tag: string): readonly string[] {
  return new Intl.PluralRules(isKnown(tag) ? tag : 'en').resolvedOptions().pluralCategories
}

function isKnown(tag: string): boolean {
  try {
    return Intl.PluralRules.supportedLocalesOf(tag).length > 0
  } catch {
    // The name of a folder may look like a tag and be none.
    return false
  }
}

/** The words of a phrase as the decoder's dictionary has them: lower case, no stops, no hyphens. */
export function spokenWords(phrase: string): readonly string[] {
  return phrase
    .toLowerCase()
    .replace(/[’‘]/g, "'")
    .split(/[^a-z']+/)
    .filter((word) => word !== '');
}
